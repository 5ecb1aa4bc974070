import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { sampleBooks } from "../../../functions/workbook/samples/books";
import { evaluate } from "../../browser/evaluate";

/** records.xlsx: what the logs come to, and the looks of its charts. */

const sheets = evaluate(sampleBooks.find((b) => b.file === "records.xlsx")!.sheets);
const at = (sheet: string, cell: string) => sheets.get(sheet)!.get(cell);
const chart = (title: string): string =>
  Object.entries(unzipSync(new Uint8Array(readFileSync("docs/samples/records.xlsx"))))
    .filter(([path]) => path.startsWith("xl/charts/chart"))
    .map(([, part]) => strFromU8(part))
    .find((xml) => xml.includes(title))!;

describe("records.xlsx", () => {
  it("names what the log holds beside good cuts: a mark, text for minutes, a size left open, seconds, a weak motor", () => {
    expect(at("Tuning", "C20")).toMatch(
      /^all 19 cuts, 4 groups; .*; 1 row marked to leave out; row 23 left out: minutes is text, not a number; row 24 left out: no section$/,
    );
    expect(at("Tuning", "C21")).toMatch(/^6 cuts; row 22 left out: minutes typed as seconds/);
    expect(at("Tuning", "C23")).toBe("4 cuts, 1 held by the motor");
  });
  it("quotes with the tuned block as with the typed one times the factor, and says from how many cuts", () => {
    for (const row of [6, 7, 8, 9]) {
      expect(at("Records", `F${row}`)).toBeTypeOf("number");
      expect(at("Records", `G${row}`)).not.toBe(at("Records", `F${row}`));
      expect(at("Records", `K${row}`)).toMatch(/Rate factor [\d.]+ from \d+ own cuts/);
    }
  });
  it("timed minutes lie in the band for most of the cuts that made it", () => {
    const rows = Array.from({ length: 19 }, (_, i) => 26 + i);
    const inside = rows.filter((r) => {
      const [timed, low, high] = ["E", "F", "G"].map((c) => at("Records", `${c}${r}`) as number) as [
        number,
        number,
        number,
      ];
      return timed >= low && timed <= high;
    });
    expect(inside.length).toBeGreaterThanOrEqual(14);
  });
  it("draws cuts as points without a line, low and high as dashes, and lives as stacked columns", () => {
    const points = chart("Minutes timed against");
    expect([...points.matchAll(/<c:symbol val="(\w+)"\/>/g)].map((m) => m[1])).toEqual([
      "circle",
      "dash",
      "dash",
      "none",
    ]);
    expect(points.match(/<a:ln><a:noFill\/><\/a:ln>/g)).toHaveLength(3);
    expect(chart("Area that each blade cut")).toMatch(/<c:grouping val="stacked"\/>/);
  });
});
