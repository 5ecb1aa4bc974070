import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { BladeClass } from "../../src/blade/bladeClass";
import type { Pitch } from "../../src/blade/pitch";
import { readPitch } from "../../src/blade/readPitch";
import { choosePitch } from "../../src/cutting/choosePitch";
import type { PitchedWork } from "../../src/cutting/cut";
import { cutCheck } from "../../src/cutting/cutCheck";
import { predictCut } from "../../src/cutting/predictCut";
import { madePitches } from "../../src/data/cuttingConstants";
import { InputError } from "../../src/errors";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { findMaterial } from "../../src/material/findMaterial";
import type { Material } from "../../src/material/material";
import type { Shop } from "../../src/shop/shop";
import { predict, shape, shop, work } from "./fixture";
import { said } from "./phrases";

/** The laws of the cut over random work. LAWS=10000 npx vitest run test/cutting/laws is the long run. */
const runs = Number(process.env["LAWS"] ?? 1000);
const law = (seed: number) => ({ seed, numRuns: runs });

const logUniform = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((x) => Number(Math.exp(x).toPrecision(6)));
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const mm = (x: number) => x.toFixed(2);

const anySize: fc.Arbitrary<string> = fc.oneof(
  logUniform(8, 500).map((d) => `round ${mm(d)} mm`),
  fc.tuple(logUniform(8, 500), logUniform(8, 300)).map(([a, b]) => `flat ${mm(a)}x${mm(b)} mm`),
  fc.tuple(logUniform(8, 300), logUniform(8, 100)).map(([a, b]) => `flat ${mm(a)}x${mm(b)} mm on edge`),
  logUniform(8, 300).map((d) => `hex ${mm(d)} mm`),
  fc
    .tuple(logUniform(25, 400), fc.double({ min: 0.02, max: 0.3, noNaN: true }))
    .map(([d, w]) => `tube ${mm(d)}x${mm(d * w)} mm`),
  fc
    .tuple(logUniform(25, 300), logUniform(25, 300), fc.double({ min: 0.03, max: 0.3, noNaN: true }))
    .map(([a, b, w]) => `box ${mm(a)}x${mm(b)}x${mm(Math.min(a, b) * w)} mm`),
  fc.constantFrom(
    "W8x31",
    "W12x50",
    "W24x68",
    "C8x11.5",
    "L4x4x1/2",
    "L6x4x3/8",
    "WT6x25",
    "HEB 200",
    "UPN 200",
    "IPE 300",
  ),
  fc
    .tuple(logUniform(10, 80), fc.integer({ min: 1, max: 5 }), fc.integer({ min: 2, max: 6 }))
    .map(([d, r, c]) => `round ${mm(d)} mm bundle ${r}x${c}`),
  fc
    .tuple(logUniform(20, 80), fc.integer({ min: 1, max: 5 }), fc.integer({ min: 2, max: 6 }))
    .map(([d, r, c]) => `tube ${mm(d)}x${mm(d / 12)} mm bundle ${r}x${c}`),
  fc.tuple(logUniform(10, 60), fc.integer({ min: 2, max: 12 })).map(([a, c]) => `square ${mm(a)} mm bundle 1x${c}`),
);
const grades = builtInMaterials().filter((m) => m.isDefault && m.group !== undefined);
const anySaw: fc.Arbitrary<Partial<Shop>> = fc.record({
  motorPower: maybe(logUniform(500, 20_000)),
  bandWidth: maybe(fc.constantFrom(27, 34, 41, 54, 67)),
  bandTension: logUniform(100, 350),
  maximumFeed: maybe(logUniform(20, 2000)),
  maximumFeedForce: maybe(logUniform(100, 10_000)),
  maximumBandSpeed: maybe(logUniform(30_000, 200_000)),
  minimumBandSpeed: maybe(logUniform(3_000, 30_000)),
  guideGap: logUniform(20, 300),
  feedMode: fc.constantFrom("constant rate" as const, "constant rate" as const, "constant feed" as const),
  coolant: fc.constantFrom("mist" as const, "dry" as const, undefined),
  sawCondition: fc.constantFrom("good" as const, "worn" as const),
});
const stocks: readonly (readonly Pitch[] | undefined)[] = [
  undefined,
  undefined,
  ["4/6", "3/4", "2/3"].map(readPitch),
  ["10/14", "5/8", "3/4", "1.4/2"].map(readPitch),
  ["14/18", "4/6"].map(readPitch),
];
const anyCut: fc.Arbitrary<PitchedWork> = fc
  .record({
    size: anySize,
    material: fc.constantFrom(...grades),
    blade: fc.constantFrom<BladeClass>("bi-metal", "bi-metal", "carbide"),
    saw: anySaw,
    stock: fc.constantFrom(...stocks),
  })
  .map(({ size, material, blade, saw, stock }) => ({
    section: shape(size),
    material,
    blade,
    shop: shop({ ...saw, pitchesStocked: stock }),
    pitch: undefined,
  }));

const attempt = <T>(run: () => T): T | undefined => {
  try {
    return run();
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
};
const onFreeSaw = (w: PitchedWork): PitchedWork => ({ ...w, shop: shop({ pitchesStocked: w.shop.pitchesStocked }) });

describe("laws of size (3): minutes strictly rise, the rate steps by less than 2 %, the pitch is never finer", () => {
  const steps = Array.from({ length: Math.floor(Math.log(500 / 8) / Math.log(1.01)) }, (_, i) => 8 * 1.01 ** i);
  it.each([
    ["round", (d: number) => `round ${d} mm`],
    ["square", (d: number) => `square ${d} mm`],
    ["flat on edge", (d: number) => `flat ${d * 2}x${d} mm on edge`],
    ["hex", (d: number) => `hex ${d} mm`],
    ["tube", (d: number) => `tube ${d}x${d / 8} mm`],
    ["box", (d: number) => `box ${d}x${d / 2}x${d / 10} mm`],
    ["angle", (d: number) => `L ${d}x${d}x${d / 10} mm`],
    ["bundle of rounds", (d: number) => `round ${d} mm bundle 2x3`],
    ["bundle of tubes", (d: number) => `tube ${d}x${d / 8} mm bundle 2x3`],
  ] as const)("%s", (_, size) => {
    for (const [grade, blade] of [
      ["A36", "bi-metal"],
      ["6061", "bi-metal"],
      ["304", "carbide"],
    ] as const) {
      let last: { minutes: number; rate: number; mean: number } | undefined;
      for (const d of steps) {
        const got = attempt(() => predict(size(Number(d.toFixed(4))), grade, blade));
        if (got === undefined) continue;
        const { minutes, rate } = got.run;
        if (last !== undefined) {
          expect(minutes, size(d)).toBeGreaterThan(last.minutes);
          expect(Math.abs(rate / last.rate - 1), size(d)).toBeLessThan(0.02);
          expect(got.pitch.mean, size(d)).toBeGreaterThanOrEqual(last.mean - 1e-9);
        }
        last = { minutes, rate, mean: got.pitch.mean };
      }
    }
  });
  it("a thicker wall, from 0.05 in up, is never sooner through", () => {
    for (const size of [(w: number) => `tube 4x${w}`, (w: number) => `box 4x3x${w}`]) {
      let last = 0;
      for (let wall = 0.05; wall < 1.2; wall *= 1.01) {
        const minutes = attempt(() => predict(size(Number(wall.toFixed(5))), "A36").run.minutes);
        if (minutes === undefined) continue;
        expect(minutes, size(wall)).toBeGreaterThanOrEqual(last * (1 - 1e-9));
        last = minutes;
      }
    }
  });
});

describe("laws of the pitch", () => {
  it("(4) the chosen pitch is the fastest of all on a saw that limits nothing", () => {
    fc.assert(
      fc.property(anyCut, (cut) => {
        const free = { ...onFreeSaw(cut), shop: shop() };
        const best = attempt(() => predictCut(free));
        if (best === undefined) return;
        for (const text of madePitches[cut.blade])
          expect(predictCut({ ...free, pitch: readPitch(text) }).rate).toBeLessThanOrEqual(best.rate * (1 + 1e-12));
      }),
      law(4),
    );
  });
  it("(5) is the same on every saw", () => {
    fc.assert(
      fc.property(anyCut, (cut) => {
        const pitch = (w: PitchedWork) => attempt(() => choosePitch(w).text);
        expect(pitch(cut)).toBe(pitch(onFreeSaw(cut)));
      }),
      law(5),
    );
  });
  it("(8) flats on edge side by side take the pitch of the solid of their outline, and 0.8 of its rate", () => {
    fc.assert(
      fc.property(
        logUniform(2, 20),
        logUniform(20, 60),
        fc.integer({ min: 2, max: 30 }),
        fc.constantFrom<Material>(...grades.filter((m) => !m.group!.bulky)),
        (thick, wide, count, material) => {
          const [t, w] = [Number(thick.toFixed(2)), Number(wide.toFixed(2))];
          const on = (size: string) =>
            attempt(() =>
              predictCut({ section: shape(size), material, blade: "bi-metal", shop: shop(), pitch: undefined }),
            );
          const side = Number((t * count).toFixed(4));
          const [flats, solid] = [
            on(`flat ${w}x${t} mm on edge bundle 1x${count}`),
            on(side >= w ? `flat ${side}x${w} mm` : `flat ${w}x${side} mm on edge`),
          ];
          expect(flats?.pitch.text).toBe(solid?.pitch.text);
          // Where the gullets hold both, they hold the same.
          if (flats !== undefined && solid!.run.shares.gullet === 0)
            expect(flats.rate / solid!.rate).toBeCloseTo(0.8, 9);
        },
      ),
      law(8),
    );
  });
});

describe("laws of the saw and of the ends", () => {
  it("(6) loosening a limit never lowers rate, low or high, and refuses no cut", () => {
    const loosen: readonly (readonly [keyof Shop, number])[] = [
      ["motorPower", 1.3],
      ["bandWidth", 1.3],
      ["bandTension", 1.2],
      ["maximumFeed", 1.5],
      ["maximumFeedForce", 1.5],
      ["maximumBandSpeed", 1.2],
      ["minimumBandSpeed", 0.8],
      ["guideGap", 0.7],
    ];
    let tried = 0;
    fc.assert(
      fc.property(
        anyCut,
        fc.constantFrom(...loosen),
        fc.constantFrom(undefined, "10/14", "3/4", "1.4/2"),
        (cut, [key, factor], typed) => {
          const value = cut.shop[key];
          if (typeof value !== "number") return;
          // A wider band is compared at one kerf and one thickness: only its stiffness is the limit.
          const saw = key === "bandWidth" ? { ...cut.shop, bandThickness: 1, kerf: 1.6 } : cut.shop;
          const pitch = typed === undefined ? undefined : readPitch(typed);
          const at = (s: Shop) => attempt(() => predictCut({ ...cut, shop: s, pitch }));
          const [before, after] = [at(saw), at({ ...saw, [key]: value * factor })];
          if (before === undefined) return;
          tried += 1;
          expect(after, String(key)).toBeDefined();
          for (const of of ["rate", "rateLow", "rateHigh"] as const)
            expect(after![of], `${String(key)} ${of}`).toBeGreaterThanOrEqual(before[of] * (1 - 1e-9));
        },
      ),
      { seed: 6, numRuns: 3 * runs },
    );
    expect(tried).toBeGreaterThan(runs / 2);
  });

  it("(7) low ≤ rate ≤ high, all finite; (9) hollow work is never faster than 0.75 of v × b; (10) a rate factor multiplies all three", () => {
    let answered = 0;
    fc.assert(
      fc.property(anyCut, fc.double({ min: 0.5, max: 2, noNaN: true }), (cut, factor) => {
        const got = attempt(() => predictCut(cut));
        if (got === undefined) return;
        answered += 1;
        const { rate, rateLow, rateHigh } = got;
        for (const x of [rate, rateLow, rateHigh]) expect(Number.isFinite(x) && x > 0).toBe(true);
        expect(rateLow <= rate && rate <= rateHigh).toBe(true);
        const { row, speeds, profile } = got.cut;
        if (profile.kind === "hollow") expect(rate).toBeLessThanOrEqual(0.75 * speeds.speed * row.bite * (1 + 1e-9));
        const free = {
          ...onFreeSaw(cut),
          shop: { ...onFreeSaw(cut).shop, maximumBandSpeed: cut.shop.maximumBandSpeed },
        };
        const [one, own] = [1, factor].map((rateFactor) => predictCut({ ...free, shop: { ...free.shop, rateFactor } }));
        if (one!.run.shares.gullet + own!.run.shares.gullet > 0) return;
        for (const of of ["rate", "rateLow", "rateHigh"] as const) expect(own![of] / one![of]).toBeCloseTo(factor, 9);
      }),
      law(7),
    );
    expect(answered).toBeGreaterThan(runs / 2);
  });

  it("(7) its own advice is never faulted: every section kind, class, saw and stock", () => {
    let judged = 0;
    fc.assert(
      fc.property(anyCut, (cut) => {
        const got = attempt(() => predictCut(cut));
        if (got === undefined) return;
        judged += 1;
        const { verdict } = cutCheck({ ...cut, pitch: got.pitch, bandSpeed: got.run.speed, minutes: got.run.minutes });
        expect(said(verdict), `${cut.section.text} ${cut.material.key} ${cut.blade} ${got.pitch.text}`).toMatch(
          /^Leave it as it is/,
        );
      }),
      law(77),
    );
    expect(judged).toBeGreaterThan(runs / 2);
  });
});

it("the fixtures reach every group", () => {
  expect(new Set(grades.map((m) => m.group!.name)).size).toBe(21);
  expect(work("round 7", "A36").section.area).toBe(shape("round 7").area);
  expect(findMaterial("A36", []).group).toBeDefined();
});
