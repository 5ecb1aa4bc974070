import { InputError } from "../errors";
import type { Pitch } from "../blade/pitch";
import { refusalText, type Text } from "../phrase";
import type { PitchedWork } from "../cutting/cut";
import type { CutLog, LeftOut, LoggedCut, ReadLog } from "./loggedCut";

type Row = { readonly work: PitchedWork; readonly minutes: number } | { readonly why: Text };

/** The tuning of the block does not count while it is made. */
const untuned = (shop: PitchedWork["shop"]): PitchedWork["shop"] => ({
  ...shop,
  rateFactor: 1,
  rateFactors: [],
  rateSpread: undefined,
  rateSpreads: [],
});

/** The cells of a row that a cut needs. */
function needed(log: CutLog, row: number) {
  return {
    section: log.section[row],
    material: log.material[row],
    blade: log.blade[row],
    minutes: log.minutes[row],
    shop: log.shops[row],
  };
}

function rowOf(log: CutLog, row: number, untunedShop: (row: number) => PitchedWork["shop"]): Row {
  const cells = needed(log, row);
  const pitch: Pitch | InputError | undefined = log.pitch?.[row];
  for (const [name, cell] of Object.entries({ ...cells, pitch, mark: log.leaveOut?.[row] })) {
    if (cell instanceof InputError) return { why: refusalText(cell) };
    if (cell === undefined && name in cells) return { why: `no ${name}` };
  }
  const { section, material, blade, minutes } = cells as Omit<PitchedWork, "pitch"> & { readonly minutes: number };
  if (material.rateFactor !== undefined) return { why: "the material has a rate factor of its own" };
  const work = { section, material, blade, shop: untunedShop(row), pitch: pitch as Pitch | undefined };
  return { work, minutes };
}

const isSame = (a: PitchedWork, b: PitchedWork): boolean =>
  a.section.text === b.section.text &&
  a.section.area === b.section.area &&
  a.material.key === b.material.key &&
  a.blade === b.blade &&
  a.shop === b.shop &&
  a.pitch?.text === b.pitch?.text;

/** Adds a cut to the observations: to the last one where it is the same. */
function addCut(cuts: LoggedCut[], row: number, work: PitchedWork, minutes: number): void {
  const last = cuts[cuts.length - 1];
  if (last === undefined || !isSame(last.work, work)) {
    cuts.push({ rows: [row], work, minutes });
    return;
  }
  const count = last.rows.length;
  cuts[cuts.length - 1] = {
    rows: [...last.rows, row],
    work: last.work,
    minutes: (last.minutes * count + minutes) / (count + 1),
  };
}

/**
 * Reads a cut log: rows blank in section and minutes are passed over, rows with a mark to leave them out are counted, rows
 * that lack something or hold a wrong cell are named. Neighbouring rows with the same section, material, blade, pitch and
 * saw are one observation, their mean minutes.
 * @param log columns of equal length; minutes [min]
 * @returns observations [min]; rows left out, each with the reason [text]; rows marked [-]
 * @source a run of equal cuts is one piece of evidence about the model, not as many: judgement, simulated in docs/method.md
 */
export function readLog(log: CutLog): ReadLog {
  const cuts: LoggedCut[] = [];
  const left: LeftOut[] = [];
  const shops = new Map<unknown, PitchedWork["shop"]>();
  const untunedShop = (row: number): PitchedWork["shop"] => {
    const shop = log.shops[row] as PitchedWork["shop"];
    const made = shops.get(shop) ?? untuned(shop);
    shops.set(shop, made);
    return made;
  };
  let marked = 0;
  for (let row = 0; row < log.section.length; row += 1) {
    if (log.section[row] === undefined && log.minutes[row] === undefined) continue;
    if (log.leaveOut?.[row] === true) {
      marked += 1;
      continue;
    }
    const read = rowOf(log, row, untunedShop);
    if ("why" in read) left.push({ row: row + 1, why: read.why });
    else addCut(cuts, row + 1, read.work, read.minutes);
  }
  return { cuts, left, marked };
}
