import { expect, it } from "vitest";
import type { JobWay } from "../../src/cost/jobWay";
import { mixTable, type BookRow } from "../../src/cost/mixTable";
import { weighMix } from "../../src/cost/weighMix";

const way = (area: number, rate: number, life: number, price: number): JobWay => ({
  cuts: 10,
  area,
  run: area / rate,
  bladeMinutes: 0,
  price,
  life,
  pitch: "3/4",
  minutesLow: area / rate / 2,
  minutesHigh: (area / rate) * 2,
});
const row = (place: number, material: string, biMetal: JobWay | undefined, carbide: JobWay | undefined): BookRow => ({
  row: place,
  size: `size ${place}`,
  material,
  job: { biMetal, carbide },
  why: "",
});

it("a row a job, then the whole (by hand): 60 an hour is 1 a minute", () => {
  const rows = [
    row(1, "A", way(6000, 10, 6000, 100), way(6000, 30, 12_000, 300)),
    row(2, "B", way(3000, 10, 6000, 100), way(3000, 12, 6000, 300)),
  ];
  const table = mixTable(
    rows,
    weighMix(
      rows.map(({ job }) => job),
      60,
    ),
  );
  // Job 1: 600 + 100 = 700 against 200 + 150 = 350; job 2: 300 + 50 = 350 against 250 + 150 = 400.
  expect(table.map(({ what, saving, cheaper }) => [what, saving, cheaper])).toEqual([
    ["size 1", 350, "carbide"],
    ["size 2", -50, "bi-metal"],
    ["all jobs", 300, undefined],
    ["each job with the cheaper", 350, undefined],
    ["to order: bi-metal 3/4", undefined, undefined],
    ["to order: carbide 3/4", undefined, undefined],
    ["highest carbide price", undefined, undefined],
    ["shortest carbide life", undefined, undefined],
    ["verdict", undefined, undefined],
  ]);
  expect(table[2]).toMatchObject({ "bi-metalLow": 450, "bi-metalHigh": 1800, carbideLow: 225, hoursFreed: 7.5 });
  expect(table[3]).toMatchObject({
    "bi-metalCost": 350,
    carbideCost: 350,
    carbideBlades: 0.5,
    note: "carbide for A; bi-metal for B",
  });
  expect(table[4]).toMatchObject({ area: 3000, "bi-metalBlades": 0.5, carbideBlades: undefined });
  // (1050 − 450) / (0.5 + 0.5) blades; lives: (1050 − 450) pays 300 a blade: half of them.
  expect(table[6]!.carbideCost).toBeCloseTo(600, 9);
  expect(table[7]!.area).toBeCloseTo(4500, 9);
  expect(table[7]!.note).toBe("a blade, mean over the mix: 0.5 times the lives given");
});

it("says in words where no price and no life is enough", () => {
  const rows = [row(1, "A", way(3000, 50, 40_000, 120), way(3000, 30, 50_000, 400))];
  const table = mixTable(
    rows,
    weighMix(
      rows.map(({ job }) => job),
      60,
    ),
  );
  expect(table.slice(-3, -1).map(({ note }) => note)).toEqual([
    "never: carbide loses over the mix even as a gift",
    "never: no life is long enough",
  ]);
});

const tableOf = (rows: readonly BookRow[]) =>
  mixTable(
    rows,
    weighMix(
      rows.map(({ job }) => job),
      60,
    ),
  );
it("a few grades are named, each once, and the rest counted (definition)", () => {
  const cheap = way(6000, 30, 12_000, 10);
  const dear = way(6000, 10, 6000, 1000);
  const grades = ["A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "J"];
  const note = (list: readonly string[]) =>
    tableOf(list.map((grade, i) => row(i + 1, grade, dear, cheap))).find(
      ({ what }) => what === "each job with the cheaper",
    )!.note;
  expect(note(grades)).toBe("carbide for A, B, C, D, E, F, G, H and 2 more; bi-metal for none");
  expect(note(grades.slice(0, 8))).toBe("carbide for A, B, C, D, E, F, G, H; bi-metal for none");
});
it("jobs that only one class, or neither, can make (definition)", () => {
  const [one, two] = [way(6000, 10, 6000, 100), way(3000, 12, 6000, 300)];
  const rows = tableOf([
    row(1, "A", one, undefined),
    row(2, "B", undefined, two),
    row(3, "C", undefined, undefined),
    row(4, "D", one, one),
  ]);
  expect(rows.slice(0, 5).map(({ what, cheaper, saving, area }) => [what, cheaper, saving, area])).toEqual([
    ["size 1", "bi-metal only", undefined, 6000],
    ["size 2", "carbide only", undefined, 3000],
    ["size 3", "neither", undefined, undefined],
    ["size 4", "equal", 0, 6000],
    ["all jobs", undefined, expect.anything(), 15_000],
  ]);
  expect(rows[4]).toMatchObject({ cuts: 30, note: "2 that one class cannot make stand with the other in both" });
  expect(tableOf([row(3, "C", undefined, undefined)]).map(({ what }) => what)).toEqual(["size 3", "verdict"]);
});
it("the blades to order stand by class and pitch, in their order", () => {
  const pitched = (pitch: string, area: number): JobWay => ({ ...way(area, 10, 6000, 100), pitch });
  const rows = tableOf([
    row(1, "A", pitched("4/6", 3000), undefined),
    row(2, "B", pitched("2/3", 6000), undefined),
    row(3, "C", pitched("4/6", 3000), undefined),
    row(4, "D", undefined, pitched("3/4", 6000)),
  ]).filter(({ what }) => (what as string).startsWith("to order"));
  expect(rows.map((r) => [r.what, r.area, r["bi-metalBlades"], r.carbideBlades, r.note])).toEqual([
    ["to order: bi-metal 2/3", 6000, 1, undefined, "if each job takes the cheaper"],
    ["to order: bi-metal 4/6", 6000, 1, undefined, "if each job takes the cheaper"],
    ["to order: carbide 3/4", 6000, undefined, 1, "if each job takes the cheaper"],
  ]);
});
it("limits that exist say at which costs", () => {
  const rows = tableOf([row(1, "A", way(6000, 10, 6000, 100), way(6000, 30, 12_000, 300))]);
  expect(rows.find(({ what }) => what === "highest carbide price")!.note).toBe(
    "both classes then cost the same over the jobs that both can make",
  );
});

it("where both classes can make every job nothing is noted beside all jobs", () => {
  const rows = tableOf([row(1, "A", way(6000, 10, 6000, 100), way(6000, 30, 12_000, 300))]);
  expect(rows.find(({ what }) => what === "all jobs")!.note).toBe("");
});
