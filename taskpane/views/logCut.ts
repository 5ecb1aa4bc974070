import { call } from "../../functions/bind/call";
import { Memo } from "../../functions/bind/memo";
import { slots } from "../../functions/bind/slots";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { callArguments } from "../sheet/callArguments";
import { callsIn } from "../sheet/callsIn";
import { refusals } from "../sheet/refusals";
import type { Sheet } from "../sheet/sheet";

/** Name of the table that a cut is logged in. */
export const logTable = "Cuts";

/** Arguments of CUTCHECK that are logged, by their name and the heading. */
const logged = ["section", "material", "blade", "pitch", "bandSpeed", "minutes", "saw"] as const;
const heading = (name: string): string => (name === "bandSpeed" ? "band speed" : name);

/** The day as a sheet counts them, from 30 December 1899. */
const dayNumber = (now: Date): number =>
  Math.round((Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - Date.UTC(1899, 11, 30)) / 86_400_000);

const single = (range: Range | null | undefined): Cell =>
  range?.length === 1 && range[0]!.length === 1 ? range[0]![0]! : null;

/** Adds the cut of the selected CUTCHECK to the log; in words, how it went. A cut that CUTCHECK refuses is not logged. */
export async function logCut(sheet: Sheet, now = new Date()): Promise<string> {
  const { formula, sheet: on } = await sheet.selected();
  const asked = callsIn(formula).find((c) => c.name === "CUTCHECK" && c.whole);
  if (asked === undefined) return refusals.noCheck;
  const given = await callArguments(asked, on, sheet);
  const entry = catalogue.find((e) => e.name === "CUTCHECK")!;
  const at = new Map(slots(entry).map((s, i) => [s.name, given?.[i]]));
  if (given === undefined || single(at.get("section")) === null) return refusals.noCheck;
  const [verdict] = call(entry, given, new Memo()).flat();
  if (verdict instanceof CellError) return `Not logged: ${verdict.text === "" ? verdict.code : verdict.text}`;
  const row = new Map<string, string | number>([["date", dayNumber(now)]]);
  for (const name of logged) {
    const cell = single(at.get(name));
    if (typeof cell === "string" || typeof cell === "number") row.set(heading(name), cell);
  }
  const outcome = await sheet.append(logTable, row);
  if (outcome.did === "written") return `Logged as a new row of ${logTable}. To take it back, delete that row.`;
  return outcome.did === "refused" ? outcome.why : `Not logged: ${outcome.address} holds ${outcome.holds}.`;
}
