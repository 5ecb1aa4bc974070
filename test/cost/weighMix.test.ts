import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { weighMix, type MixJob, type MixWay } from "../../src/cost/weighMix";
import { random } from "../plan/fixture";
import { relative } from "./fixture";

interface CheckWay {
  readonly area: number;
  readonly rate: number;
  readonly handling: number;
  readonly life: number;
  readonly price: number;
  readonly bladeMinutes: number;
}
interface Check {
  readonly id: string;
  readonly note: string;
  readonly hourValue: number;
  readonly jobs: readonly { readonly biMetal: CheckWay | null; readonly carbide: CheckWay | null }[];
  readonly expected: Readonly<Record<string, number | string>> & { readonly cheaper: readonly string[] };
  readonly source: string;
}
const checks = JSON.parse(readFileSync("test/data/cost/mixes.json", "utf8")) as readonly Check[];
const wayOf = (way: CheckWay | null): MixWay | undefined =>
  way === null ? undefined : { ...way, run: way.area / way.rate + way.handling };

const told = (value: number | InputError): number | string =>
  value instanceof InputError ? `#N/A ${value.problem}` : value;
const isNear = (got: number | string, wanted: number | string): void => {
  if (typeof wanted === "string")
    expect(got).toBe(wanted.replace("no job can be cut with both", "no job can be cut with both classes"));
  else
    expect(Math.abs((got as number) - wanted), `${got} ${wanted}`).toBeLessThanOrEqual(
      1e-9 * Math.max(1, Math.abs(wanted)),
    );
};

describe("order books by hand", () => {
  it.each(checks)("$id: $note ($source)", ({ jobs, hourValue, expected }) => {
    const got = weighMix(
      jobs.map(({ biMetal, carbide }) => ({ biMetal: wayOf(biMetal), carbide: wayOf(carbide) })),
      hourValue,
    );
    isNear(got.biMetal.minutes / 60, expected["hoursBi"] as number);
    isNear(got.carbide.minutes / 60, expected["hoursCa"] as number);
    isNear(got.biMetal.blades, expected["bladesBi"] as number);
    isNear(got.carbide.blades, expected["bladesCa"] as number);
    isNear(got.biMetal.cost, expected["costBi"] as number);
    isNear(got.carbide.cost, expected["costCa"] as number);
    isNear(got.best.cost, expected["bestCost"] as number);
    isNear(told(got.highestPrice), expected["highestPrice"]!);
    isNear(told(got.lifeShare), expected["lifeFactor"]!);
    expect(
      got.jobs.map(({ takes, isEqual, biMetal, carbide }) => {
        if (takes === undefined) return "neither";
        if (isEqual) return "equal";
        const name = takes === "biMetal" ? "bi" : "ca";
        return biMetal === undefined || carbide === undefined ? `${name} only` : name;
      }),
    ).toEqual(expected.cheaper);
  });
});

const runs = 500;
const next = random(2026);
const between = (least: number, most: number): number => least * (most / least) ** next();
interface Cut {
  readonly area: number;
  readonly cuts: number;
  readonly handling: number;
  readonly rate: readonly [number, number];
  readonly life: readonly [number, number];
}
/** Prices and change minutes of one blade of each class. */
const price = [180, 420] as const;
const change = [10, 16] as const;
const book = (): readonly Cut[] =>
  Array.from({ length: 1 + Math.floor(next() * 12) }, () => {
    const [rate, life] = [between(2, 40), between(500, 20_000)];
    return {
      area: between(1, 120),
      cuts: 1 + Math.floor(between(1, 300)),
      handling: between(0.2, 5),
      rate: [rate, rate * between(0.7, 6)],
      life: [life, life * between(0.5, 6)],
    };
  });
const jobOf = ({ area, cuts, handling, rate, life }: Cut): MixJob => {
  const way = (k: 0 | 1): MixWay => ({
    area: area * cuts,
    run: (area * cuts) / rate[k] + handling * cuts,
    bladeMinutes: change[k],
    price: price[k],
    life: life[k],
  });
  return { biMetal: way(0), carbide: way(1) };
};
const books = Array.from({ length: runs }, book);
const values = books.map(() => between(1, 200));

describe(`${runs} random order books`, () => {
  it("cut by cut and blade by blade on the clock: within one blade of each class", () => {
    books.forEach((jobs, b) => {
      const got = weighMix(jobs.map(jobOf), values[b]!);
      for (const k of [0, 1] as const) {
        let [clock, used, left] = [0, 1, 1];
        for (const { area, cuts, handling, rate, life } of jobs)
          for (let cut = 0; cut < cuts; cut += 1) {
            clock += handling;
            let open = area;
            // A blade that ends within a cut is changed there.
            while (open > left * life[k] * (1 + 1e-12)) {
              clock += (left * life[k]) / rate[k] + change[k];
              open -= left * life[k];
              used += 1;
              left = 1;
            }
            clock += open / rate[k];
            left -= open / life[k];
          }
        const way = k === 0 ? got.biMetal : got.carbide;
        expect(used - way.blades).toBeGreaterThan(-1e-6);
        expect(used - way.blades).toBeLessThan(1 + 1e-6);
        expect(Math.abs(clock - way.minutes)).toBeLessThan(change[k] * (1 + 1e-6));
        const cost = (clock * values[b]!) / 60 + used * price[k];
        expect(Math.abs(cost - way.cost)).toBeLessThan(price[k] + (change[k] * values[b]!) / 60);
      }
    });
  });

  it("at the highest price both classes cost the same; it is the mean of the jobs' own, weighted by blades", () => {
    let solved = 0;
    books.forEach((jobs, b) => {
      const mix = jobs.map(jobOf);
      const { highestPrice, biMetal } = weighMix(mix, values[b]!);
      if (highestPrice instanceof InputError) return;
      solved += 1;
      const paid = mix.map((job) => ({ ...job, carbide: { ...job.carbide!, price: highestPrice } }));
      const again = weighMix(paid, values[b]!);
      expect(relative(again.carbide.cost, biMetal.cost)).toBeLessThan(1e-9);
      const own = mix.map((job, i) => {
        const { jobs: weighed } = weighMix([job], values[b]!);
        const { biMetal: bi, carbide } = weighed[0]!;
        const n = carbide!.blades;
        return [n, (bi!.cost - (values[b]! * carbide!.minutes) / 60) / n, i] as const;
      });
      const mean = own.reduce((s, [n, p]) => s + n * p, 0) / own.reduce((s, [n]) => s + n, 0);
      expect(Math.abs(mean - highestPrice)).toBeLessThan(1e-9 * biMetal.cost * jobs.length);
    });
    expect(solved).toBeGreaterThan(runs / 3);
  });

  it("at the shortest lives both classes cost the same", () => {
    let solved = 0;
    books.forEach((jobs, b) => {
      const mix = jobs.map(jobOf);
      const { lifeShare, shortestLife, biMetal, carbide } = weighMix(mix, values[b]!);
      if (lifeShare instanceof InputError) return;
      solved += 1;
      const worn = mix.map((job) => ({ ...job, carbide: { ...job.carbide!, life: lifeShare * job.carbide!.life } }));
      expect(relative(weighMix(worn, values[b]!).carbide.cost, biMetal.cost)).toBeLessThan(1e-9);
      const area = mix.reduce((s, job) => s + job.carbide!.area, 0);
      expect(relative((shortestLife as number) * carbide.blades, lifeShare * area)).toBeLessThan(1e-9);
    });
    expect(solved).toBeGreaterThan(runs / 3);
  });

  it("the cheaper of the two never costs more than either, and no other choice less", () => {
    books.slice(0, 100).forEach((jobs, b) => {
      const { best, biMetal, carbide, jobs: each } = weighMix(jobs.map(jobOf), values[b]!);
      expect(best.cost).toBeLessThanOrEqual(Math.min(biMetal.cost, carbide.cost) * (1 + 1e-12));
      const least = each.reduce((s, job) => s + Math.min(job.biMetal!.cost, job.carbide!.cost), 0);
      expect(relative(best.cost, least)).toBeLessThan(1e-8);
    });
  });
});
