import type { Book } from "./book";
import { areaOf, type Area } from "../formula/cellAddress";
import { sheetNamed, tokensOf, type Token } from "../formula/tokens";
import { BookFault } from "./fault";
import { namesOf, type FormulaCell } from "./formulas";

/** Functions that ask where a cell is, and not what is in it. */
const places = new Set(["ROW", "ROWS", "COLUMN", "COLUMNS", "AREAS", "ISREF", "FORMULATEXT"]);

/** More than this is not looked through: the engine itself would take minutes. */
const mostSteps = 30_000_000;
/** Judgement: a range beyond thirty whole columns is a slip, and an engine that multiplies it out never ends. */
const mostCellsRead = 30_000_000;

interface Read {
  readonly sheet: string;
  readonly area: Area;
}

interface Node {
  readonly from: number;
  readonly to: number;
  readonly index: number;
}

/** Formula cells, and the cells that they fill, by sheet and row. */
type Places = ReadonlyMap<string, ReadonlyMap<number, readonly Node[]>>;

const folded = (name: string): string => name.toLowerCase();

function placesOf(formulas: readonly FormulaCell[]): Places {
  const sheets = new Map<string, Map<number, Node[]>>();
  formulas.forEach(({ sheet, cell }, index) => {
    const rows = sheets.get(folded(sheet.name)) ?? new Map<number, Node[]>();
    sheets.set(folded(sheet.name), rows);
    const { row, column } = cell;
    const area = cell.formula!.area ?? { top: row, bottom: row, left: column, right: column };
    for (let r = area.top; r <= area.bottom; r += 1) {
      const list = rows.get(r) ?? [];
      list.push({ from: area.left, to: area.right, index });
      rows.set(r, list);
    }
  });
  return sheets;
}

const isPlace = (tokens: readonly Token[], i: number): boolean => {
  const call = tokens[i - 1]?.kind === "sheet" ? i - 3 : i - 2;
  return tokens[call + 1]?.text === "(" && places.has(tokens[call]?.text.toUpperCase() ?? "");
};

/** What a formula reads: its references, and those of the names in it. */
class Reader {
  private readonly names: ReadonlyMap<string, string>;
  private readonly known = new Map<string, readonly Read[]>();

  constructor(book: Book) {
    this.names = new Map(namesOf(book).map(({ name, refersTo }) => [folded(name), refersTo]));
  }

  of(text: string, sheet: string, within: readonly string[] = []): readonly Read[] {
    const tokens = tokensOf(text).filter(({ kind }) => kind !== "space");
    return tokens.flatMap((token, i) => {
      if (token.kind === "reference") {
        const area = areaOf(token.text.replace(/[$#]/g, ""));
        if (area === undefined || isPlace(tokens, i)) return [];
        const before = tokens[i - 1];
        return [{ sheet: before?.kind === "sheet" ? sheetNamed(before) : sheet, area }];
      }
      return token.kind === "name" ? this.named(folded(token.text), sheet, within) : [];
    });
  }

  private named(name: string, sheet: string, within: readonly string[]): readonly Read[] {
    const text = this.names.get(name);
    if (text === undefined) return [];
    if (within.includes(name)) throw new BookFault(`cannot be recalculated: the name ${name} refers to itself`);
    const known = this.known.get(name) ?? this.of(text, sheet, [...within, name]);
    this.known.set(name, known);
    return known;
  }
}

function* met({ area }: Read, rows: ReadonlyMap<number, readonly Node[]> | undefined): Generator<number> {
  if (rows === undefined) return;
  const isTall = area.bottom - area.top > rows.size;
  const within = isTall
    ? [...rows.keys()].filter((row) => row >= area.top && row <= area.bottom)
    : Array.from({ length: area.bottom - area.top + 1 }, (_, i) => area.top + i);
  for (const row of within)
    for (const { from, to, index } of rows.get(row) ?? []) if (from <= area.right && to >= area.left) yield index;
}

const cellsIn = ({ top, left, bottom, right }: Area): number => (bottom - top + 1) * (right - left + 1);

/**
 * A formula that depends on its own result, by whatever way: the engine would give it a number all the same.
 * @returns the formulas of one circle, or undefined where there is none
 * @throws BookFault a name that refers to itself; a range too large to be calculated with
 */
export function circleOf(book: Book, formulas: readonly FormulaCell[]): readonly FormulaCell[] | undefined {
  const [reader, sheets] = [new Reader(book), placesOf(formulas)];
  const state = new Uint8Array(formulas.length);
  let steps = 0;
  const readBy = (index: number): Iterator<number> => {
    const { engine, sheet } = formulas[index]!;
    const reads = reader.of(engine, sheet.name);
    if (reads.some(({ area }) => cellsIn(area) > mostCellsRead))
      throw new BookFault(
        `cannot be recalculated: ${sheet.name} has a formula that reads more than ${mostCellsRead / 1e6} million cells at once`,
      );
    return (function* () {
      for (const read of reads) yield* met(read, sheets.get(folded(read.sheet)));
    })();
  };
  for (let start = 0; start < formulas.length; start += 1) {
    if (state[start] !== 0) continue;
    const path: { readonly index: number; readonly next: Iterator<number> }[] = [];
    const enter = (index: number): void => {
      state[index] = 1;
      path.push({ index, next: readBy(index) });
    };
    enter(start);
    while (path.length > 0) {
      if ((steps += 1) > mostSteps) return undefined;
      const { index, next } = path[path.length - 1]!;
      const step = next.next();
      if (step.done === true) {
        state[index] = 2;
        path.pop();
      } else if (state[step.value] === 1)
        return path.slice(path.findIndex((p) => p.index === step.value)).map((p) => formulas[p.index]!);
      else if (state[step.value] === 0) enter(step.value);
    }
  }
  return undefined;
}
