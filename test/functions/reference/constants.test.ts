import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Constant } from "../../../src/data/constant";
import { constantTables } from "../../../functions/reference/constantTables";

/** Every constant of src/data stands in docs/sources.md with its mark: counted in the sources, not in the list. */

const files = readdirSync("src/data").filter((f) => f.endsWith(".ts") && f !== "constant.ts");
const written = files.flatMap((f) => [...readFileSync(`src/data/${f}`, "utf8").matchAll(/\bconstant\(/g)]);
const listed = constantTables.flatMap(({ constants }) => Object.values<Constant>(constants));

describe("the constants of src/data", () => {
  it("are all in the tables that docs/sources.md prints", () => {
    expect(listed.length).toBeGreaterThan(40);
    expect(listed.length).toBe(written.length);
  });

  it("have a unit, a mark that is known and a basis in words", () => {
    for (const { value, unit, mark, basis } of listed) {
      expect(Number.isFinite(value)).toBe(true);
      expect(unit).not.toBe("");
      expect(["read", "memory", "common practice", "derived", "judgement"]).toContain(mark);
      expect(basis.length, basis).toBeGreaterThan(3);
    }
  });

  it("stand in docs/sources.md, a row each", () => {
    const rows = readFileSync("docs/sources.md", "utf8").split("\n");
    for (const { basis, mark } of listed)
      expect(
        rows.some((row) => row.includes(`| ${mark} | ${basis.replace(/\|/g, "\\|")} |`)),
        basis,
      ).toBe(true);
  });
});
