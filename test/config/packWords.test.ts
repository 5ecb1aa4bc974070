import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { lineWords } from "../../src/data/lineWords";
import { unpackWords } from "../../src/data/unpackWords";

const { packWords } = createRequire(import.meta.url)("../../config/packWords.cjs") as {
  packWords: (rows: string) => string;
};
const sorted = (rows: string) =>
  rows
    .trim()
    .split("\n")
    .map((row) => row.split(",").slice(0, 3).join())
    .sort();

it("the packed words give every row back, and take at most 8 kB", () => {
  const packed = packWords(lineWords.rows);
  expect(sorted(unpackWords(packed))).toEqual(sorted(lineWords.rows));
  expect(gzipSync(packed, { level: 9 }).length).toBeLessThanOrEqual(8 * 1024);
});
it("the loader leaves a module that unpacks", () => {
  const load = createRequire(import.meta.url)("../../config/packWords.cjs") as (source: string) => string;
  const source = readFileSync(new URL("../../src/data/lineWords.ts", import.meta.url), "utf8");
  expect(load(source)).toContain("get rows() { return unpackWords(");
});
