import fc from "fast-check";
import { InputError } from "../../src/errors";
import type { Blade } from "../../src/cost/blade";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Shape } from "../../src/section/shape";
import { defaultShop } from "../../src/shop/defaultShop";
import { soundRefusal } from "../soundRefusal";
import type { Shop } from "../../src/shop/shop";

export const shape = (text: string): Shape => {
  const section = readSection(text, "metric");
  return { ...section, profile: () => sectionProfile(section) };
};
export const steel = findMaterial("A36", []);
export const shopOf = (own: Partial<Shop>): Shop => ({ ...defaultShop, ...own });

/** Every decade is as likely as another; fast-check's own doubles crowd around 0. */
export const spread = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((i) => least * (most / least) ** (i / 1_000_000));
export const blades: fc.Arbitrary<Blade> = fc
  .record({ price: spread(10, 5000), life: spread(100, 1e6), rate: spread(0.5, 200) })
  .filter((b) => b.rate < b.life);

/** A blade in use and an offer near it: each value within a factor of four. */
export const pairs: fc.Arbitrary<{ readonly current: Blade; readonly offer: Blade }> = fc
  .record({ current: blades, price: spread(0.5, 4), life: spread(0.5, 4), rate: spread(0.5, 4) })
  .map(({ current, price, life, rate }) => ({
    current,
    offer: { price: current.price * price, life: current.life * life, rate: current.rate * rate },
  }));

export const relative = (a: number, b: number): number => Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b), 1e-300);

/** The refusal that a call ends in, or that it returned. */
export function refused(run: () => unknown): {
  readonly reason: string;
  readonly parameter: string;
  readonly problem: string;
} {
  let value: unknown;
  try {
    value = run();
  } catch (thrown) {
    value = thrown;
  }
  if (!(value instanceof InputError)) throw new Error(`not refused: ${String(value)}`);
  const { reason, parameter, problem } = soundRefusal(value);
  return { reason, parameter, problem };
}

/** Runs a law over draws of which some have no answer, and says what share had one. */
export function law<T>(
  draws: fc.Arbitrary<T>,
  seed: number,
  holds: (draw: T) => boolean | undefined,
  runs = 400,
): number {
  let [accepted, tried] = [0, 0];
  fc.assert(
    fc.property(draws, (draw) => {
      tried += 1;
      const held = holds(draw);
      if (held !== undefined) accepted += 1;
      return held !== false;
    }),
    { seed, numRuns: runs },
  );
  return accepted / tried;
}

/** The two blades of most check values: price, life [cm²], rate [cm²/min]; change 10 min, 60 an hour. */
export const bladeA: Blade = { price: 120, life: 30000, rate: 40 };
export const bladeB: Blade = { price: 260, life: 50000, rate: 55 };
