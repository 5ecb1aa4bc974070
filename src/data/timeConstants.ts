import { constant, type Constant } from "./constant";

/** Constants of the wait for a saw. */
// prettier-ignore
export const timeConstants = {
  settledTo: constant(0.95, "-", "judgement", "share of the saws' time above which no long-run wait is given: it takes far longer than a period to come"),
  fromEmptyFrom: constant(0.8, "-", "judgement", "share of the saws' time from which the wait of the first hours is given; below it is a few minutes and the long run's"),
  steps: constant(40, "-", "derived", "Simpson steps of the mean over the hours, in the root of the time"),
  jobEffect: constant(0.9, "-", "derived", "how much shorter than the continuous model the first waits are, in jobs: fitted to simulations of 1 to 4 saws"),
  sawEffect: constant(0.4, "-", "derived", "the same, less by this over the number of saws"),
  mostSaws: constant(8, "saws", "derived", "saws up to which the wait of the first hours was simulated"),
  mostVariation: constant(5, "-", "derived", "cs² of the minutes up to which it was simulated, for up to 4 saws"),
  usualVariation: constant(1.3, "-", "derived", "the same for more saws"),
  fewSaws: constant(4, "saws", "derived", "saws up to which minutes may vary more"),
  longestJob: constant(0.5, "-", "derived", "a job longer than this share of the hours is beyond what was simulated"),
} as const satisfies Record<string, Constant>;
