import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Blade } from "../../src/cost/blade";
import { sensitivity } from "../../src/cost/sensitivity";
import { InputError } from "../../src/errors";

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
  const rows = run(check);
  it("savings at -30 to +20 %", () => {
    check.expected.rows.forEach(([change, life, rate, both, price, value], i) => {
      const row = rows[i]!;
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
    const [value, change] = rows.slice(-2);
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
        expect(row.lifeAndRate as number).toBeCloseTo(rows[i]!.lifeAndRate as number, 12);
      });
  });
});
