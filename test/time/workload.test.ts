import { describe, expect, it } from "vitest";
import type { InputError } from "../../src/errors";
import { workload } from "../../src/time/workload";
import { refused, relative } from "../cost/fixture";

/** Two kinds of job with this mean and squared coefficient of variation, three of the first for one of the second. */
const mix = (
  mean: number,
  variation: number,
): { readonly minutes: readonly number[]; readonly quantities: readonly number[] } => {
  const deviation = Math.sqrt(variation);
  return {
    minutes: [mean * (1 - deviation * Math.sqrt(1 / 3)), mean * (1 + deviation * Math.sqrt(3))],
    quantities: [3, 1],
  };
};
/** Jobs of this kind at so many an hour: four in 4/rate hours. */
const wait = (mean: number, variation: number, perHour: number, saws = 1) =>
  workload({ ...mix(mean, variation), hours: 4 / perHour, saws }).expectedWait as number;

describe("the wait of one saw, jobs as varied as random ones (cs² = 1), is that of M/M/1", () => {
  it("15 an hour, 20 an hour: 0.15 h: loan-clerk exercise (read in two repositories)", () => {
    expect(wait(3, 1, 15)).toBeCloseTo(9, 9);
  });

  it("3 and 5: 0.3: documentation of a queueing library (read)", () => {
    expect(wait(12, 1, 3) / 60).toBeCloseTo(0.3, 9);
  });

  it("2 and 3: 2/3: Hillier & Lieberman hospital, Banks barber (from memory)", () => {
    expect(wait(20, 1, 2) / 60).toBeCloseTo(0.6666666667, 9);
  });

  it("at any share ρ it is ρ/(1 − ρ) service times (closed form)", () => {
    for (const share of [0.05, 0.3, 0.7, 0.95])
      expect(relative(wait(60 * share, 1, 1), 60 * share * (share / (1 - share)))).toBeLessThan(1e-9);
  });
});

describe("Kingman's wait (Factory Physics, from memory): 30 min a job, ca² 1, cs² 0.5", () => {
  it.each([
    [0.8, 90],
    [0.9, 202.5],
    [0.95, 427.5],
  ])("share %s: %s min", (share, minutes) => {
    expect(wait(30, 0.5, 2 * share)).toBeCloseTo(minutes, 6);
  });

  it("jobs that are all alike wait half as long as random ones (Pollaczek and Khinchine)", () => {
    expect(workload({ minutes: [30], quantities: [8], hours: 5, saws: 1 }).expectedWait).toBeCloseTo(
      (0.8 / 0.2) * 15,
      9,
    );
  });
});

describe("hours and share", () => {
  it("three saws of 10 h, 40 jobs of 30 min: 20 h of 30, two thirds full, none short; 80 jobs: 10 h short (by hand)", () => {
    const of = (jobs: number) => workload({ minutes: [30], quantities: [jobs], hours: 10, saws: 3 });
    expect(of(40)).toMatchObject({ hoursNeeded: 20, hoursShort: 0 });
    expect(of(40).share).toBeCloseTo(2 / 3, 12);
    expect(of(80)).toMatchObject({ hoursNeeded: 40, hoursShort: 10 });
  });

  it("P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 26.1 (companion read, prints 1.62): 100,000 parts, 2 % scrap, 105 s, 80 % of 2300 h", () => {
    const { share, hoursShort, hoursNeeded, expectedWait } = workload({
      minutes: [105 / 60],
      quantities: [102000],
      hours: 2300 * 0.8,
      saws: 1,
    });
    expect(Math.abs(share - 1.616847826)).toBeLessThan(0.005);
    expect(hoursNeeded).toBeCloseTo(2975, 9);
    expect(hoursShort).toBeCloseTo(2975 - 1840, 9);
    expect(refused(() => expectedWait)).toEqual({
      reason: "none",
      parameter: "",
      problem: "overloaded by {hours} in the period: the wait grows without end",
    });
  });

  it("saws that are just full have no finite wait, and no hours short", () => {
    const full = workload({ minutes: [30, 15], quantities: [2, 4], hours: 2, saws: 1 });
    expect([full.share, full.hoursShort]).toEqual([1, 0]);
    expect(refused(() => full.expectedWait).problem).toBe("the saws are full all the time: the wait grows without end");
    expect(refused(() => full.expectedWait).reason).toBe("none");
  });

  it("above 95 % the long run is refused and the first hours stand; below 80 % the other way round", () => {
    const at = (share: number, own: Partial<Parameters<typeof workload>[0]> = {}) =>
      workload({ minutes: [30], quantities: [80 * share], hours: 40, saws: 1, ...own });
    expect(refused(() => at(0.96).expectedWait).problem).toMatch(/^at \{share\} % .* see wait from empty$/);
    expect(at(0.96).waitFromEmpty).toBeGreaterThan(60);
    expect(at(0.85).expectedWait).toBeGreaterThan(at(0.85).waitFromEmpty as number);
    expect(refused(() => at(0.79).waitFromEmpty).problem).toMatch(/see expected wait$/);
    expect(at(1.3).waitFromEmpty).toBeGreaterThan(300);
  });

  it("the first hours are refused where they were not simulated", () => {
    const of = (own: Partial<Parameters<typeof workload>[0]>) =>
      refused(() => workload({ minutes: [30], quantities: [72], hours: 40, saws: 1, ...own }).waitFromEmpty).problem;
    expect(of({ saws: 9, quantities: [700] })).toBe("the first hours are known for up to {saws} saws");
    expect(of({ minutes: [1300], quantities: [1.7] })).toMatch(/one job takes over half of them/);
    expect(of({ minutes: [5, 1000], quantities: [200, 1.2] })).toMatch(/differ so much/);
  });

  it("each refusal says its figures, in hours or per cent; at the edges themselves there is an answer", () => {
    const at = (share: number, own: Partial<Parameters<typeof workload>[0]> = {}) =>
      workload({ minutes: [30], quantities: [80 * share], hours: 40, saws: 1, ...own });
    const facts = (answer: number | InputError): unknown => (answer as InputError).facts;
    expect(facts(at(0.96).expectedWait)).toEqual({ share: "96" });
    expect(facts(at(0.79).waitFromEmpty)).toEqual({ share: "79" });
    expect(at(0.96).expectedWait).toMatchObject({ reason: "none", parameter: "" });
    expect(facts(at(1.3).expectedWait)).toEqual({
      hours: { number: expect.closeTo(12, 9) as number, quantity: "hours" },
    });
    expect(at(1.3).expectedWait).toMatchObject({ parameter: "" });
    expect(typeof at(0.95).expectedWait).toBe("number");
    expect(typeof at(0.8).waitFromEmpty).toBe("number");
    expect(typeof at(0.85, { saws: 8, quantities: [8 * 68] }).waitFromEmpty).toBe("number");
    expect(facts(at(0.85, { saws: 9, quantities: [9 * 68] }).waitFromEmpty)).toEqual({ saws: "8" });
    // A job of exactly half the hours is still known; the longest job counts, not the shortest.
    expect(typeof at(0.85, { minutes: [1200], quantities: [1.7] }).waitFromEmpty).toBe("number");
    expect((at(0.85, { minutes: [5, 1300], quantities: [4, 1.6] }).waitFromEmpty as InputError).problem).toMatch(
      /one job takes over half/,
    );
  });

  it("up to four saws may have minutes that differ more (cs² 2); five may not (cs² 1.3 is the most, 1.2 is known)", () => {
    const of = (saws: number, variation: number) => {
      const { minutes } = mix(30, variation);
      return workload({ minutes, quantities: [300, 100], hours: (400 * 30) / 60 / (0.85 * saws), saws }).waitFromEmpty;
    };
    expect([of(4, 2), of(5, 1.2), of(3, 4.9)].map((answer) => typeof answer)).toEqual(["number", "number", "number"]);
    for (const refusal of [of(5, 2), of(4, 5.1)]) expect((refusal as InputError).problem).toMatch(/differ so much/);
  });

  it("a line split in two changes nothing", () => {
    const [one, two] = [
      workload({ minutes: [20, 60], quantities: [30, 10], hours: 30, saws: 1 }),
      workload({ minutes: [20, 60, 20], quantities: [12, 10, 18], hours: 30, saws: 1 }),
    ];
    expect(relative(one.expectedWait as number, two.expectedWait as number)).toBeLessThan(1e-12);
    expect(one.share).toBeCloseTo(two.share, 12);
  });
});

describe("a simulated queue, seeded", () => {
  /** Mulberry32, a small generator of known good mixing. */
  const random = (seed: number) => () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };

  /** Mean wait of a queue and the half width of its 99 % interval, from the means of 40 batches. */
  function simulate(
    minutes: readonly number[],
    quantities: readonly number[],
    hours: number,
    seed: number,
  ): { readonly mean: number; readonly half: number } {
    const next = random(seed);
    const jobs = quantities.reduce((s, q) => s + q, 0);
    const gap = (60 * hours) / jobs;
    let waiting = 0;
    const batch = (size: number): number => {
      let sum = 0;
      for (let i = 0; i < size; i += 1) {
        sum += waiting;
        let pick = next() * jobs;
        const line = quantities.findIndex((q) => (pick -= q) < 0);
        waiting = Math.max(0, waiting + minutes[line]! + gap * Math.log(1 - next()));
      }
      return sum / size;
    };
    batch(60_000);
    const means = Array.from({ length: 40 }, () => batch(60_000));
    const mean = means.reduce((s, m) => s + m, 0) / means.length;
    const deviation = Math.sqrt(means.reduce((s, m) => s + (m - mean) ** 2, 0) / (means.length - 1));
    return { mean, half: (2.708 * deviation) / Math.sqrt(means.length) };
  }

  it.each([
    ["three kinds of job, share 0.80", [20, 35, 90], [40, 25, 8], 2395 / 60 / 0.8],
    ["jobs alike, share 0.90", [30], [10], 5 / 0.9],
    ["one long job among many short, share 0.70", [6, 240], [60, 2], 14 / 0.7],
  ])("%s: the wait lies in the interval that holds 99 of 100 simulations", (_, minutes, quantities, hours) => {
    const { mean, half } = simulate(minutes, quantities, hours, 2026);
    const wait1 = workload({ minutes, quantities, hours, saws: 1 }).expectedWait as number;
    expect(half / mean).toBeLessThan(0.05);
    expect(Math.abs(wait1 - mean), `${wait1} ${mean} ± ${half}`).toBeLessThan(half);
  });
});
