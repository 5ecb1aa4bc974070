import { InputError, orRefusal } from "../errors";
import { refusalText } from "../phrase";
import type { CutRun, PitchedWork } from "../cutting/cut";
import { cutAtFactor } from "./cutAtFactor";
import { fitLog, type SolvedCut } from "./fitLog";
import type { CutLog, LeftOut, LoggedCut } from "./loggedCut";
import { readLog } from "./readLog";
import { solveFactor } from "./solveFactor";
import { tuneTable, type TuneRow } from "./tuneTable";

type Run = (factor: number) => CutRun;

/** The cut of a work as a function of the factor, made once for equal works; or the refusal of the model. */
function runOf(): (work: PitchedWork) => Run | InputError {
  const saws = new Map<unknown, number>();
  const made = new Map<string, Run | InputError>();
  return (work) => {
    if (!saws.has(work.shop)) saws.set(work.shop, saws.size);
    const { section, material, blade, pitch, shop } = work;
    const key = [section.text, section.area, material.key, blade, pitch?.text, saws.get(shop)].join("|");
    const known = made.get(key);
    if (known !== undefined) return known;
    const run = orRefusal(() => cutAtFactor(work));
    made.set(key, run);
    return run;
  };
}

/** The factor of one observation; where the model refuses the cut, its rows are left out with the sentence. */
function solveCut(cut: LoggedCut, run: Run | InputError): SolvedCut | readonly LeftOut[] {
  if (run instanceof InputError) return cut.rows.map((row) => ({ row, why: refusalText(run) }));
  const { material, blade } = cut.work;
  return {
    cut,
    group: `${material.group!.name}, ${blade}`,
    run,
    factor: solveFactor((factor) => run(factor).minutes, cut.minutes),
  };
}

/**
 * Rate factors and spreads from a log of timed cuts: for each observation the factor at which the model gives the minutes
 * logged, on the saw as described without its own rate factors; then a two-level model over groups and classes of blade.
 * Nothing in the log is refused: what cannot be used is left out and named, and without a usable cut the factor is 1.
 * @param log columns of the cut log; minutes of cutting [min]
 * @returns rows for the shop block: label [text], value [-], comment [text]
 * @source two-level normal model: Gelman et al., Bayesian Data Analysis, ch. 5 (from memory); what it was simulated to do: docs/method.md
 */
export function tune(log: CutLog): readonly TuneRow[] {
  const read = readLog(log);
  const runFor = runOf();
  const solved: SolvedCut[] = [];
  const refused: LeftOut[] = [];
  for (const cut of read.cuts) {
    const one = solveCut(cut, runFor(cut.work));
    if ("factor" in one) solved.push(one);
    else refused.push(...one);
  }
  const left = [...read.left, ...refused].sort((a, b) => a.row - b.row);
  return tuneTable(read, left, fitLog(solved));
}
