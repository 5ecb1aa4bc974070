import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineCost, type LineWork } from "../../src/cost/lineCost";
import { law, relative, spread } from "./fixture";

/** Own worked example (no publication): 120 pieces of 80 cm² at 40 cm²/min from 3 bars, machine 45 and half an operator of 36 an hour. */
const work: LineWork = {
  cycles: 120 + 3,
  cutMinutes: 2,
  handlingMinutes: 0.3 + 0.4,
  loads: 3,
  loadMinutes: 6,
  setupMinutes: 15,
  area: 120 * 8000,
  price: 180,
  life: 40000 * 100,
  changeMinutes: 12,
  breakInMinutes: 0,
  kerfVolume: 120 * 1.6 * 8000,
  endsVolume: 3 * (10 + 60) * 8000,
  materialValue: 7.85e-6 * (1.2 - 0.25),
  materialCost: 0,
  hourlyCost: 45 + 0.5 * 36,
  availability: 1,
};

describe("a worked line with every part", () => {
  const cost = lineCost(work);

  it("takes 3.0665 min a piece", () => {
    expect(cost.minutes / 120).toBeCloseTo(3.0665, 9);
  });

  it("costs 2.299875 of machine and 0.91995 of labour, 0.36 of blade, 0.095456 of kerf, 0.104405 of ends a piece: 3.779686", () => {
    expect((cost.time + cost.setUp) / 120).toBeCloseTo(2.299875 + 0.91995, 9);
    expect(cost.blade / 120).toBeCloseTo(0.36, 12);
    expect(cost.kerf / 120).toBeCloseTo(0.095456, 9);
    expect(cost.ends / 120).toBeCloseTo(0.104405, 9);
    expect(cost.cost / 120).toBeCloseTo(3.779686, 6);
  });

  it("P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.8 (companion read, prints 1.67): 360 min cut, 20 min change, 4320 min life", () => {
    const change =
      lineCost({
        ...work,
        cycles: 1,
        cutMinutes: 360,
        handlingMinutes: 0,
        loads: 0,
        setupMinutes: 0,
        area: 360,
        life: 4320,
        changeMinutes: 20,
      }).minutes - 360;
    expect(change).toBeCloseTo(1.6666666666666667, 9);
  });

  it("a life of 4 m² with 0.3 m² at half the feed runs at 0.93023 of the rate: own check value", () => {
    // One whole blade: 40000 cm² at 40 cm²/min are 1000 min; break-in loses 3000/40·(1/0.5 − 1) = 75.
    const blade = lineCost({
      ...work,
      cycles: 1,
      cutMinutes: 1000,
      handlingMinutes: 0,
      loads: 0,
      setupMinutes: 0,
      area: work.life,
      changeMinutes: 0,
      breakInMinutes: 75,
    });
    expect(1000 / blade.minutes).toBeCloseTo(0.93023255814, 9);
  });
});

describe("laws", () => {
  it("the parts sum to the cost; another currency is the same number of it; half the availability doubles time and set-up", () => {
    const draws = fc.record({
      area: spread(1e3, 1e9),
      life: spread(1e5, 1e8),
      price: spread(10, 5000),
      hourlyCost: spread(1, 500),
      cutMinutes: spread(0.05, 500),
      cycles: fc.integer({ min: 1, max: 10000 }),
      k: spread(1e-3, 1e3),
    });
    const accepted = law(draws, 91, ({ k, ...own }) => {
      const one = lineCost({ ...work, ...own });
      const other = lineCost({
        ...work,
        ...own,
        price: k * own.price,
        hourlyCost: k * own.hourlyCost,
        materialValue: k * work.materialValue,
      });
      const half = lineCost({ ...work, ...own, availability: 0.5 });
      const sum = one.time + one.blade + one.kerf + one.ends + one.setUp;
      return (
        relative(sum, one.cost) < 1e-12 &&
        relative(other.cost, k * one.cost) < 1e-12 &&
        relative(half.time + half.setUp, 2 * (one.time + one.setUp)) < 1e-12 &&
        half.minutes === one.minutes
      );
    });
    expect(accepted).toBe(1);
  });
});
