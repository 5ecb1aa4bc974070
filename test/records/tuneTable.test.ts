import { expect, it } from "vitest";
import { printText } from "../../functions/kinds/sentence";
import { tune } from "../../src/records/tune";
import { readFileSync } from "node:fs";
import { shop } from "../cutting/fixture";
import { logOf, minutesAt, type Line } from "./log";

/** What the rows say; the numbers of the posterior are worked by hand in docs/method.md. */
const table = (lines: readonly Line[]) =>
  tune(logOf(lines)).map((r) => [printText(r.label, "inch"), r.value, printText(r.comment, "inch")] as const);
const line = (size: string, grade: string, factor: number, more: Partial<Line> = {}): Line => ({
  size,
  grade,
  minutes: minutesAt(size, grade, factor),
  ...more,
});

it("says cuts, runs, what held them, what was left out and why, each by its row", () => {
  const slow = shop({ maximumFeed: 0.5 });
  const rows = table([
    line("round 4", "304", 0.8),
    line("round 4", "304", 0.84),
    line("round 5", "304", 0.79),
    line("round 3", "304", 0.81),
    line("round 6", "316", 0.8),
    line("round 7", "304", 0.8, { saw: slow }),
    line("round 8", "304", 2.5),
    line("round 2", "304", 0.8 / 60),
    line("round 4", "4140", 1.1, { out: true }),
    line("round 4", "4140", 1.1, { blade: "carbide", minutes: undefined }),
  ]);
  expect(rows.map(([label]) => label)).toEqual([
    "Rate factor",
    "Rate factor austenitic stainless, bi-metal",
    "Rate spread austenitic stainless, bi-metal",
  ]);
  expect(rows[0]![2]).toBe(
    "all 5 cuts in 4 runs, 1 group; for groups without cuts of their own; 1 row marked to leave out; row 10 left out: no minutes",
  );
  expect(rows[1]![2]).toBe(
    "5 cuts in 4 runs, 1 held by the maximum feed; row 7 left out: 3.1 times the others; row 8 left out: minutes typed as seconds or hours, or mm read as inches? Its factor would be 0.013",
  );
  expect(rows[2]![2]).toBe("low to high: about 80 % of your own cuts");
});

it("gives a factor of 1 with the reason where nothing is usable", () => {
  expect(table([])).toEqual([["Rate factor", 1, "no usable cut in the log: the model as it stands"]]);
  expect(table([line("round 7", "304", 0.8, { saw: shop({ maximumFeed: 0.5 }) })])).toEqual([
    [
      "Rate factor",
      1,
      "no usable cut in the log: the model as it stands; austenitic stainless, bi-metal: 0 cuts, 1 held by the maximum feed",
    ],
  ]);
});

it("is the posterior worked by hand in docs/method.md: 12 cuts in 3 groups", () => {
  const text = readFileSync("docs/method.md", "utf8");
  const hand = text.slice(text.indexOf("### A log of twelve cuts by hand")).split("```")[1]!;
  const of = (start: string): number =>
    Number(
      hand
        .split("\n")
        .find((l) => l.startsWith(start))!
        .split("=")
        .at(-1),
    );
  const factors: readonly (readonly [grade: string, factors: readonly number[]])[] = [
    ["304", [0.8, 0.74, 0.86, 0.78, 0.82]],
    ["4140", [1.04, 1.15, 1.1, 1.2]],
    ["A36", [0.9, 1.05, 0.98]],
  ];
  const sizes = ["round 3", "round 4", "round 5", "round 6", "round 7"];
  const rows = table(factors.flatMap(([grade, own]) => own.map((f, i) => line(sizes[i]!, grade, f))));
  const at = (label: string): number => rows.find((r) => r[0] === label)![1];
  for (const [label, start] of [
    ["Rate factor", "rate factor of the shop"],
    ["Rate factor austenitic stainless, bi-metal", "rate factor of stainless"],
    ["Rate factor alloy steel, bi-metal", "rate factor of alloy steel"],
    ["Rate factor low-carbon steel, bi-metal", "rate factor of low-carbon steel"],
    ["Rate spread austenitic stainless, bi-metal", "rate spread of stainless"],
    ["Rate spread alloy steel, bi-metal", "rate spread of alloy steel"],
    ["Rate spread low-carbon steel, bi-metal", "rate spread of low-carbon steel"],
  ] as const)
    expect(Math.abs(at(label) / of(start) - 1), label).toBeLessThan(3e-6);
});
