import { expect, it } from "vitest";
import { materialRows } from "../../src/data/materials";
import { dualCertificates, plainNames } from "../../src/data/plainNames";
import { compactDesignation } from "../../src/material/compactDesignation";
import { materialIndex } from "../../src/material/materialIndex";

const keys = new Set(materialRows.map((row) => row[0]));

it("plain names and dual certificates lead to rows of the table", () => {
  for (const key of plainNames.values()) expect(keys.has(key)).toBe(true);
  for (const pair of dualCertificates) for (const key of pair) expect(keys.has(key)).toBe(true);
});

it("plain names are in the compared form and hide no designation", () => {
  for (const name of plainNames.keys()) {
    expect(compactDesignation(name)).toBe(name);
    expect([name, materialIndex().has(name)]).toEqual([name, false]);
  }
});
