import type { SawProblem } from "./sawProblem";

/** What one saw's order comes to. */
export interface SawRun {
  readonly late: number;
  readonly changes: number;
  readonly end: number;
  /** Sum of the finishes. */
  readonly flow: number;
}

/**
 * One saw works its jobs one after another, a change of blade before a job that needs another one; the first blade is no
 * change.
 * @param problem the day
 * @param saw place of the saw
 * @param jobs in their order
 * @returns late, end and flow [min/1000], changes [-]
 * @source definition
 */
export function sawRun({ minutes, due, blade, change }: SawProblem, saw: number, jobs: readonly number[]): SawRun {
  const own = minutes[saw]!;
  let [clock, on, late, changes, flow] = [0, -1, 0, 0, 0];
  for (const job of jobs) {
    const needs = blade[job]!;
    if (needs >= 0 && needs !== on) {
      if (on >= 0) {
        clock += change;
        changes += 1;
      }
      on = needs;
    }
    clock += own[job]!;
    if (clock > due[job]!) late += clock - due[job]!;
    flow += clock;
  }
  return { late, changes, end: clock, flow };
}
