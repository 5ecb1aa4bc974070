import { InputError } from "../../src/errors";
import { bladeLife } from "../../src/records/bladeLife";
import { fitLog, type SolvedCut } from "../../src/records/fitLog";
import { longerOdds } from "../../src/records/longerOdds";
import { rateSpread } from "../../src/records/rateSpread";
import type { Life } from "../../src/statistics/weibullFit";
import { table } from "./reference";

/** Simulated shops and blades: how often what TUNE, BLADELIFE and BLADEODDS claim holds. The same numbers on every run. */

const shops = 1000;

/** Numbers from 0 to 1 with a seed (linear congruential, modulus 2³²). */
function uniforms(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
}
const normals = (next: () => number) => (): number => Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());

/** A cut that nothing holds: its rate goes with the factor. */
const free = ((factor: number) => ({ rate: factor })) as unknown as SolvedCut["run"];
const cutOf = (group: string, y: number): SolvedCut => ({
  cut: { rows: [1] } as unknown as SolvedCut["cut"],
  group,
  run: free,
  factor: Math.exp(y),
});

interface World {
  readonly cuts: number;
  readonly groups: number;
  /** Equal cuts in a run, counted one by one. */
  readonly run?: number;
}

/** Next cuts inside the band of a group with so many cuts, two others having four; and the mean band. */
function covered({ cuts, groups, run = 1 }: World, own: number) {
  const normal = normals(uniforms(20260901));
  let [inside, spreads, given] = [0, 0, 0];
  for (let s = 0; s < shops; s += 1) {
    const mean = 0.22 * normal();
    const middles = [0, 1, 2].map(() => mean + groups * normal());
    const log = middles.flatMap((middle, j) =>
      Array.from({ length: j === 0 ? own : 4 }, () => middle + cuts * normal()).flatMap((y) =>
        Array.from({ length: run }, () => cutOf(String(j), y + (run > 1 ? 0.03 * normal() : 0))),
      ),
    );
    const next = middles[0]! + cuts * normal();
    const { fit, groups: names } = fitLog(log);
    const at = names.indexOf("0");
    if (at < 0) continue;
    const spread = Math.log(rateSpread(fit, at));
    given += 1;
    inside += Math.abs(next - fit.groups[at]!.middle) <= spread ? 1 : 0;
    spreads += spread;
  }
  return { share: inside / given, spread: Math.exp(spreads / given), given: given / shops };
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
const worlds: readonly (readonly [says: string, world: World])[] = [
  ["as assumed", { cuts: 0.12, groups: 0.265 }],
  ["cuts scatter more, groups differ more", { cuts: 0.2, groups: 0.4 }],
  ["cuts scatter twice as much, groups hardly differ", { cuts: 0.25, groups: 0.1 }],
  ["cuts scatter less", { cuts: 0.08, groups: 0.15 }],
  ["groups differ twice as much", { cuts: 0.1, groups: 0.5 }],
  [
    "as assumed, each cut five times in a row and counted as five (TUNE does not)",
    { cuts: 0.12, groups: 0.265, run: 5 },
  ],
];
const counts = [1, 3, 10, 30];

/** Lives of a Weibull distribution of shape 4, some of them cut short. */
function livesOf(next: () => number, count: number, censored: number): readonly Life[] {
  return Array.from({ length: count }, () => {
    const area = (-Math.log(next())) ** (1 / 4);
    return next() < censored ? { area: area * next(), ended: false } : { area, ended: true };
  });
}

const gamma = 0.9064024771; // Γ(1 + 1/4), tables

function lifeRow(count: number, censored: number): readonly string[] {
  const next = uniforms(7);
  let [inside, given] = [0, 0];
  for (let i = 0; i < shops; i += 1) {
    const lives = livesOf(next, count, censored);
    const { low, high } = bladeLife({
      areaCut: lives.map((l) => l.area),
      why: lives.map((l) => (l.ended ? "worn" : "pulled")),
    });
    if (low instanceof InputError || high instanceof InputError) continue;
    given += 1;
    inside += low <= gamma && gamma <= high ? 1 : 0;
  }
  return [String(count), percent(censored), percent(inside / given), percent(given / shops)];
}

function oddsRow(count: number, censored: number, ratio: number): readonly string[] {
  const next = uniforms(11);
  let claims = 0;
  for (let i = 0; i < shops; i += 1) {
    const longer = livesOf(next, count, censored).map((l) => ({ ...l, area: l.area * ratio }));
    claims += longerOdds(livesOf(next, count, censored), longer, 1).likely >= 0.9 ? 1 : 0;
  }
  return [String(count), percent(censored), String(ratio), percent(claims / shops)];
}

const tuneCell = (world: World, own: number): string => {
  const { share, spread, given } = covered(world, own);
  return `${percent(share)} (${spread.toFixed(2)})${given < 0.995 ? `, in ${percent(given)} of shops` : ""}`;
};

const tuneSection = (): readonly string[] => [
  "## TUNE",
  "",
  "The next cut of a group lies within its rate spread: 80 % is claimed. ln of the rate factor scatters by 0.22 between shops; between groups and between cuts as the row says. Two other groups have four cuts each. In brackets the mean band, ×/÷. In some shops the few cuts of a group lie so far from all others that they are left out as outliers: no band is given then, and the group keeps the model's own low and high.",
  "",
  ...table(
    ["world", "groups", "cuts", ...counts.map((n) => `${n} ${n === 1 ? "cut" : "cuts"} of the group`)],
    worlds.map(([says, world]) => [
      says,
      String(world.groups),
      String(world.cuts),
      ...counts.map((n) => tuneCell(world, n)),
    ]),
  ),
  "",
];

const lifeSection = (): readonly string[] => [
  "## BLADELIFE",
  "",
  "The true mean lies between low and high: 80 % is claimed. Lives of a Weibull distribution of shape 4 (standard deviation 28 % of the mean); pulled ones stopped anywhere in their life. Given: share of logs in which low and high can be given at all.",
  "",
  ...table(
    ["blades", "pulled", "mean inside", "given"],
    [lifeRow(3, 0), lifeRow(5, 0), lifeRow(10, 0), lifeRow(5, 0.25), lifeRow(10, 0.25)],
  ),
  "",
];

const oddsSection = (): readonly string[] => [
  "## BLADEODDS",
  "",
  "Trials in which 90 in 100 or more is claimed for the offer. Where both last equally long it should be one in ten.",
  "",
  ...table(
    ["blades of each", "pulled", "true ratio of lives", "claimed"],
    [1, 1.5].flatMap((ratio) => [oddsRow(4, 0, ratio), oddsRow(4, 0.25, ratio), oddsRow(8, 0, ratio)]),
  ),
  "",
];

/** docs/coverage.md. */
export function coveragePage(): string {
  return [
    "# How often the bands hold",
    "",
    `Made by \`npm run generate\`; do not edit. ${shops} simulated shops or trials in each case, the same seed on every run: a share is right to about 2 % either way. What is simulated is the statistics; that the model of cutting has the right shape is not ([method.md](method.md#the-shops-own-numbers) says when not to believe it).`,
    "",
    ...tuneSection(),
    ...lifeSection(),
    ...oddsSection(),
  ].join("\n");
}
