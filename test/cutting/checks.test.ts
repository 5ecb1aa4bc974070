import { describe, expect, it } from "vitest";
import { quantities } from "../../src/quantities";
import { bladeCost } from "../../src/cost/bladeCost";
import { cutCost } from "../../src/cost/cutCost";
import { cuttingMinutes } from "../../src/time/cuttingMinutes";
import { contactRows } from "../../src/section/contactRows";
import { check, checkIds, shape, shop } from "./fixture";

/** The check values of the cutting model that no other test of this folder takes; each title carries its source. */

const title = (id: string): string =>
  `${id}: ${check(id).input}: ${check(id).output} ${check(id).expected} ${check(id).unit} (${check(id).source})`;
const near = (value: number, id: string, digits = 9) => expect(value / check(id).expected).toBeCloseTo(1, digits);
const inch2 = quantities.areaRate.inch.factor;
const taken: string[] = [];
const holds = (id: string, test: () => void) => {
  taken.push(id);
  it(title(id), test);
};

describe("units", () => {
  holds("U1", () => near(quantities.areaRate.inch.factor / quantities.areaRate.metric.factor, "U1", 12));
  holds("U2", () => near((quantities.power.inch.factor * 60) / 25.4 ** 3, "U2"));
  holds("U3", () => near((100 * quantities.bandSpeed.inch.factor) / quantities.bandSpeed.metric.factor, "U3", 12));
});

describe("geometry", () => {
  const round = shape("round 100 mm");
  const tube = shape("tube 120x15 mm");
  holds("G1", () => near(round.area, "G1"));
  holds("G2", () => near(round.profile().meanWidth, "G2"));
  holds("G4", () => near(contactRows({ section: round, steps: 4 })[1]!.width, "G4"));
  holds("G5", () => near(tube.profile().meanWidth, "G5"));
  holds("G6", () => near(tube.profile().maximumWidth, "G6"));
  holds("G7", () => near(shape("flat 100x50 mm mitre 45").area, "G7"));
  holds("G8", () => near(cuttingMinutes({ section: round, rate: 5000, maximumFeed: 80 }), "G8"));
  holds("G9", () => near(cuttingMinutes({ section: round, rate: 5000, maximumFeed: undefined }), "G9"));
  holds("G10", () => near(shape("round 50 mm bundle 1x3").profile().meanWidth, "G10"));
});

describe("trade figures", () => {
  const round = shape("round 7 in");
  holds("T1", () => near(round.area / inch2, "T1"));
  holds("T2", () => near(round.area / 18 / inch2, "T2"));
  holds("T3", () => near(cuttingMinutes({ section: round, rate: 10 * inch2, maximumFeed: undefined }), "T3"));
  holds("T4", () => near((18 * 10 * inch2) / round.area, "T4"));
});

describe("what the model's text says and no function of ours computes, as arithmetic beside its source", () => {
  holds("B1", () => near((206_000 * 1.3) / (520 + 1.3), "B1"));
  holds("B5", () => near(Math.PI * 450 + 2 * 1200, "B5"));
  holds("B6", () => near((Math.PI * 850) / 2 + 2 * 1200 + 50 ** 2 / (4 * 1200), "B6"));
  holds("L1", () => near(1.1 ** (-1 / 0.125), "L1"));
  holds("L2", () => near(1.1 ** (-1 / 0.25), "L2"));
  holds("L3", () => near(1.1 ** (1 - 1 / 0.125), "L3"));
  holds("L4", () => near(60 * (33 / 30) ** (-1 / 0.125), "L4"));
  holds("Q1", () => near(0.002 * 7, "Q1"));
});

describe("kerf", () => {
  holds("Q2", () => {
    const section = shape("round 7 in");
    const { kerf } = cutCost({
      section,
      rate: 1,
      hourlyCost: 1,
      price: 1,
      life: 1e9,
      shop: shop({ kerf: 2, density: 7.8e-6, materialPrice: 1000 }),
    });
    near(kerf, "Q2", 6);
    expect(bladeCost({ blade: { price: 0, life: 1, rate: 1 }, sawHourValue: 60, change: 0 })).toBe(1);
  });
});

it("no check value is left out", () => {
  const elsewhere = [
    "U4",
    "K1",
    "K2",
    "K3",
    "K4",
    "K5",
    "K6",
    "G3",
    "T5",
    "T6",
    "T7",
    "T8",
    "P1",
    "P2",
    "P3",
    "P4",
    "B2",
    "B3",
    "B4",
    ...Array.from({ length: 16 }, (_, i) => `F${i + 1}`),
  ];
  expect([...taken, ...elsewhere].sort()).toEqual([...checkIds].sort());
});
