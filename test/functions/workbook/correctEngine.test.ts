import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { correctedVersion, correctEngine } from "../../../functions/workbook/correctEngine";

describe("the corrections of the engine", () => {
  it("are made on the version that they were measured on, and that version is installed", () => {
    const { version } = JSON.parse(readFileSync("node_modules/@univerjs/engine-formula/package.json", "utf8")) as {
      version: string;
    };
    expect(version).toBe(correctedVersion);
    expect(correctEngine()).toBe(true);
  });
});
