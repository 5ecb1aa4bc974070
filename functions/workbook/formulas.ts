import { LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Book, BookCell, BookName, BookSheet } from "./book";
import { addressOf } from "../formula/cellAddress";
import { tokensOf, type Token } from "../formula/tokens";
import { BookFault } from "./fault";
import { tableData, withoutTables } from "./structured";

/** A cell with a formula, the formula written out whatever way the file keeps it. */
export interface FormulaCell {
  readonly sheet: BookSheet;
  readonly cell: BookCell;
  /** As a person types it, without "=". */
  readonly typed: string;
  /** As the engine takes it: table references are addresses. */
  readonly engine: string;
}

const lexer = new LexerTreeBuilder();

type Leaders = ReadonlyMap<number, BookCell>;

const leaderOf = ({ formula }: BookCell, leaders: Leaders): BookCell | undefined =>
  formula!.is === "shared" && formula!.text === "" ? leaders.get(formula!.shared!) : undefined;

/** Followers of a shared formula keep only its number: their text is the leader's, moved. */
function written(cell: BookCell, leaders: Leaders): string {
  const leader = leaderOf(cell, leaders);
  if (leader === undefined) return cell.formula!.text;
  return lexer
    .moveFormulaRefOffset(`=${leader.formula!.text}`, cell.column - leader.column, cell.row - leader.row)
    .slice(1);
}

/** All formulas together, in characters: each is parsed by the engine. */
const longestOfAll = 50_000_000;

/** Before anything is written out: a small file may share one long formula among many cells. */
function refuseLong(sheets: readonly { readonly cells: readonly BookCell[]; readonly leaders: Leaders }[]): void {
  const length = sheets
    .flatMap(({ cells, leaders }) => cells.map((cell) => (leaderOf(cell, leaders) ?? cell).formula!.text.length))
    .reduce((sum, one) => sum + one, 0);
  if (length > longestOfAll)
    throw new BookFault(
      `holds ${(length / 1e6).toFixed(0)} million characters of formulas; that is more than is recalculated`,
    );
}

/**
 * Every formula of a workbook; what-if data tables have none that a cell could calculate.
 * @throws BookFault the formulas are longer than any shop's, or refer to tables that are not there
 */
export function formulasOf({ sheets, tables }: Book): readonly FormulaCell[] {
  const all = sheets.map((sheet) => {
    const cells = sheet.cells.filter((c) => c.formula !== undefined && c.formula.is !== "dataTable");
    const leaders = new Map(
      cells.flatMap((c) =>
        c.formula!.is === "shared" && c.formula!.text !== "" ? [[c.formula!.shared!, c] as const] : [],
      ),
    );
    return { sheet, cells, leaders };
  });
  refuseLong(all);
  return all.flatMap(({ sheet, cells, leaders }) =>
    cells.map((cell) => {
      const typed = written(cell, leaders);
      return { sheet, cell, typed, engine: tableFree(typed, sheet, cell, tables) };
    }),
  );
}

function tableFree(typed: string, sheet: BookSheet, { row, column }: BookCell, tables: Book["tables"]): string {
  try {
    return withoutTables(typed, tables, { sheet: sheet.name, row });
  } catch (problem) {
    if (problem instanceof BookFault)
      throw new BookFault(`${problem.message} (${sheet.name}!${addressOf(row, column)})`);
    throw problem;
  }
}

/** The names of a workbook as the engine takes them, its tables' among them; not those that Excel keeps for itself. */
export const namesOf = ({ names, tables }: Book): readonly BookName[] => [
  ...names
    .filter((n) => !/^_xl/i.test(n.name))
    .map((n) => ({ ...n, refersTo: withoutTables(n.refersTo, tables, { sheet: "", row: 0 }) })),
  ...tables.map((t) => ({ name: t.name, refersTo: tableData(t), sheet: undefined })),
];

/** Cells of another workbook, or of a table that this one does not have. */
const isForeign = (tokens: readonly Token[]): boolean =>
  tokens.some(({ kind, text }) => kind === "table" || (kind === "sheet" && text.includes("[")));

/** The names that LET or LAMBDA bind: each stands in the formula as an argument too. */
const boundIn = (tokens: readonly Token[]): ReadonlySet<string> =>
  new Set(
    tokens
      .filter(
        ({ kind }, i) => kind === "name" && /^[(,]$/.test(tokens[i - 1]?.text ?? "") && tokens[i + 1]?.text === ",",
      )
      .map(({ text }) => text.toLowerCase()),
  );

/** Why the engine cannot calculate one formula; undefined when it can. */
function why(
  { engine }: FormulaCell,
  known: (name: string) => boolean,
  names: ReadonlySet<string>,
  foreign: ReadonlySet<string>,
): string | undefined {
  const tokens = tokensOf(engine).filter((t) => t.kind !== "space");
  if (isForeign(tokens)) return "refers to another workbook";
  const abroad = tokens.find(
    ({ kind, text }) => (kind === "name" || kind === "function") && foreign.has(text.toLowerCase()),
  );
  if (abroad !== undefined) return `uses the name ${abroad.text}, which refers to another workbook`;
  const strange = tokens.filter(
    ({ kind, text }) => kind === "function" && !known(text.toUpperCase()) && !names.has(text.toLowerCase()),
  );
  const bound = strange.length === 0 ? new Set<string>() : boundIn(tokens);
  const unknown = strange.find(({ text }) => !bound.has(text.toLowerCase()));
  return unknown === undefined ? undefined : `calls ${unknown.text.toUpperCase()}, a function that is not known here`;
}

/** The formulas that the engine cannot calculate, each with its cell and the reason. */
export function beyond(
  book: Book,
  formulas: readonly FormulaCell[],
  known: (name: string) => boolean,
): ReadonlyMap<FormulaCell, string> {
  const names = new Set(book.names.map((n) => n.name.toLowerCase()));
  const foreign = new Set(
    namesOf(book)
      .filter((n) => isForeign(tokensOf(n.refersTo)))
      .map((n) => n.name.toLowerCase()),
  );
  return new Map(
    formulas.flatMap((f) => {
      const reason = why(f, known, names, foreign);
      return reason === undefined
        ? []
        : [[f, `${f.sheet.name}!${addressOf(f.cell.row, f.cell.column)} ${reason}`] as const];
    }),
  );
}
