import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { materialRows } from "../../src/data/materials";
import { unpackRows } from "../../src/data/unpackRows";
import { unpackTable } from "../../src/data/unpackTable";

const require = createRequire(import.meta.url);
const loader = require("../../config/packRows.cjs") as ((source: string) => string) & {
  readonly packRows: (rows: string) => string;
  readonly packTable: (rows: readonly (readonly (string | number)[])[]) => string;
};
const dropDocs = require("../../config/dropDocs.cjs") as (source: string) => string;

const tables = readdirSync("src/data")
  .filter((f) => /^sections\w+\.ts$/.test(f))
  .flatMap((f) => [...readFileSync(`src/data/${f}`, "utf8").matchAll(/rows: `([^`]*)`/g)].map((m) => m[1]!));

describe("packed tables", () => {
  it("give every source table back to the letter", () => {
    expect(tables.length).toBeGreaterThan(20);
    for (const rows of tables) expect(unpackRows(loader.packRows(rows))).toBe(rows);
  });

  it("keep cells that are no plain numbers, blanks, and rows that end early", () => {
    for (const rows of [
      "\na,1,2\nb,3\n",
      "\na,.5,x\nb,0.5,y\n",
      "\na,,1\nb,2,\n",
      "\n1x2,10.25\n1x3,-3\n",
      "\n44x408|1100x607,.5\n40x15|100x22.5,1,2\n",
      "\n750x220,1\n600,2\n",
    ])
      expect(unpackRows(loader.packRows(rows))).toBe(rows);
  });

  it("give every material back, to the letter and the number, and the loader finds the table in its file", () => {
    expect(unpackTable(loader.packTable(materialRows))).toEqual(materialRows);
    const loaded = loader(readFileSync("src/data/materials.ts", "utf8"));
    expect(loaded).toContain(`unpackTable(${JSON.stringify(loader.packTable(materialRows))})`);
  });

  it("leave a file without tables as it is", () => {
    expect(loader("export const a = 1;")).toBe("export const a = 1;");
  });
});

describe("words that Excel never shows", () => {
  it("are left out of entries, arguments and labels, and nothing else is", () => {
    const dropped = dropDocs(
      'entry({ name: "X", help: "h", asks: ["a"], examples: ["SAW.X()"], source: "s", params: { a: each(number("size"), "what") }, result: { form: "row", columns: { b: column("text", "kept") } } }); row("Kerf", "kerf", size, "none", "width"); list(k, "l", "group"); constant(5, "mm", "read", "why");',
    );
    expect(dropped).toBe(
      'entry({ name: "X", help: "", asks: [], examples: [""], source: "", params: { a: each(number("size"), "") }, result: { form: "row", columns: { b: column("text", "kept") } } }); row("Kerf", "kerf", size, "", ""); list(k, "", "group"); constant(5, "", "", "");',
    );
  });
});
