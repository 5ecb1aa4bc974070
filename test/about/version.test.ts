import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { version } from "../../src/about/version";

it("is the package's version and the digest of the data tables", () => {
  const { version: of } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  expect(version()).toMatch(new RegExp(`^${of.replace(/\./g, "\\.")}, data [0-9a-f]{8}$`));
});
