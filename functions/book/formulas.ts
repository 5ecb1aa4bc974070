import { LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Book, BookCell, BookSheet } from "./book";
import { addressOf } from "./cellAddress";
import { BookFault } from "./fault";
import { withoutTables } from "./structured";

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

/** Followers of a shared formula keep only its number: their text is the leader's, moved. */
function written(cell: BookCell, leaders: ReadonlyMap<number, BookCell>): string {
  const { text, is, shared } = cell.formula!;
  const leader = is === "shared" && text === "" ? leaders.get(shared!) : undefined;
  if (leader === undefined) return text;
  return lexer.moveFormulaRefOffset(`=${leader.formula!.text}`, cell.column - leader.column, cell.row - leader.row).slice(1);
}

/** Every formula of a workbook; what-if data tables have none that a cell could calculate. */
export function formulasOf({ sheets, tables }: Book): readonly FormulaCell[] {
  return sheets.flatMap((sheet) => {
    const cells = sheet.cells.filter((c) => c.formula !== undefined && c.formula.is !== "dataTable");
    const leaders = new Map(cells.flatMap((c) => (c.formula!.is === "shared" && c.formula!.text !== "" ? [[c.formula!.shared!, c] as const] : [])));
    return cells.map((cell) => {
      const typed = written(cell, leaders);
      return { sheet, cell, typed, engine: tableFree(typed, sheet, cell, tables) };
    });
  });
}

function tableFree(typed: string, sheet: BookSheet, { row, column }: BookCell, tables: Book["tables"]): string {
  try {
    return withoutTables(typed, tables, { sheet: sheet.name, row });
  } catch (problem) {
    if (problem instanceof BookFault) throw new BookFault(`${problem.message} (${sheet.name}!${addressOf(row, column)})`);
    throw problem;
  }
}

const quoted = /"(?:[^"]|"")*"/g;

/** Why the engine cannot calculate a formula; undefined when it can. */
export function beyond({ engine }: FormulaCell, known: (name: string) => boolean, names: ReadonlySet<string>): string | undefined {
  const code = engine.replace(quoted, '""');
  if (/\[[^\]]*\]/.test(code)) return "refers to another workbook";
  const plain = code.replace(/'(?:[^']|'')*'/g, "");
  const called = [...plain.matchAll(/(?<![\p{L}\p{N}_.\\])([\p{L}_\\][\p{L}\p{N}_.\\]*)\s*\(/gu)].map((m) => m[1]!);
  // A name bound by LET or LAMBDA stands in the formula as an argument too.
  const unknown = called.find((name) => !known(name.toUpperCase()) && !names.has(name.toLowerCase()) && !new RegExp(`[(,]\\s*${name.replace(/[.\\]/g, "\\$&")}\\s*,`, "i").test(plain));
  return unknown === undefined ? undefined : `calls ${unknown.toUpperCase()}, a function that is not known here`;
}
