import { cutPattern, type Pattern, type Plan } from "./cutPattern";
import type { LpResult, Open } from "./columnLp";
import { greedyPlan } from "./greedyPlan";
import { planCost, type PlanSearch } from "./planSearch";

const whole = 1e-6;

/** A plan in the making: what is fixed, and what is open. */
class Dive {
  private readonly plan: [Pattern, number][];
  private readonly demand: number[];
  private readonly limits: number[];

  constructor(
    private readonly search: PlanSearch,
    open: Open,
    fixed: Plan,
  ) {
    this.plan = fixed.map(([pattern, times]) => [pattern, times]);
    this.demand = [...open.demand];
    this.limits = [...open.limits];
  }

  get open(): Open {
    return { demand: this.demand, limits: this.limits };
  }

  get cost(): number {
    return planCost(this.plan);
  }

  get isComplete(): boolean {
    return this.demand.every((pieces) => pieces === 0);
  }

  get taken(): Plan {
    return this.plan;
  }

  /** Whole times that a pattern fits into what is open. */
  fits({ cuts, stock }: Pattern, times: number): number {
    return cuts.reduce(
      (most, [i, pieces]) => Math.min(most, Math.floor(this.demand[i]! / pieces)),
      Math.min(times, this.limits[stock]!),
    );
  }

  fix(pattern: Pattern, times: number): void {
    this.plan.push([pattern, times]);
    for (const [i, pieces] of pattern.cuts) this.demand[i]! -= times * pieces;
    this.limits[pattern.stock]! -= times;
  }

  /** One bar of a pattern, cut down to what is open and its free room filled again; false where nothing of it is open. */
  fixOne(pattern: Pattern): boolean {
    if (this.limits[pattern.stock]! <= 0) return false;
    const { problem } = this.search;
    const cuts = new Map(pattern.cuts.map(([i, pieces]) => [i, Math.min(pieces, this.demand[i]!)]));
    if ([...cuts.values()].every((pieces) => pieces === 0)) return false;
    let room = problem.stocks[pattern.stock]!.capacity;
    for (const [i, pieces] of cuts) room -= pieces * problem.widths[i]!;
    problem.widths.forEach((width, i) => {
      const more = Math.min(this.demand[i]! - (cuts.get(i) ?? 0), Math.floor(room / width));
      if (more <= 0) return;
      cuts.set(i, (cuts.get(i) ?? 0) + more);
      room -= more * width;
    });
    this.fix(this.search.keep(cutPattern(problem, pattern.stock, [...cuts])), 1);
    return true;
  }
}

type Times = readonly (readonly [pattern: Pattern, times: number])[];

/** Most times first; equal ones by name, so that the order is always the same. */
const mostFirst = (list: Times): Times => [...list].sort((p, q) => q[1] - p[1] || (p[0].key < q[0].key ? -1 : 1));

/** The patterns with parts of bars, the largest part first. */
const inParts = (list: Times): Times =>
  list
    .filter(([, times]) => times - Math.floor(times + whole) > whole)
    .sort((p, q) => (q[1] % 1) - (p[1] % 1) || (p[0].key < q[0].key ? -1 : 1));

/** One step down: whole bars of every pattern; where there are none, or the rank asks for it, one bar of a pattern in parts. */
function step(dive: Dive, lp: LpResult, pick: number | undefined): boolean {
  const list = mostFirst(lp.patterns);
  let isAny = false;
  for (const [pattern, times] of list) {
    const count = dive.fits(pattern, Math.floor(times + whole));
    if (count < 1) continue;
    dive.fix(pattern, count);
    isAny = true;
  }
  if (isAny && pick === undefined) return true;
  const parts = inParts(list);
  const chosen = parts[Math.min(pick ?? 0, parts.length - 1)] ?? list[0];
  return (chosen !== undefined && dive.fixOne(chosen[0])) || isAny;
}

/** The stock is short, or nothing better can come of it. */
const isHopeless = (search: PlanSearch, dive: Dive, lp: LpResult): boolean =>
  lp.isShort || lp.patterns.length === 0 || dive.cost + search.roundedUp(Math.max(0, lp.bound)) >= search.bestCost;

/**
 * A plan from the programme in parts of bars: whole bars are fixed, what is left is solved again, down to the end; at every
 * step the greedy plan of what is open is tried too.
 * @param search records every plan that is better
 * @param open pieces and bars still open [-]
 * @param fixed bars of the plan that stay
 * @param rank which pattern in parts is taken at the first step, so that dives differ
 * @returns nothing [-]
 * @source diving on a column generation: common practice
 */
export function divePlan(search: PlanSearch, open: Open, fixed: Plan, rank: number): void {
  const dive = new Dive(search, open, fixed);
  for (let depth = 0; ; depth += 1) {
    if (dive.isComplete) {
      search.record(dive.taken);
      return;
    }
    const isRoot = depth === 0 && fixed.length === 0;
    const lp = isRoot ? search.root : search.lp(dive.open);
    if (isHopeless(search, dive, lp)) return;
    if (!step(dive, lp, depth === 0 && rank > 0 ? rank : undefined)) return;
    const rest = greedyPlan(search.problem, dive.open);
    if (rest !== undefined) search.record([...dive.taken, ...rest]);
    if (search.isDone) return;
  }
}
