import type { BladeClass } from "../../src/blade/bladeClass";
import { InputError } from "../../src/errors";
import { type Cell } from "../kinds/cell";
import type { ShopLabel } from "./labels";

/** A refusal of the block. */
export const refuse = (
  problem: string,
  facts: Readonly<Record<string, string>> = {},
  reason: "invalid" | "none" = "invalid",
): InputError => new InputError(reason, "settings", problem, facts);
export const fold = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.trim().replace(/\s+/g, " ").toLowerCase() : "";
/** A label as it was found: the row of the table, and for "Rate factor titanium alloys" what it holds for. */
export interface Found {
  readonly row: ShopLabel;
  readonly of: string | undefined;
  /** Class of blade that a row of TUNE holds for: "Rate factor titanium alloys, carbide". */
  readonly blade: BladeClass | undefined;
  readonly written: string;
}

/** A label with its row of the range, from 1. */
export interface Labelled {
  readonly found: Found;
  readonly cells: readonly Cell[];
  readonly at: number;
}

/** In the rows that TUNE gives, a number in the first value column with text or blanks after it holds for every saw. */
export const holdsForAll = ({ found, cells: [first, ...others] }: Labelled): boolean =>
  found.row.byBlade === true && typeof first === "number" && first !== 0 && !others.some((c) => typeof c === "number");

/** What stands behind a rate factor, where the text beside it begins as TUNE's does: "7 cuts", "all 18 cuts". */
export function fromOf({ found, cells }: Labelled): string | undefined {
  if (found.row.key !== "rateFactor") return undefined;
  const text = cells.find((c) => typeof c === "string");
  const [, all, count] = /^(all )?(\d+) cuts?\b/.exec(typeof text === "string" ? text : "") ?? [];
  if (count === undefined) return undefined;
  const cuts = `${count} own ${count === "1" ? "cut" : "cuts"}`;
  return all === undefined ? cuts : `${cuts} of other groups or blades`;
}

/** Two rows that say the same thing; a row without a class of blade holds for both. */
const meet = (a: Found, b: Found): boolean =>
  a.row === b.row && a.of === b.of && (a.blade === b.blade || a.blade === undefined || b.blade === undefined);

/** No label stands twice; one without a value does not count. */
export function refuseDoubled(labels: readonly Labelled[]): void {
  for (const [i, { found, at }] of labels.entries()) {
    const other = labels.slice(0, i).find((l) => meet(l.found, found));
    if (other === undefined) continue;
    const tuned = found.row.byBlade === true ? "; TUNE gives one of them: delete the one that is typed" : "";
    const same = fold(other.found.written) === fold(found.written);
    throw refuse(
      `${same ? '"{label}" stands twice in the shop block' : '"{label}" and "{other}" both stand in the shop block'}, in rows {first} and {second}${tuned}`,
      { label: other.found.written.trim(), other: found.written.trim(), first: String(other.at), second: String(at) },
    );
  }
}
