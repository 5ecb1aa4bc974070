import { callsIn } from "../sheet/callsIn";
import { isError } from "../../functions/formula/cellErrors";
import { explain, type Asked } from "./explain";
import type { Block, Place, Sheet, Stuck, Value } from "../sheet/sheet";
import { typedFormula } from "../sheet/typedFormula";

/** At most so many cells of a workbook are read, and the reasons of so many errors looked for. */
export const limits = { cells: 500_000, reasons: 400 };
/** Questions to the sheet that are under way together. */
const together = 20;

export interface Uses {
  /** Cells that hold a formula with one of our functions. */
  readonly cells: number;
  /** Cells in error of such formulas, those that they spill into included. */
  readonly wrong: number;
  /** The cells in error by their sentence, most cells first. */
  readonly groups: readonly (readonly [sentence: string, places: readonly InError[]])[];
  /** Cells that stay at #NAME? until their formula is typed again, by sheet. */
  readonly stuck: ReadonlyMap<string, readonly Stuck[]>;
  /** Cells for each function, by its name. */
  readonly functions: readonly (readonly [name: string, cells: number])[];
  /** What was not looked at, in sentences; empty where all was. */
  readonly unread: string;
  /** Sheets that cannot be gone to as they are. */
  readonly hidden: ReadonlySet<string>;
}

/** A cell in error, and the text that its row begins with: by that a person knows the line. */
export type InError = Place & { readonly line: string };
type Wrong = Asked & InError;

/** The first text of a row that no formula makes. */
const lineOf = (formulas: readonly unknown[], values: readonly Value[]): string =>
  values.find((v, c): v is string => typeof v === "string" && v !== "" && formulas[c] === v && !isError(v)) ?? "";

/** A formula of ours that the add-in was not there for: recalculating does not mend it, typing it again does. */
const isStuck = ({ formula, value, offset }: Wrong): boolean =>
  offset === undefined && (value === "#NAME?" || /_xldudf_SAW/i.test(formula));

const stuckIn = (wrong: readonly Wrong[]): Uses["stuck"] => {
  const sheets = new Map<string, Stuck[]>();
  for (const { sheet, row, column, formula } of wrong.filter(isStuck))
    sheets.set(sheet, [...(sheets.get(sheet) ?? []), { row, column, formula: typedFormula(formula) }]);
  return sheets;
};

const raise = <K>(counts: Map<K, number>, key: K): void => void counts.set(key, (counts.get(key) ?? 0) + 1);

/** Counts what one block holds, and collects its cells in error. */
function take(
  sheet: string,
  { row, column, formulas, values, spills }: Block,
  counts: Map<string, number>,
  wrong: Wrong[],
): number {
  const from = new Map((spills ?? []).map((s) => [`${s.row} ${s.column}`, s]));
  let cells = 0;
  formulas.forEach((line, r) => {
    line.forEach((own, c) => {
      const value = values[r]![c]!;
      // A text is its own formula, also one that begins with an equals sign.
      const names = new Set(typeof own === "string" && own !== value ? callsIn(own).map((one) => one.name) : []);
      for (const name of names) raise(counts, name);
      if (names.size > 0) cells += 1;
      if (!isError(value)) return;
      const spill = from.get(`${row + r} ${column + c}`);
      const formula = spill?.formula ?? (names.size > 0 ? String(own) : "");
      if (callsIn(formula).length > 0)
        wrong.push({
          sheet,
          row: row + r,
          column: column + c,
          formula,
          value,
          line: lineOf(line, values[r]!),
          ...(spill === undefined ? {} : { offset: spill.offset }),
        });
    });
  });
  return cells;
}

/** The reasons, a few at a time. */
async function reasons(wrong: readonly Wrong[], sheet: Sheet, tell: (text: string) => void): Promise<Uses["groups"]> {
  const groups = new Map<string, InError[]>();
  const put = (sentence: string, place: InError): void =>
    void groups.set(sentence, [...(groups.get(sentence) ?? []), place]);
  for (let i = 0; i < Math.min(wrong.length, limits.reasons); i += together) {
    tell(`Looking for the reason, cell in error ${i + 1} of ${wrong.length} …`);
    const some = wrong.slice(i, Math.min(i + together, limits.reasons));
    (await Promise.all(some.map((one) => explain(one, sheet)))).forEach((sentence, k) => {
      put(sentence, some[k]!);
    });
  }
  for (const one of wrong.slice(limits.reasons))
    put(
      `the reason was looked for in the first ${limits.reasons} cells in error only. Mend those, then list again.`,
      one,
    );
  return [...groups].sort(([, a], [, b]) => b.length - a.length);
}

const whole = (n: number): string => n.toLocaleString("en-US");

/** Reads every sheet, block by block, and says what it found of our functions. Nothing is written. */
export async function listUses(sheet: Sheet, tell: (text: string) => void): Promise<Uses> {
  const counts = new Map<string, number>();
  const wrong: Wrong[] = [];
  const tabs = await sheet.sheets();
  let [cells, read, unread] = [0, 0, ""];
  let blind = false;
  for (const { name } of tabs) {
    for (let from: number | undefined = 0; from !== undefined;) {
      if (read >= limits.cells) {
        unread = `Only the first ${whole(read)} cells were read: ${name} from row ${whole(from + 1)} on, and the sheets after it, were not.`;
        break;
      }
      tell(`Reading ${name}, from row ${whole(from + 1)} …`);
      const block: Block = await sheet.block(name, from);
      cells += take(name, block, counts, wrong);
      read += block.formulas.length * (block.formulas[0]?.length ?? 0);
      blind ||= block.spills === undefined;
      from = block.next;
    }
    if (unread !== "") break;
  }
  const groups = await reasons(wrong, sheet, tell);
  const functions = [...counts].sort(([a, x], [b, y]) => y - x || a.localeCompare(b));
  const spilled = blind
    ? "This sheet does not tell which formula spills into a cell: of results over several cells, only the first was looked at."
    : "";
  return {
    cells,
    wrong: wrong.length,
    groups,
    stuck: stuckIn(wrong),
    functions,
    unread: `${unread} ${spilled}`.trim(),
    hidden: new Set(tabs.filter((t) => t.hidden).map((t) => t.name)),
  };
}
