import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Blade } from "../../src/cost/blade";
import { sensitivity } from "../../src/cost/sensitivity";
import { InputError } from "../../src/errors";
import { once } from "../../src/once";

interface Check {
  readonly id: string;
  readonly inputs: {
    readonly current: Blade;
    readonly offer: Blade;
    readonly sawHourValue: number;
    readonly changeMinutes: number;
  };
  readonly expected: {
    readonly rows: readonly (readonly number[])[];
    readonly flipLife: number | string;
    readonly flipRate: number | string;
    readonly flipBothFactor: number;
    readonly flipPrice: number | string;
    readonly flipHourValue: number | string;
  };
  readonly source: string;
}
const checks = JSON.parse(readFileSync("test/data/plan/sensitivity.json", "utf8")) as readonly Check[];

const run = ({ inputs: { changeMinutes, ...inputs } }: Check, kerf = 0) =>
  sensitivity({ ...inputs, change: changeMinutes, currentKerfCost: kerf, offerKerfCost: kerf });

describe.each(checks)("$id ($source)", (check) => {
  const rows = once(() => run(check));
  it("savings at -30 to +20 %", () => {
    check.expected.rows.forEach(([change, life, rate, both, price, value], i) => {
      const row = rows()[i]!;
      expect(row.change).toBeCloseTo(change! / 100, 12);
      for (const [is, wanted] of [
        [row.life, life],
        [row.rate, rate],
        [row.lifeAndRate, both],
        [row.price, price],
        [row.sawHourValue, value],
      ] as const)
        expect(is).toBeCloseTo(wanted!, 12);
    });
  });
  it("where the decision flips, and by which change", () => {
    const [value, change] = rows().slice(-2);
    const { flipLife, flipRate, flipBothFactor, flipPrice, flipHourValue } = check.expected;
    for (const [is, wanted] of [
      [value!.life, flipLife],
      [value!.rate, flipRate],
      [value!.lifeAndRate, flipBothFactor],
      [value!.price, flipPrice],
      [value!.sawHourValue, flipHourValue],
    ] as const)
      if (typeof wanted === "number") expect(is).toBeCloseTo(wanted, 6);
      else expect(is).toBeInstanceOf(InputError);
    if (typeof flipLife === "number") expect(change!.life).toBeCloseTo(flipLife / check.inputs.offer.life - 1, 9);
    expect(change!.lifeAndRate).toBeCloseTo(flipBothFactor - 1, 9);
  });
  it("the same kerf on both sides changes no saving", () => {
    run(check, 0.01)
      .slice(0, 6)
      .forEach((row, i) => {
        expect(row.lifeAndRate as number).toBeCloseTo(rows()[i]!.lifeAndRate as number, 12);
      });
  });
});

it("both claims short together: cost of the offer without its kerf over cost of the blade in use less that kerf (by hand)", () => {
  // In use 100/10000 + 60/(60·10) + 0.01 = 0.12; the offer 200/20000 + 60/(60·20) = 0.06, and 0.02 of kerf: 0.06 / 0.10.
  const blades = {
    current: { price: 100, life: 10_000, rate: 10 },
    offer: { price: 200, life: 20_000, rate: 20 },
    sawHourValue: 60,
    change: 0,
    currentKerfCost: 0.01,
  };
  const [value, change] = sensitivity({ ...blades, offerKerfCost: 0.02 }).slice(-2);
  expect(value).toMatchObject({ change: undefined, note: "decision changes at this value" });
  expect(value!.lifeAndRate).toBeCloseTo(0.6, 12);
  expect(change).toMatchObject({ change: undefined, note: "by this change" });
  expect(change!.lifeAndRate).toBeCloseTo(-0.4, 12);
  const never = sensitivity({ ...blades, offerKerfCost: 0.12 }).slice(-2);
  for (const row of never)
    expect(row.lifeAndRate).toMatchObject({
      reason: "none",
      parameter: "",
      problem: "never: the offer's kerf alone costs more",
    });
});
it("rows from -30 to 20 %, the middle one as claimed; a claim of 0 has no change in percent", () => {
  const rows = sensitivity({
    current: { price: 100, life: 10_000, rate: 10 },
    offer: { price: 0, life: 20_000, rate: 20 },
    sawHourValue: 60,
    change: 0,
    currentKerfCost: 0,
    offerKerfCost: 0,
  });
  expect(rows.map(({ change, note }) => [change, note])).toEqual([
    [-0.3, ""],
    [-0.2, ""],
    [-0.1, ""],
    [0, "as claimed"],
    [0.1, ""],
    [0.2, ""],
    [undefined, "decision changes at this value"],
    [undefined, "by this change"],
  ]);
  expect(rows[7]!.price).toBeUndefined();
});
