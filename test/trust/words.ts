import type { Chance } from "./sheet";

/** Sizes, grades and blades as they stand in order books (invented), for random calls. */
const decimals = (chance: Chance, low: number, high: number): string =>
  Math.exp(chance.number(Math.log(low), Math.log(high))).toFixed(2);

const shapes: readonly ((chance: Chance) => string)[] = [
  (c) => `round ${decimals(c, 10, 500)} mm`,
  (c) => `round ${decimals(c, 0.5, 18)} in`,
  (c) => `square ${decimals(c, 10, 300)} mm`,
  (c) => `hex ${decimals(c, 10, 120)} mm`,
  (c) => `flat ${decimals(c, 20, 400)}x${decimals(c, 5, 100)} mm`,
  (c) => `tube ${decimals(c, 60, 300)}x${decimals(c, 2, 25)} mm`,
  (c) => `box ${decimals(c, 60, 300)}x${decimals(c, 60, 200)}x${decimals(c, 3, 20)} mm`,
  (c) => `round ${decimals(c, 10, 80)} mm bundle ${String(c.whole(1, 5))}x${String(c.whole(2, 6))}`,
  (c) => `round ${decimals(c, 1, 6)} in mitre ${String(c.whole(5, 60))}`,
  (c) => c.of(["W12x50", "W8x31", "C8x11.5", "L4x4x1/2", "HEB 200", "IPE 300", "UPN 200", "pipe 4 sch 40"]),
];

export const anySize = (chance: Chance): string => chance.of(shapes)(chance);

export const grades = [
  "A36",
  "1018",
  "1045",
  "4140",
  "4140 HT",
  "D2",
  "304",
  "316L",
  "17-4PH",
  "6061-T6",
  "C36000",
  "GCI-30",
  "Inconel 718",
  "Ti-6Al-4V",
  "1.4301",
  "42CrMo4",
] as const;

export const blades = ["bi-metal", "carbide"] as const;
