import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { describe, expect, it } from "vitest";
import { openParts } from "../../../functions/workbook/openParts";
import { packParts } from "../../../functions/workbook/patchBook";
import { readBook } from "../../../functions/workbook/readBook";
import { isSame } from "../../../functions/workbook/recalculate";
import { folder, recalc } from "./fixture";

const samples = readdirSync("docs/samples")
  .filter((f) => f.endsWith(".xlsx"))
  .map((f) => join("docs/samples", f));
const foreign = readdirSync("test/data/books").map((f) => join("test/data/books", f));
const read = (file: string) => openParts(readFileSync(file));
const text = (part: Uint8Array): string => new TextDecoder().decode(part);

/** A sample with one part changed, as a file. */
const altered = (part: string, change: (xml: string) => string): string => {
  const parts = read("docs/samples/plans.xlsx");
  const xml = text(parts[part]!);
  expect(change(xml)).not.toBe(xml);
  const file = join(folder(), "altered.xlsx");
  writeFileSync(file, packParts({ ...parts, [part]: new TextEncoder().encode(change(xml)) }));
  return file;
};

/** A cell of the sample with a native formula over numbers, its part and its XML. */
const nativeCell = (() => {
  const parts = read("docs/samples/plans.xlsx");
  for (const sheet of readBook(parts).sheets) {
    const cell = sheet.cells.find(
      (c) => typeof c.value === "number" && /^SUM\([A-Z]+\d+:[A-Z]+\d+\)$/.test(c.formula?.text ?? ""),
    );
    if (cell !== undefined) return { part: sheet.part, formula: cell.formula!.text, value: String(cell.value) };
  }
  throw new Error("the sample has no sum");
})();

describe("recalc on the samples", () => {
  it("finds a planted wrong value, a wrong formula and a missing value, each with its cell", () => {
    const wrongValue = recalc(
      altered(nativeCell.part, (xml) => xml.replace(`<v>${nativeCell.value}</v>`, "<v>12345.5</v>")),
    );
    expect(wrongValue.status).toBe(1);
    expect(wrongValue.stdout).toContain(`=${nativeCell.formula}\twas 12345.5\tis ${nativeCell.value}`);
    const shorter = nativeCell.formula.replace(/(\d+)\)$/, (_, n: string) => `${Number(n) - 1})`);
    const wrongFormula = recalc(
      altered(nativeCell.part, (xml) => xml.replace(`>${nativeCell.formula}<`, `>${shorter}<`)),
    );
    expect(wrongFormula.status).toBe(1);
    expect(wrongFormula.stdout).toContain(`=${shorter}\twas ${nativeCell.value}\tis `);
    const missing = recalc(altered(nativeCell.part, (xml) => xml.replace(`<v>${nativeCell.value}</v>`, "")));
    expect(missing.status).toBe(1);
    expect(missing.stdout).toContain(`=${nativeCell.formula}\twas nothing\tis ${nativeCell.value}`);
  });
});

/** A part without the form of our functions, which is mended, and without what leads to the metadata that the form needs. */
const formless = (xml: string): string =>
  xml
    .replace(/<(Override|Relationship) [^>]*metadata\.xml"[^>]*>/g, "")
    .replace(/ cm="1"/g, "")
    .replace(/<((?:\w+:)?f)\b[^>]*(?:\/>|>[^<]*\bSAW[._][^<]*<\/\1>|>[^<]*_SAW_[^<]*<\/\1>)/g, "<f/>");

/** What a part is but for the values of its formulas: types and values of cells with a formula, and of those it fills. */
const bare = (xml: string): string =>
  formless(xml).replace(
    /<((?:\w+:)?)c\b([^>]*?)(?:\/>|>([\s\S]*?)<\/\1c>)/g,
    (_, p: string, tag: string, inner = "") =>
      `<${p}c${tag.replace(/\st="\w+"/, "")}>${(inner as string).replace(/<(?:\w+:)?v>[\s\S]*?<\/(?:\w+:)?v>|<(?:\w+:)?v\/>/, "")}</${p}c>`,
  );

describe.each([...foreign, ...samples])("%s", (file) => {
  const out = join(folder(), basename(file));
  it("is recalculated and patched; a second run finds nothing, and nothing else has changed, part by part", () => {
    const first = recalc(file, "--write", out);
    if (samples.includes(file))
      expect([first.status, first.stdout]).toEqual([0, expect.stringContaining(" 0 differ ")]);
    expect(first.status).not.toBe(2);
    const again = recalc(out);
    expect([again.status, again.stdout]).toEqual([0, expect.stringContaining(" 0 differ ")]);
    const [before, after] = [read(file), read(out)];
    const more = Object.keys(after).filter((path) => before[path] === undefined);
    expect(more).toEqual(more.length === 0 ? [] : ["xl/metadata.xml"]);
    const sheets = new Set(readBook(before).sheets.map((s) => s.part));
    for (const [path, part] of Object.entries(before)) {
      if (sheets.has(path)) expect(bare(text(after[path]!))).toBe(bare(text(part)));
      else if (more.length === 0) expect(Buffer.compare(after[path]!, part), path).toBe(0);
      else expect(formless(text(after[path]!)), path).toBe(formless(text(part)));
    }
  });

  it("keeps every cell that holds no formula", () => {
    const values = (path: string) =>
      readBook(read(path)).sheets.flatMap((s) =>
        s.cells.filter((c) => c.formula === undefined).map((c) => [s.name, c.row, c.column, c.value] as const),
      );
    const spilled = new Set(
      readBook(read(file)).sheets.flatMap((s) =>
        s.cells.flatMap((c) => {
          const a = c.formula?.area;
          return a === undefined
            ? []
            : Array.from(
                { length: (a.bottom - a.top + 1) * (a.right - a.left + 1) },
                (_, i) =>
                  `${s.name} ${a.top + Math.floor(i / (a.right - a.left + 1))} ${a.left + (i % (a.right - a.left + 1))}`,
              );
        }),
      ),
    );
    const plain = (path: string) => values(path).filter(([s, r, c]) => !spilled.has(`${s} ${r} ${c}`));
    expect(plain(out)).toEqual(plain(file));
  });
});

describe("values that a person calls the same", () => {
  it.each([
    [1, 1 + 1e-12, true],
    [1, 1.0000001, false],
    [0, 1e-14, true],
    ["3/4", 0.75, false],
    ["", null, true],
    [true, 1, false],
    ["#N/A", "#N/A", true],
    ["#SPILL!", "#VALUE!", true],
  ] as const)("%j and %j: %s", (a, b, same) => expect(isSame(a, b)).toBe(same));
});
