import { describe, expect, it } from "vitest";
import { printText } from "../../functions/kinds/sentence";
import { once } from "../../src/once";
import { tune } from "../../src/records/tune";
import { shop } from "../cutting/fixture";
import { logOf, minutesAt, normals, type Line } from "./log";

const grades = [
  ["304", "austenitic stainless"],
  ["4140", "alloy steel"],
  ["A36", "low-carbon steel"],
] as const;
const sizes = [
  "round 2-1/2",
  "round 3",
  "round 3-1/2",
  "round 4",
  "round 4-1/2",
  "round 5",
  "round 5-1/2",
  "round 6",
  "round 6-1/2",
  "round 7",
];
const values = (lines: readonly Line[]): ReadonlyMap<string, number> =>
  new Map(tune(logOf(lines)).map((r) => [r.label as string, r.value]));
const nominal = once(
  () => new Map(grades.flatMap(([grade]) => sizes.map((size) => [`${size}|${grade}`, minutesAt(size, grade, 1)]))),
);
/** Minutes at a factor on a saw that limits nothing: in proportion. */
const cut = (size: string, grade: string, y: number): Line => ({
  size,
  grade,
  minutes: nominal().get(`${size}|${grade}`)! / Math.exp(y),
});

interface World {
  readonly cuts: number;
  readonly groups: number;
}

/** Share of next cuts inside the band of a group with 10 observations, two other groups having 4; mean spread. */
function cover({ cuts, groups }: World, seed: number, runs: number) {
  const normal = normals(seed);
  let [inside, spreads] = [0, 0];
  const shops = 300;
  for (let s = 0; s < shops; s += 1) {
    const mean = 0.22 * normal();
    const own = grades.map(() => mean + groups * normal());
    const lines = grades.flatMap(([grade], j) =>
      sizes.slice(0, j === 0 ? 10 : 4).flatMap((size) => {
        const work = own[j]! + cuts * normal();
        return Array.from({ length: runs }, () => cut(size, grade, work + (runs > 1 ? 0.03 * normal() : 0)));
      }),
    );
    const table = values(lines);
    const spread = table.get("Rate spread austenitic stainless, bi-metal")!;
    const next = own[0]! + cuts * normal();
    const off = Math.abs(next - Math.log(table.get("Rate factor austenitic stainless, bi-metal")!));
    inside += off <= Math.log(spread) ? 1 : 0;
    spreads += Math.log(spread);
  }
  return { share: inside / shops, spread: Math.exp(spreads / shops) };
}

describe("simulated shops, fixed seed", () => {
  const worlds = [0.12, 0.08, 0.2].flatMap((cuts) => [0.15, 0.265, 0.45].map((groups) => [cuts, groups] as const));
  it.each(worlds)("10 observations, cuts %f, groups %f: 72 to 92 %% of next cuts lie in the band", (cuts, groups) => {
    const { share, spread } = cover({ cuts, groups }, 11, 1);
    expect(share).toBeGreaterThanOrEqual(0.72);
    expect(share).toBeLessThanOrEqual(0.92);
    if (cuts === 0.12 && groups === 0.265) expect(spread).toBeLessThanOrEqual(1.25);
  });
  it("runs of 5 equal cuts count as one observation: 72 to 92 %", () => {
    const { share } = cover({ cuts: 0.12, groups: 0.265 }, 5, 5);
    expect(share).toBeGreaterThanOrEqual(0.72);
    expect(share).toBeLessThanOrEqual(0.92);
  });
});

describe("tuning closes", () => {
  it("on a log made with CUTDATA at 0.8 in one group and 1.1 in another, within the shrinkage worked out here", () => {
    const lines = [
      ...sizes.map((size): Line => ({ size, grade: "304", minutes: minutesAt(size, "304", 0.8) })),
      ...sizes.map((size): Line => ({ size, grade: "4140", minutes: minutesAt(size, "4140", 1.1) })),
    ];
    const table = values(lines);
    // No scatter: σ² = 4·0.12²/22; both groups have 10; each is drawn to the shop's middle by the share 1 − B.
    const sigma2 = (4 * 0.12 ** 2) / 22;
    const w = 1 / (0.265 ** 2 + sigma2 / 10);
    const middle = (w * (Math.log(0.8) + Math.log(1.1))) / (1 / 0.22 ** 2 + 2 * w);
    const b = 0.265 ** 2 * w;
    for (const [group, factor] of [
      ["austenitic stainless", 0.8],
      ["alloy steel", 1.1],
    ] as const) {
      const expected = Math.exp((1 - b) * middle + b * Math.log(factor));
      expect(table.get(`Rate factor ${group}, bi-metal`)).toBeCloseTo(expected, 5);
      expect(Math.abs(expected - factor)).toBeLessThan(0.002);
    }
    expect(table.get("Rate factor")).toBeCloseTo(Math.exp(middle), 5);
  });

  it("is the same within 0.01 with a fifth of the cuts held by the motor (scatter 0.12)", () => {
    const normal = normals(3);
    const weak = shop({ motorPower: 500 });
    const free = grades
      .slice(0, 2)
      .flatMap(([grade], j) => sizes.map((size) => cut(size, grade, Math.log(j === 0 ? 0.8 : 1.1) + 0.12 * normal())));
    const held = ["round 7-1/2", "round 8", "round 8-1/2", "round 9", "round 9-1/2"].map((size): Line => ({
      size,
      grade: "4140",
      saw: weak,
      minutes: minutesAt(size, "4140", 1.1, weak) * Math.exp(0.12 * normal()),
    }));
    const [without, along] = [values(free), values([...free, ...held])];
    expect(tune(logOf([...free, ...held])).some((r) => JSON.stringify(r.comment).includes("5 held by the motor"))).toBe(
      true,
    );
    for (const [label, value] of without) expect(Math.abs(along.get(label)! - value), label).toBeLessThan(0.01);
  });
});

it("leaves out what the model refuses, row by row with its sentence, and tunes by the rest", () => {
  // Flood coolant on magnesium: never (hydrogen, DGUV Information 209-090e); 300 mm of work in a saw for 200 mm.
  const wet = shop({ coolant: "flood" });
  const small = shop({ maximumHeight: 200, maximumWidth: 200 });
  const good = [0.8, 0.8, 0.8].map((y, i) => cut(sizes[2 * i]!, "304", Math.log(y)));
  const bad: readonly Line[] = [
    { size: "round 300 mm", grade: "304", minutes: 30, saw: small },
    { size: "round 3", grade: "AZ31B", minutes: 1, saw: wet },
  ];
  const rows = tune(logOf([...good.slice(0, 2), ...bad, ...good.slice(2)]));
  const all = printText(rows[0]!.comment, "metric");
  expect(all).toContain("all 3 cuts");
  expect(all).toContain("row 3 left out: the work is 300 mm wide; this saw takes 200 mm");
  expect(all).toMatch(/row 4 left out: .*must not be cut with flood coolant/);
  expect(rows.map(({ label, value }) => [label, value])).toEqual(
    tune(logOf(good)).map(({ label, value }) => [label, value]),
  );
});

it("takes a log of 1,000 cuts in at most half a second of the processor", () => {
  const normal = normals(9);
  const saw = shop({ motorPower: 5600, bandWidth: 34, maximumFeed: 500 });
  const lines = Array.from({ length: 1000 }, (_, i): Line => {
    const [grade] = grades[i % 3]!;
    const size = `round ${3 + (i % 50) / 10}`;
    return { size, grade, saw, minutes: (3 + (i % 50) / 10) ** 2 * 0.4 * Math.exp(0.12 * normal()) };
  });
  const log = logOf(lines);
  tune(log);
  const times = [1, 2, 3].map(() => {
    const from = process.cpuUsage();
    tune(log);
    const { user, system } = process.cpuUsage(from);
    return (user + system) / 1e6;
  });
  expect(Math.min(...times)).toBeLessThan(0.5);
});
