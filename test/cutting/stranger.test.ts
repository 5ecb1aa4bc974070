import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { predictCut } from "../../src/cutting/predictCut";
import { InputError } from "../../src/errors";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { contactRows } from "../../src/section/contactRows";
import type { Shop } from "../../src/shop/shop";
import { shape, shop } from "./fixture";
import { rate } from "./stranger.mjs";

/** Random cuts, 600 at each run and more by CUTS, against the third program, which knows docs/method.md and docs/sources.md only. */

const cuts = Number(process.env["CUTS"] ?? 600);
const log = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((x) => Number(Math.exp(x).toFixed(2)));
const solid = { kind: "solid" as const };
type Work = Record<string, unknown> & { readonly area: number };
const anyWork: fc.Arbitrary<readonly [size: string, work: Work, exact: number]> = fc.oneof(
  fc.tuple(log(6, 500), log(6, 400)).map(([a, b]) => {
    const [width, height] = [Math.max(a, b), Math.min(a, b)];
    return [
      `flat ${width}x${height} mm`,
      { ...solid, shape: "rectangle", width, height, area: width * height },
      1e-6,
    ] as const;
  }),
  log(6, 600).map(
    (diameter) =>
      [
        `round ${diameter} mm`,
        { ...solid, shape: "round", diameter, area: (Math.PI * diameter ** 2) / 4 },
        1e-3,
      ] as const,
  ),
  fc.tuple(log(25, 400), fc.double({ min: 0.03, max: 0.3, noNaN: true })).map(([diameter, share]) => {
    const wall = Number((diameter * share).toFixed(2));
    return [
      `tube ${diameter}x${wall} mm`,
      { kind: "hollow", shape: "tube", diameter, wall, area: Math.PI * wall * (diameter - wall) },
      1e-3,
    ] as const;
  }),
  fc
    .constantFrom(
      "W12x50",
      "W8x31",
      "C8x11.5",
      "L4x4x1/2",
      "hex 3",
      "HSS6x4x1/4",
      "round 2 bundle 3x4",
      "tube 2x0.25 bundle 2x3",
      "HEB 200",
      "square 3 diamond",
    )
    .map((size) => {
      const section = shape(size);
      const { area, kind, thinnest } = section.profile();
      return [
        size,
        { shape: "rows", kind, area, thinnest, rows: contactRows({ section, steps: 1000 }) },
        5e-3,
      ] as const;
    }),
);
const grades = builtInMaterials().filter((m) => m.isDefault && m.group !== undefined);
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const anySaw = fc.record({
  motorPower: maybe(log(800, 20_000)),
  bandWidth: maybe(fc.constantFrom(27, 34, 41, 54, 67)),
  bandTension: log(150, 350),
  maximumFeed: maybe(log(20, 500)),
  maximumFeedForce: maybe(log(200, 5000)),
  maximumBandSpeed: maybe(log(30_000, 150_000)),
  minimumBandSpeed: maybe(log(5000, 30_000)),
});
const anyShop = fc.record({
  coolant: fc.constantFrom("mist" as const, "dry" as const, undefined),
  sawCondition: fc.constantFrom("good" as const, "worn" as const),
  rateFactor: fc.constantFrom(1, 1, 0.8, 1.3),
});
const stocks = [
  undefined,
  undefined,
  ["4/6", "3/4", "2/3"],
  ["10/14", "6/10", "3/4", "1.4/2"],
  ["14/18", "5/8"],
] as const;

const ours = (size: string, material: (typeof grades)[number], blade: "bi-metal" | "carbide", saw: Partial<Shop>) => {
  try {
    return predictCut({ section: shape(size, "inch"), material, blade, shop: shop(saw), pitch: undefined });
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
};

describe("a stranger's program", () => {
  it("gives the pitch exactly and the rate to 1e-6 for rectangles, 1e-3 for rounds and tubes, 5e-3 with a saw", () => {
    let answered = 0;
    fc.assert(
      fc.property(
        anyWork,
        fc.constantFrom(...grades),
        fc.constantFrom("bi-metal" as const, "bi-metal" as const, "carbide" as const),
        anyShop,
        fc.option(anySaw, { nil: undefined, freq: 2 }),
        fc.constantFrom(...stocks),
        ([size, work, exact], material, blade, general, saw, stock) => {
          // CONTACT's rows do not give the extent: those cuts have no saw.
          const limits = work["shape"] === "rows" ? undefined : saw;
          const got = ours(size, material, blade, { ...general, ...limits, pitchesStocked: stock?.map(readPitch) });
          const theirs = rate({
            work,
            group: material.group!.name,
            key: material.key,
            hardness: (material.hardness.least + material.hardness.most) / 2,
            magnesium: material.family === "magnesium",
            blade,
            stock,
            saw: {
              coolant: general.coolant,
              condition: general.sawCondition,
              factor: general.rateFactor,
              motor: limits?.motorPower,
              bandWidth: limits?.bandWidth,
              tension: limits?.bandTension,
              feed: limits?.maximumFeed,
              force: limits?.maximumFeedForce,
              top: limits?.maximumBandSpeed,
              slowest: limits?.minimumBandSpeed,
            },
          }) as { readonly rate: number; readonly pitch: string } | undefined;
          const what = `${size} ${material.key} ${blade} ${JSON.stringify({ ...general, ...limits, stock })}`;
          if (blade === "bi-metal" && material.group!.blades["bi-metal"] === undefined) return;
          expect(theirs?.pitch, what).toBe(got?.pitch.text);
          if (got === undefined) return;
          answered += 1;
          const allowed = limits === undefined ? exact : Math.max(exact, 5e-3);
          expect(Math.abs(theirs!.rate / got.rate - 1), what).toBeLessThanOrEqual(allowed);
        },
      ),
      { seed: 2000, numRuns: cuts },
    );
    expect(answered).toBeGreaterThan(0.7 * cuts);
  });
});
