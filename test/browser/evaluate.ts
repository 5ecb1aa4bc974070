import { areaOf, inArea } from "../../functions/formula/cellAddress";
import { call } from "../../functions/bind/call";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { Memo } from "../../functions/bind/memo";
import type { SampleSheet } from "../../functions/workbook/samples/sheet";

/**
 * Calculates the sample sheets without any spreadsheet: our functions through bind, the few plain formulas as arithmetic.
 * It reads only what the samples write: calls of ours with references, names and literals, and Excel's few functions below.
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

const numbers = (ranges: readonly Range[]): number[] =>
  ranges.flat(2).filter((c): c is number => typeof c === "number");
const native = {
  SUM: (...ranges: Range[]) => numbers(ranges).reduce((a, b) => a + b, 0),
  COUNT: (...ranges: Range[]) => numbers(ranges).length,
  COUNTA: (...ranges: Range[]) => ranges.flat(2).filter((c) => c !== null && c !== "").length,
  /** Only the one comparison that the samples make. */
  SUMIF: (tested: Range, above: string, summed: Range = tested) => {
    if (above !== ">0") throw new Error(`SUMIF with ${above} is not known here`);
    const kept = tested.map((row, r) => row.map((c, i) => (typeof c === "number" && c > 0 ? summed[r]![i]! : null)));
    return numbers([kept]).reduce((a, b) => a + b, 0);
  },
  SUMPRODUCT: (a: Range, b: Range) =>
    a.reduce((sum, row, r) => sum + row.reduce<number>((s, cell, c) => s + Number(cell) * Number(b[r]![c]), 0), 0),
  ABS: (x: number) => Math.abs(x),
  BLANK: (cell: Cell) => cell === null || cell === "",
  OR: (...conditions: boolean[]) => conditions.some(Boolean),
  ISNUMBER: (cell: Cell) => typeof cell === "number",
  IFERROR: (cell: Cell, otherwise: Cell) => (cell instanceof CellError ? otherwise : cell),
  IF: (condition: unknown, yes: Cell, no: Cell) => (condition ? yes : no),
  IFNA: (cell: Cell, otherwise: Cell) => (cell instanceof CellError && cell.code === "#N/A" ? otherwise : cell),
  INDEX: (range: Range, row: number, column = 1) => range[row - 1]![column - 1]!,
  MATCH: (wanted: Cell, range: Range) => range.findIndex(([cell]) => cell === wanted) + 1,
};

/** A plain formula as JavaScript: a cell is its value, an area its cells; calls of ours in it are done first. */
function arithmetic(typed: string, rangeOf: (reference: string) => Range, ours: (call: string) => Range): Cell {
  const called: (Cell | Range)[] = [];
  const formula = typed
    .replace(/(\$?[A-Z]\$?\d+)(=|<>)""/g, (_, at, is) => `${is === "=" ? "" : "!"}BLANK(${at})`)
    .replace(/SAW\.[A-Z]+\([^()]*\)/g, (text) => {
      const cells = ours(text);
      called.push(cells.length === 1 && cells[0]!.length === 1 ? cells[0]![0]! : cells);
      return `called[${called.length - 1}]`;
    });
  const reference = /(?:[A-Z][a-z]+!)?\$?[A-Z]\$?\d+(?::\$?[A-Z]\$?\d+)?/g;
  const code = formula.split(/("[^"]*")/).map((part, i) =>
    i % 2 === 1
      ? part
      : part
          .replace(reference, (at) => `${at.includes(":") ? "area" : "cell"}(${JSON.stringify(at)})`)
          .replace(/&/g, "+")
          .replace(/(?<![<>=])=(?!=)/g, "==="),
  );
  const cell = (at: string): Cell => rangeOf(at)[0]![0]!;
  return new Function("area", "cell", "called", ...Object.keys(native), `return (${code.join("")});`)(
    rangeOf,
    cell,
    called,
    ...Object.values(native),
  ) as Cell;
}

export function evaluate(book: readonly SampleSheet[]): Sheets {
  const memo = new Memo();
  const names = new Map(
    book.flatMap((s) => Object.entries(s.names ?? {}).map(([name, area]) => [name, `${s.name}!${area}`] as const)),
  );
  const raw = new Map(
    book.map((s) => [
      s.name,
      new Map(s.rows.flatMap((row, r) => row.cells.map((cell, c) => [address(r, c), cell] as const))),
    ]),
  );
  const done = new Map(book.map((s) => [s.name, new Map<string, Cell>()]));

  /** The formula that fills a cell, where it is another cell's. */
  const spilledFrom = (sheet: string, at: string): string | undefined => {
    const [row, column] = [Number(at.slice(1)) - 1, at.charCodeAt(0) - 65];
    const area = book
      .find((s) => s.name === sheet)!
      .spills?.find((spill) => spill.split(":")[0] !== at && inArea(areaOf(spill)!, row, column));
    return area?.split(":")[0];
  };
  const cellAt = (sheet: string, at: string): Cell => {
    const known = done.get(sheet)!;
    if (!known.has(at)) {
      const anchor = spilledFrom(sheet, at);
      if (anchor !== undefined && cellAt(sheet, anchor) !== undefined && known.has(at)) return known.get(at) ?? null;
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
    return Array.from({ length: b.row - a.row + 1 }, (_, r) =>
      Array.from({ length: b.column - a.column + 1 }, (__, c) => cellAt(own, address(a.row + r, a.column + c))),
    );
  };
  const argument = (sheet: string, text: string): Range | null => {
    if (text === "") return null;
    if (text.startsWith('"')) return [[text.slice(1, -1).replace(/""/g, '"')]];
    return /^-?[\d.]+$/.test(text) ? [[Number(text)]] : rangeOf(sheet, names.get(text) ?? text);
  };
  const ours = (sheet: string, text: string): Range => {
    const [, name, args] = /^SAW\.([A-Z]+)\((.*)\)$/s.exec(text)!;
    return call(
      catalogue.find((e) => e.name === name)!,
      splitArguments(args!).map((a) => argument(sheet, a)),
      memo,
    );
  };
  const single = (sheet: string, formula: string): Cell =>
    arithmetic(
      formula,
      (reference) => rangeOf(sheet, reference),
      (text) => ours(sheet, text),
    );
  /** FILTER(text, condition, otherwise), each row of its areas as a formula of single cells. */
  const filtered = (sheet: string, formula: string): Range => {
    const [text, condition, otherwise] = splitArguments(formula.slice("=FILTER(".length, -1)) as [
      string,
      string,
      string,
    ];
    const [, from, to] = /[A-Z](\d+):[A-Z](\d+)/.exec(text)!.map(Number) as [number, number, number];
    const kept = Array.from({ length: to - from + 1 }, (_, i) => from + i).flatMap((row) => {
      const inRow = (part: string): string =>
        part.replace(/ROW\([^)]*\)/g, String(row)).replace(/([A-Z])\d+:[A-Z]\d+/g, `$1${row}`);
      return single(sheet, inRow(condition)) ? [[single(sheet, inRow(text))]] : [];
    });
    return kept.length === 0 ? [[single(sheet, otherwise)]] : kept;
  };
  const calculate = (sheet: string, at: string, formula: string): void => {
    const known = done.get(sheet)!;
    const fills = /^=(?:SAW\.[A-Z]+\([^()]*\)|FILTER\(.*\))$/s.test(formula);
    if (!fills) {
      known.set(at, single(sheet, formula.slice(1)));
      return;
    }
    const cells = formula.startsWith("=FILTER") ? filtered(sheet, formula) : ours(sheet, formula.slice(1));
    const [column, row] = [at.charCodeAt(0) - 65, Number(at.slice(1)) - 1];
    cells.forEach((line, r) => line.forEach((cell, c) => known.set(address(row + r, column + c), cell)));
  };

  for (const sheet of book) for (const [at] of raw.get(sheet.name)!) cellAt(sheet.name, at);
  return done;
}
