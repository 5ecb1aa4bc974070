import type { Life } from "../../src/statistics/weibullFit";

const numbers = (text: string): number[] => (text.trim() === "" ? [] : text.trim().split(/\s+/).map(Number));

/** Ended lives, then those still running. */
export const lives = (ended: string, running = ""): Life[] => [
  ...numbers(ended).map((area) => ({ area, ended: true })),
  ...numbers(running).map((area) => ({ area, ended: false })),
];
