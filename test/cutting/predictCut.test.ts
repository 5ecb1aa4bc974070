import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { groups } from "../../src/data/groups";
import { limitNames } from "../../src/cutting/cut";
import type { BladeClass } from "../../src/blade/bladeClass";
import { predictCut } from "../../src/cutting/predictCut";
import { readPitch } from "../../src/blade/readPitch";
import type { Material } from "../../src/material/material";
import type { Shop } from "../../src/shop/shop";
import { findMaterial } from "../../src/material/findMaterial";
import { inch2, predict, referenceRows, saws, shape, shop, work } from "./fixture";

describe("trade figures, common practice, no source: 17-4PH, 7 in round (the group row is calibrated on them)", () => {
  it("bi-metal 2.0 to 2.5 in²/min, carbide 8 to 11", () => {
    expect(predict("round 7", "17-4PH").rate / inch2).toBeGreaterThanOrEqual(2);
    expect(predict("round 7", "17-4PH").rate / inch2).toBeLessThanOrEqual(2.5);
    expect(predict("round 7", "17-4PH", "carbide").rate / inch2).toBeGreaterThanOrEqual(8);
    expect(predict("round 7", "17-4PH", "carbide").rate / inch2).toBeLessThanOrEqual(11);
  });
});

describe("a second implementation of the same text (model output, not validation): 42 cuts on four saws", () => {
  const run = (row: (typeof referenceRows)[number], pitch?: string) =>
    predict(
      row.section,
      row.material,
      row.blade,
      { ...saws[row.saw], feedMode: row.feed === "feed" ? "constant feed" : "constant rate" },
      pitch,
    );

  // There a weak band alone decides for 1.4/2, which the weak motor then favours as well. A stronger band would bring the
  // finer pitch back and so a slower cut: loosening a limit must not do that, so 2/3 is kept, 6.4 % slower on this saw.
  it("the pitch chosen is the same, but for row 31", () => {
    const other = referenceRows
      .filter((row) => run(row).pitch.text !== row.pitch)
      .map((row) => [row.n, row.saw, row.pitch, run(row).pitch.text]);
    expect(other).toEqual([[31, "small", "1.4/2", "2/3"]]);
  });

  it.each(referenceRows.map((row) => [row.n, row.material, row.blade, row.section, row.saw, row] as const))(
    "%s: %s, %s, %s, saw %s",
    (n, _m, _b, _s, _w, row) => {
      const got = run(row, row.pitch);
      for (const [value, printed] of [
        [got.rate, row.nominal],
        [got.rateLow, row.low],
        [got.rateHigh, row.high],
      ] as const)
        expect(Math.abs(value / 100 / printed - 1)).toBeLessThanOrEqual(0.02);
      // Under the motor's limit the time is flat over the speed: another step of the search is as short.
      const flat = row.binds === "motor power";
      expect(Math.abs(got.speed / 1000 / row.speed - 1)).toBeLessThanOrEqual(flat ? 0.08 : 0.005);
      expect(Math.abs((got.run.meanChip * 1000) / row.chip - 1)).toBeLessThanOrEqual(flat ? 0.08 : 0.02);
      if (row.binds === "band speed") expect(got.prepared.capped).not.toBe("none");
      else expect(limitNames[got.run.shares.indexOf(Math.max(...got.run.shares))]).toBe(row.binds);
      expect(n).toBe(row.n);
    },
  );
});

const sizes = [
  "round 0.75",
  "round 2",
  "round 4",
  "round 7",
  "round 12",
  "flat 6x1",
  "flat 6x1 on edge",
  "square 3",
  "tube 2x0.25",
  "tube 6x0.5",
  "box 4x4x1/4",
  "W8x31",
  "W12x50",
  "L4x4x1/2",
  "C8x11.5",
  "round 2 bundle 3x4",
].map((s) => shape(s));
const grades = groups.flatMap((g) =>
  [
    "A36",
    "1045",
    "4140",
    "4140 HT",
    "D2",
    "430",
    "304",
    "17-4PH",
    "GCI-30",
    "65-45-12",
    "6061",
    "C36000",
    "C11000",
    "C95400",
    "A286",
    "N07718",
    "ti-2",
    "Ti-6Al-4V",
    "ihcp-1045",
  ]
    .map((d) => {
      try {
        return findMaterial(d, []);
      } catch {
        return undefined;
      }
    })
    .filter((m): m is Material => m?.group?.name === g.name),
);

const logUniform = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const maybe = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const anySaw: fc.Arbitrary<Partial<Shop>> = fc.record({
  motorPower: maybe(logUniform(500, 20_000)),
  bandWidth: maybe(fc.constantFrom(27, 34, 41, 54, 67)),
  bandTension: logUniform(100, 350),
  maximumFeed: maybe(logUniform(20, 2000)),
  maximumFeedForce: maybe(logUniform(100, 10_000)),
  maximumBandSpeed: maybe(logUniform(15_000, 200_000)),
  minimumBandSpeed: maybe(logUniform(3_000, 30_000)),
  guideGap: logUniform(20, 300),
  feedMode: fc.constantFrom("constant rate" as const, "constant feed" as const),
  coolant: fc.constantFrom("mist" as const, "dry" as const, undefined),
  sawCondition: fc.constantFrom("good" as const, "worn" as const),
});
const anyCut = fc.record({
  section: fc.constantFrom(...sizes),
  material: fc.constantFrom(...grades),
  blade: fc.constantFrom<BladeClass>("bi-metal", "carbide"),
  saw: anySaw,
  pitch: fc.constantFrom("10/14", "5/8", "3/4", "2/3", "1.4/2"),
});

const attempt = (cut: {
  section: (typeof sizes)[number];
  material: Material;
  blade: BladeClass;
  saw: Partial<Shop>;
  pitch: string | undefined;
}) => {
  try {
    return predictCut({
      section: cut.section,
      material: cut.material,
      blade: cut.blade,
      shop: shop(cut.saw),
      pitch: cut.pitch === undefined ? undefined : readPitch(cut.pitch),
    });
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
};

describe("laws over random cuts", () => {
  it("low ≤ nominal ≤ high; never above the group's high; below its low only with a named limit (60,000 cuts)", () => {
    let answered = 0;
    fc.assert(
      fc.property(anyCut, (cut) => {
        const got = attempt(cut);
        if (got === undefined) return;
        answered += 1;
        expect(got.rateLow).toBeLessThanOrEqual(got.rate);
        expect(got.rate).toBeLessThanOrEqual(got.rateHigh);
        const row = cut.material.group!.blades[cut.blade]!;
        const high = row.speed.high * 1.2 * row.chip.high * 13.78;
        expect(got.rate).toBeLessThanOrEqual(high);
        expect(got.run.shares.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
        // The reference row is the group's low with the factors of width, interrupted cut, coolant and saw still in it.
        if (got.run.shares[0]! > 0.999 && got.prepared.capped === "none")
          expect(got.rate).toBeGreaterThan(row.speed.low * row.chip.low * 13.78 * 0.75 * 0.8 * 0.65 * 0.35 * 0.3);
      }),
      { seed: 6, numRuns: 60_000 },
    );
    expect(answered).toBeGreaterThan(45_000);
  }, 240_000);

  it.each([
    { at: "a typed pitch", pitches: true, least: 14_000 },
    { at: "the pitch it chooses", pitches: false, least: 10_000 },
  ])(
    "loosening a limit never lowers the rate at $at, but for 0.51 % of the speed search (50,000 trials)",
    ({ pitches, least }) => {
      let [tried, worst] = [0, 0];
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
      fc.assert(
        fc.property(
          pitches ? anyCut : anyCut.map((cut) => ({ ...cut, pitch: undefined })),
          fc.constantFrom(...loosen),
          (cut, [key, factor]) => {
            const value = cut.saw[key];
            if (typeof value !== "number") return;
            // A wider band is compared at one kerf and one thickness: only its stiffness is the limit.
            const saw = key === "bandWidth" ? { ...cut.saw, bandThickness: 1, kerf: 1.6 } : cut.saw;
            const [before, after] = [
              attempt({ ...cut, saw }),
              attempt({ ...cut, saw: { ...saw, [key]: value * factor } }),
            ];
            if (before === undefined || after === undefined) return;
            tried += 1;
            worst = Math.max(worst, 1 - after.rate / before.rate);
          },
        ),
        { seed: 7, numRuns: 50_000 },
      );
      expect(tried).toBeGreaterThan(least);
      expect(worst).toBeLessThanOrEqual(0.0051);
    },
    300_000,
  );

  it("inch and metric are one: the same size read either way", () => {
    for (const [inch, metric] of [
      ["round 4 in", "round 101.6 mm"],
      ["flat 6x1 in", "flat 152.4x25.4 mm"],
      ["tube 6x0.5 in", "tube 152.4x12.7 mm"],
    ] as const)
      expect(predict(inch, "304").rate / predict(metric, "304").rate).toBeCloseTo(1, 12);
  });

  it("a bundle of one is the piece", () => {
    expect(predict("round 3 bundle 1x1", "4140").rate).toBeCloseTo(predict("round 3", "4140").rate, 6);
  });
});

describe("refusals", () => {
  const says = (run: () => unknown): string => {
    try {
      run();
    } catch (error) {
      if (error instanceof InputError) return `${error.reason}: ${error.problem}`;
      throw error;
    }
    return "not refused";
  };
  it.each([
    ["R1: no cutting data", () => predict("round 2", "tantalum"), /^none: No cutting data/],
    ["R2: too hard for bi-metal teeth", () => predict("round 2", "ihcp-1045"), /^none: .*too hard for bi-metal/],
    [
      "R3: the saw is too fast",
      () => predict("round 4", "N07718", "bi-metal", { minimumBandSpeed: 60_000 }),
      /^none: The slowest band speed/,
    ],
    [
      "R4: carbide is made too coarse",
      () => predict("round 1", "A36", "carbide"),
      /^none: Carbide bands are made 3\/4 and coarser/,
    ],
    [
      "R5: the wall is thinner than three quarters of a tooth",
      () => predict("tube 2x0.03", "A36"),
      /^none: The wall is/,
    ],
    ["R6: too few teeth in a thin solid", () => predict("round 0.1", "A36"), /^none: Only/],
    [
      "R7: the band cannot be pushed",
      () => predict("round 24", "ihcp-1045", "carbide", { bandWidth: 27, bandTension: 100, guideGap: 400 }),
      /^none: The .* cannot be pushed/,
    ],
    [
      "magnesium with flood coolant",
      () => predict("round 3", "AZ31B", "bi-metal", { coolant: "flood" }),
      /^invalid: .*flood coolant/,
    ],
    [
      "work wider than the saw",
      () => predict("round 12", "A36", "bi-metal", { maximumWidth: 250 }),
      /^invalid: the work is .* wide/,
    ],
    [
      "work higher than the saw",
      () => predict("round 2 bundle 6x1", "A36", "bi-metal", { maximumHeight: 250 }),
      /^invalid: the work is .* high/,
    ],
    [
      "a saw whose slowest speed is above its fastest",
      () => predict("round 4", "A36", "bi-metal", { minimumBandSpeed: 60_000, maximumBandSpeed: 50_000 }),
      /^invalid: Minimum band speed/,
    ],
    [
      "no pitch in stock suits",
      () => predict("round 1", "A36", "bi-metal", { pitchesStocked: [readPitch("0.75/1.25")] }),
      /^none: No pitch in stock suits/,
    ],
  ] as const)("%s", (_, run, pattern) => {
    expect(says(run)).toMatch(pattern);
  });

  it("magnesium is cut dry by default, without a derate", () => {
    expect(predict("round 3", "AZ31B").rate).toBe(predict("round 3", "AZ31B", "bi-metal", { coolant: "dry" }).rate);
  });
});

describe("anomalies of the plain model, each kept closed", () => {
  it("5: a pitch typed too fine is not faster: 17-4PH 7 in, 10/14 to 0.75/1.25, is best where the rule chooses", () => {
    const rates = ["10/14", "6/10", "4/6", "3/4", "2/3", "1.4/2", "1.1/1.6", "0.75/1.25"].map(
      (p) => predict("round 7", "17-4PH", "bi-metal", {}, p).rate / 100,
    );
    // model output of a second implementation: 8.3 10.2 12.8 13.7 13.5 12.8 11.9 9.4 cm²/min
    [8.3, 10.2, 12.8, 13.7, 13.5, 12.8, 11.9, 9.4].forEach((r, i) =>
      expect(Math.abs(rates[i]! / r - 1)).toBeLessThan(0.02),
    );
  });

  it("8, 9: thin tube is cut, not refused, and not at a rubbing chip", () => {
    const got = predict("tube 2x0.065", "304");
    expect(got.run.meanChip).toBeGreaterThan(0.0015);
  });

  it("10, 11: twins of one group cut alike; hardness counts only above the group's range", () => {
    expect(predict("round 4", "2205").rate).toBe(predict("round 4", "17-4PH").rate);
    expect(predict("round 4", "1018").rate).toBe(predict("round 4", "A36").rate);
    expect(predict("round 4", "17-4PH H900").rate).toBeLessThan(predict("round 4", "17-4PH").rate);
  });

  it("13: a saw that cannot run slowly enough gets no credit for it", () => {
    const plain = predict("round 4", "N05500");
    const fast = predict("round 4", "N05500", "bi-metal", { minimumBandSpeed: plain.speed * 1.3 });
    expect(fast.rate).toBeLessThanOrEqual(plain.rate * (1 + 1e-9));
    expect(fast.prepared.tooFast).toBe(true);
  });

  it("14: low and high never fall on the nominal rate, not even under the maximum feed alone", () => {
    const got = predict("flat 6x1", "A36", "bi-metal", { maximumFeed: 20 });
    expect(got.run.shares[3]).toBeCloseTo(1, 9);
    expect(got.rateHigh / got.rate).toBeCloseTo(1.15, 9);
    expect(got.rate / got.rateLow).toBeCloseTo(1.15, 9);
  });

  it("12: aluminium bronze aims at the usual number of teeth, not at the fewer of soft metals", () => {
    expect(readPitch(predict("round 4", "C95400").pitch.text).mean).toBeLessThan(
      readPitch(predict("round 4", "6061").pitch.text).mean,
    );
  });

  it("6: when the motor binds, the band is slowed and the chip is kept", () => {
    const weak = predict("round 7", "4140", "bi-metal", { motorPower: 1100 });
    expect(weak.slowed).toBe(true);
    expect(weak.run.meanChip).toBeGreaterThan(0.0025);
  });

  it("no saw given limits nothing: motor and band are printed, not assumed", () => {
    const got = predict("round 16", "4140");
    expect(got.run.shares[4]! + got.run.shares[5]!).toBe(0);
  });

  it("own rate factor: of the grade before the group before the saw, limits still applied", () => {
    const base = predict("flat 6x1", "4140").rate;
    expect(predict("flat 6x1", "4140", "bi-metal", { rateFactor: 1.2 }).rate / base).toBeCloseTo(1.2, 6);
    expect(
      predict("flat 6x1", "4140", "bi-metal", { rateFactor: 1.2, rateFactors: [{ of: "alloy steel", value: 0.8 }] })
        .rate / base,
    ).toBeCloseTo(0.8, 6);
    expect(
      predict("flat 6x1", "4140", "bi-metal", {
        rateFactors: [
          { of: "alloy steel", value: 0.8 },
          { of: "4140-ann", value: 0.9 },
        ],
      }).rate / base,
    ).toBeCloseTo(0.9, 6);
  });
});

describe("sweeps in 1 mm steps over all groups", () => {
  const largestFall = (
    make: (mm: number) => string,
    from: number,
    to: number,
    blade: BladeClass = "bi-metal",
  ): number => {
    let worst = 0;
    for (const material of grades) {
      let last: number | undefined;
      for (let mm = from; mm <= to; mm += 1) {
        const got = attempt({ section: shape(make(mm), "metric"), material, blade, saw: {}, pitch: undefined });
        if (got !== undefined && last !== undefined) worst = Math.max(worst, 1 - got.rate / last);
        last = got?.rate;
      }
    }
    return worst;
  };
  it(
    "rounds never fall by more than 5 % at a pitch step",
    () => expect(largestFall((d) => `round ${d} mm`, 6, 300)).toBeLessThanOrEqual(0.05),
    300_000,
  );
  it(
    "flats never fall by more than 5 %",
    () => expect(largestFall((w) => `flat ${w}x${w + 20} mm on edge`, 6, 200)).toBeLessThanOrEqual(0.05),
    300_000,
  );
  it(
    "tubes never fall by more than 20 %",
    () => expect(largestFall((d) => `tube ${d}x8 mm`, 20, 200)).toBeLessThanOrEqual(0.2),
    300_000,
  );
  it(
    "boxes never fall by more than 20 %",
    () => expect(largestFall((b) => `box ${b}x${b}x6 mm`, 30, 150)).toBeLessThanOrEqual(0.2),
    300_000,
  );
  it("work() reads a size as the fixture does", () =>
    expect(work("round 7", "A36").section.area).toBe(shape("round 7").area));
});
