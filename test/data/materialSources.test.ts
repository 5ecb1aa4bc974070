import { expect, it } from "vitest";
import { forceConstants } from "../../src/data/forceConstants";
import { materialRows } from "../../src/data/materials";
import { materialSources } from "../../src/data/materialSources";

it("every source is cited, and every citation is known; + is for own materials", () => {
  const cited = new Set([...materialRows.flatMap((row) => [...row[24]]), ...[...forceConstants.values()].map(({ source }) => source)].filter((key) => key !== "-"));
  expect([...materialSources.keys()].sort()).toEqual([...cited, "+"].sort());
});

it("m and e are the two marks that are no source", () => {
  expect(materialSources.get("m")).toContain("from memory");
  expect(materialSources.get("e")).toContain("estimated");
});
