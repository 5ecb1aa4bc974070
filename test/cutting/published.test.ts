import { describe, expect, it } from "vitest";
import { publishedPage, publishedRates, publishedSources } from "../../functions/reference/published";
import { compared, summary } from "../../functions/reference/comparison";
import { inch2, predict } from "./fixture";

/** The published figures that the model reads from or is calibrated on: 93 checks. Not validation: nothing was held out here. */

const perUnit = { "in²": inch2, "cm²": 100 } as const;
let checks = 0;
const holds = (title: string, test: () => void): void => {
  checks += 1;
  it(title, test);
};

describe(`band speeds of ${publishedPage.source}`, () => {
  for (const [grade, speed] of publishedPage.speeds)
    holds(`${grade}: ${speed} ft/min at a square of 4 in, within 2 %`, () => {
      expect(Math.abs(predict("square 4", grade).run.speed / 304.8 / speed - 1)).toBeLessThanOrEqual(0.02);
    });
});

describe("pitch and band speed by size, of the same page", () => {
  for (const [width, pitch, factor] of publishedPage.sizes) {
    holds(`square ${width} in: ${pitch}`, () => expect(predict(`square ${width}`, "1018").pitch.text).toBe(pitch));
    holds(`square ${width} in: × ${factor} on the band speed`, () => {
      const at = (size: string) => predict(size, "1018").run.speed;
      expect(at(`square ${width}`) / at("square 4")).toBeCloseTo(factor, 3);
    });
  }
  holds("without coolant the speed is reduced by 30 to 50 %", () => {
    const share =
      predict("square 4", "1018", "bi-metal", { coolant: "dry" }).run.speed / predict("square 4", "1018").run.speed;
    expect(share).toBeGreaterThanOrEqual(publishedPage.dry[0]);
    expect(share).toBeLessThanOrEqual(publishedPage.dry[1]);
  });
});

describe.each(Object.entries(publishedSources))("rates calibrated on: %s: %s", (source) => {
  for (const row of publishedRates.filter((r) => r.source === source)) {
    const { section, grade, blade, pitch, low, high, unit } = row;
    holds(`${section}, ${grade}, ${blade}: ${low}-${high} ${unit}/min`, () => {
      const got = predict(section, grade, blade, {}, pitch === "" ? undefined : pitch);
      const rate = got.rate / perUnit[unit];
      if (source !== "chart") {
        expect(rate).toBeGreaterThanOrEqual(low);
        expect(rate).toBeLessThanOrEqual(high);
        return;
      }
      const middle = Math.sqrt(low * high);
      expect(Math.abs(Math.log(rate / middle))).toBeLessThanOrEqual(Math.log(1.35));
      expect(got.rateLow / perUnit[unit]).toBeLessThanOrEqual(middle);
      expect(got.rateHigh / perUnit[unit]).toBeGreaterThanOrEqual(middle);
    });
  }
});

it("these are 93 checks", () => expect(checks).toBe(93));

it("the cutting chart's 26 rows: geometric mean 0.98, all their middles between low and high", () => {
  const { mean, inside } = summary(compared().filter((r) => r.published.source === "chart"));
  expect(mean).toBeCloseTo(0.98, 2);
  expect(inside).toBe(26);
});

it("two published steps of the pitch: 4/6 for 3/4 takes the rate to 0.70 (read), 1.4/2.5 for 2/3 near 0.72 (read)", () => {
  const g = (typed: string, size: string) => predict(size, "1018", "bi-metal", {}, typed).cut.pitchFactor;
  expect(g("4/6", "square 4") / g("3/4", "square 4")).toBeCloseTo(0.7, 2);
  expect(Math.abs(g("1.4/2.5", "square 8") / g("2/3", "square 8") / 0.72 - 1)).toBeLessThan(0.1);
});
