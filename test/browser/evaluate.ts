import { call } from "../../functions/bind";
import { catalogue } from "../../functions/catalogue";
import type { Cell, Range } from "../../functions/cell";
import { Memo } from "../../functions/memo";
import type { DemoSheet } from "../../taskpane/tryit/demo/sheet";

/**
 * Calculates the demo sheets without any spreadsheet: our functions through bind, the few plain formulas as arithmetic.
 * It reads only what the demo writes: calls of ours with references and literals, sums and products of cells.
 */
export type Sheets = ReadonlyMap<string, ReadonlyMap<string, Cell>>;

const address = (row: number, column: number): string => `${String.fromCharCode(65 + column)}${row + 1}`;

const splitArguments = (text: string): string[] => {
  const parts = [""];
  let quoted = false;
  for (const ch of text) {
    if (ch === '"') quoted = !quoted;
    if (ch === "," && !quoted) parts.push("");
    else parts[parts.length - 1] += ch;
  }
  return parts.map((p) => p.trim());
};

export function evaluate(book: readonly DemoSheet[]): Sheets {
  const memo = new Memo();
  const raw = new Map(book.map((s) => [s.name, new Map(s.rows.flatMap((row, r) => row.cells.map((cell, c) => [address(r, c), cell] as const)))]));
  const done = new Map(book.map((s) => [s.name, new Map<string, Cell>()]));

  const cellAt = (sheet: string, at: string): Cell => {
    const known = done.get(sheet)!;
    if (!known.has(at)) {
      const content = raw.get(sheet)!.get(at) ?? null;
      if (typeof content === "string" && content.startsWith("=")) calculate(sheet, at, content);
      else known.set(at, content);
    }
    return known.get(at) ?? null;
  };
  const rangeOf = (sheet: string, reference: string): Range => {
    const [own, area = own] = (reference.includes("!") ? reference.split("!") : [sheet, reference]) as [string, string];
    const [from, to = from] = area.replace(/\$/g, "").split(":") as [string, string?];
    const corner = (a: string) => ({ column: a.charCodeAt(0) - 65, row: Number(a.slice(1)) - 1 });
    const [a, b] = [corner(from), corner(to!)];
    return Array.from({ length: b.row - a.row + 1 }, (_, r) => Array.from({ length: b.column - a.column + 1 }, (__, c) => cellAt(own, address(a.row + r, a.column + c))));
  };
  const argument = (sheet: string, text: string): Range | null => {
    if (text === "") return null;
    if (text.startsWith('"')) return [[text.slice(1, -1).replace(/""/g, '"')]];
    return /^-?[\d.]+$/.test(text) ? [[Number(text)]] : rangeOf(sheet, text);
  };
  const calculate = (sheet: string, at: string, formula: string): void => {
    const known = done.get(sheet)!;
    const ours = /^=SAW\.([A-Z]+)\((.*)\)$/s.exec(formula);
    if (ours === null) {
      const arithmetic = formula.slice(1).replace(/\$?([A-Z])\$?(\d+)/g, (_, c: string, r: string) => String(cellAt(sheet, `${c}${r}`)));
      known.set(at, Number(new Function(`return (${arithmetic});`)()));
      return;
    }
    const entry = catalogue.find((e) => e.name === ours[1])!;
    const cells = call(entry, splitArguments(ours[2]!).map((a) => argument(sheet, a)), memo);
    const [column, row] = [at.charCodeAt(0) - 65, Number(at.slice(1)) - 1];
    cells.forEach((line, r) => line.forEach((cell, c) => known.set(address(row + r, column + c), cell)));
  };

  for (const sheet of book) for (const [at] of raw.get(sheet.name)!) cellAt(sheet.name, at);
  return done;
}
