import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Blade } from "../../src/cost/blade";
import { bladeCost } from "../../src/cost/bladeCost";
import { bestRate } from "../../src/cost/bestRate";
import { once } from "../../src/once";
import { law, refused, relative, spread } from "./fixture";

/** Taylor's v·T^n = C at one unit of area per unit of speed: at v = C the edge lives one minute. */
const taylor = (n: number, C: number, price: number, hourly: number, change: number) =>
  bestRate({ blade: { price, life: C, rate: C }, exponent: 1 / n - 1, sawHourValue: hourly, change });
const costAt = (blade: Blade, m: number, w: number, change: number, rate: number) =>
  bladeCost({
    blade: { price: blade.price, life: blade.life * (rate / blade.rate) ** -m, rate },
    sawHourValue: w,
    change,
  });

describe("published examples of the cheapest and the fastest cutting speed", () => {
  it("Ghosh & Mallik, Manufacturing Science, 2nd ed., Ex. 4.26 (companion read): n 0.25, C 75, 0.15 a minute, tool 2.50, change 2 min: 27.42 m/min", () => {
    expect(Math.abs((taylor(0.25, 75, 2.5, 9, 2).leastCost as number) - 27.42)).toBeLessThanOrEqual(0.005);
  });

  it("Ghosh & Mallik Ex. 4.28 (companion read): n 0.25, C 75, change 2 min: 47.92 m/min", () => {
    expect(Math.abs((taylor(0.25, 75, 2.5, 9, 2).greatestOutput as number) - 47.92)).toBeLessThanOrEqual(0.005);
  });

  it("P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 14.2 (companion read): n 0.25, C 150, 5 an hour, change 8 and regrind 5 min, 0.30 depreciation: 56.5 m/min", () => {
    // The regrind is paid labour, not saw time: 5 min at 5 an hour go into the price of an edge.
    expect(Math.abs((taylor(0.25, 150, 0.3 + (5 * 5) / 60, 5, 8).leastCost as number) - 56.5)).toBeLessThanOrEqual(
      0.05,
    );
  });

  it("Groover, Fundamentals of Modern Manufacturing, lathe example (from memory): n 0.125, C 70, change 2 min, 0.5 a minute, 3 an edge: fastest 50, cheapest 42 m/min", () => {
    const { leastCost, greatestOutput } = taylor(0.125, 70, 3, 30, 2);
    expect(greatestOutput).toBeCloseTo(50.33059164, 2);
    expect(leastCost).toBeCloseTo(42.32281408, 2);
  });

  it("Gilbert's formula (from memory): n 0.25, change 2 min, edge 2.50, 0.15 a minute: tool life 56 min cheapest, 6 min fastest", () => {
    const { leastCost, greatestOutput } = taylor(0.25, 75, 2.5, 9, 2);
    const lifeAt = (v: number) => (75 / v) ** 4;
    expect(lifeAt(leastCost as number)).toBeCloseTo(56, 6);
    expect(lifeAt(greatestOutput as number)).toBeCloseTo(6, 6);
  });
});

describe("a band: own check values (no publication): 50 cm²/min at 40000 cm², exponent 3, blade 180, change 12 min, 81 an hour", () => {
  const blade = { price: 180, life: 40000, rate: 50 };
  const best = once(() => bestRate({ blade, exponent: 3, sawHourValue: 81, change: 12 }));

  it("cheapest 58.193, fastest 108.559 cm²/min, 436 min of life, 309.315 per m²", () => {
    const rate = best().leastCost as number;
    expect(rate).toBeCloseTo(58.19301769, 6);
    expect(best().greatestOutput).toBeCloseTo(108.5592604, 6);
    expect((40000 * (rate / 50) ** -3) / rate).toBeCloseTo(436, 6);
    expect(10000 * costAt(blade, 3, 81, 12, rate)).toBeCloseTo(309.3154594, 6);
  });

  it("the range within 1 % of the least costs 1 % more at both ends", () => {
    const least = costAt(blade, 3, 81, 12, best().leastCost as number);
    expect(costAt(blade, 3, 81, 12, best().slowest as number) / least).toBeCloseTo(1.01, 9);
    expect(costAt(blade, 3, 81, 12, best().fastest as number) / least).toBeCloseTo(1.01, 9);
    expect(best().slowest).toBeLessThan(best().leastCost as number);
    expect(best().fastest).toBeGreaterThan(best().leastCost as number);
  });

  it("with the exponent of two trials, 50 cm²/min 40000 cm² and 60 cm²/min 30000 cm² (m 1.5779, own), both trials lie on the curve", () => {
    const m = -Math.log(30000 / 40000) / Math.log(60 / 50);
    expect(m).toBeCloseTo(1.577882931, 6);
    const one = bestRate({ blade, exponent: m, sawHourValue: 81, change: 12 }).leastCost as number;
    const two = bestRate({ blade: { price: 180, life: 30000, rate: 60 }, exponent: m, sawHourValue: 81, change: 12 })
      .leastCost as number;
    expect(relative(one, two)).toBeLessThan(1e-12);
  });

  it("says when it extrapolates, and how sure the exponent is: 2.3 for two trials 20 % apart with a life scatter of 0.3 (Wager and Barash 1971, abstract read)", () => {
    expect(best().extrapolates).toMatchObject([
      { template: "Least cost lies within 30 % of the trial rate." },
      { facts: { noise: "2.3" } },
    ]);
    expect(bestRate({ blade, exponent: 3, sawHourValue: 500, change: 12 }).extrapolates).toMatchObject(
      [{ template: /^Extrapolated/, facts: { ratio: "1.7" } }, {}].map((t) =>
        "template" in t ? { facts: t.facts } : t,
      ),
    );
  });
});

describe("where no rate is best", () => {
  const blade = { price: 180, life: 40000, rate: 50 };

  it.each([0, -1, 0.0001])("an exponent of %s is refused: life does not fall with the rate", (exponent) => {
    expect(refused(() => bestRate({ blade, exponent, sawHourValue: 60, change: 10 }))).toMatchObject({
      reason: "none",
      parameter: "exponent",
    });
  });

  it("a saw hour worth nothing has no cheapest rate, a change of no time no fastest", () => {
    const idle = bestRate({ blade, exponent: 3, sawHourValue: 0, change: 10 });
    for (const which of ["leastCost", "slowest", "fastest"] as const)
      expect(refused(() => idle[which]).problem).toMatch(/every slower rate is cheaper/);
    expect(idle.greatestOutput).toBeGreaterThan(50);
    expect(idle.extrapolates).toMatchObject({ facts: { noise: "2.3" } });
    expect(refused(() => bestRate({ blade, exponent: 3, sawHourValue: 60, change: 0 }).greatestOutput).problem).toMatch(
      /every faster rate gives more/,
    );
  });
});

it("refusals and notes whole", () => {
  const blade = { price: 180, life: 40000, rate: 50 };
  const best = (own: Partial<Parameters<typeof bestRate>[0]>) =>
    bestRate({ blade, exponent: 3, sawHourValue: 60, change: 10, ...own });
  expect(refused(() => best({ exponent: 0.0009 }))).toEqual({
    reason: "none",
    parameter: "exponent",
    problem:
      "{parameter} must be at least 0.001: these trials do not show life falling with the rate, so no rate is best; run as fast as saw and finish allow",
  });
  expect(best({ exponent: 0.001 }).leastCost).toBeGreaterThan(0);
  for (const which of ["leastCost", "slowest", "fastest"] as const)
    expect(refused(() => best({ sawHourValue: 0 })[which])).toEqual({
      reason: "none",
      parameter: "",
      problem: "while a saw hour is worth nothing, every slower rate is cheaper",
    });
  expect(refused(() => best({ change: 0 }).greatestOutput)).toEqual({
    reason: "none",
    parameter: "",
    problem: "while a blade change takes no time, every faster rate gives more",
  });
  expect(best({ sawHourValue: 500, change: 12 }).extrapolates).toMatchObject([
    {
      template:
        "Extrapolated: least cost lies at {ratio} times the trial rate; try a rate between before you trust it.",
    },
    {
      template: "An exponent from one blade each at two rates 20 % apart is uncertain by {noise}, either way.",
      facts: { noise: "2.3" },
    },
  ]);
});

it.each([0.1, 1, 3, 15])("exponent %d: at both ends of the range (m/x + x^m)/(m + 1) is 1.01", (m) => {
  const blade = { price: 180, life: 40000, rate: 50 };
  const { leastCost, slowest, fastest } = bestRate({ blade, exponent: m, sawHourValue: 60, change: 10 });
  for (const end of [slowest, fastest]) {
    const x = (end as number) / (leastCost as number);
    expect((m / x + x ** m) / (m + 1)).toBeCloseTo(1.01, 9);
  }
  expect(slowest as number).toBeLessThan(leastCost as number);
  expect(fastest as number).toBeGreaterThan(leastCost as number);
});

describe("the least cost", () => {
  it("is below that of every other rate, and no faster than the greatest output; another currency changes nothing", () => {
    const draws = fc.record({
      price: spread(10, 5000),
      life: spread(1e3, 1e6),
      rate: spread(0.5, 200),
      m: spread(0.1, 15),
      w: spread(1, 500),
      change: spread(0.5, 60),
      other: spread(0.2, 5),
      k: spread(1e-3, 1e3),
    });
    const accepted = law(draws, 51, ({ price, life, rate, m, w, change, other, k }) => {
      const blade = { price, life, rate };
      const { leastCost, greatestOutput } = bestRate({ blade, exponent: m, sawHourValue: w, change });
      const best = leastCost as number;
      const same = bestRate({ blade: { ...blade, price: k * price }, exponent: m, sawHourValue: k * w, change })
        .leastCost as number;
      return (
        costAt(blade, m, w, change, best * other) >= costAt(blade, m, w, change, best) * (1 - 1e-12) &&
        best <= (greatestOutput as number) &&
        relative(same, best) < 1e-12
      );
    });
    expect(accepted).toBe(1);
  });
});
