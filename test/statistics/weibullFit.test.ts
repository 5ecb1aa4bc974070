import { describe, expect, it } from "vitest";
import { weibullFit } from "../../src/statistics/weibullFit";
import { lives } from "./lives";

const near = (value: number, expected: number, digits: number) => expect(value).toBeCloseTo(expected, digits);

describe("Weibull distribution by maximum likelihood", () => {
  it("NIST/SEMATECH e-Handbook 8.4.1.3: 10 failures, 10 censored at 500 (1.7207, 606.5280); R survival 3.5-3 for the rest", () => {
    const fit = weibullFit(lives("54 187 216 240 244 335 361 373 375 386", "500 500 500 500 500 500 500 500 500 500"))!;
    near(fit.shape, 1.720797261, 6);
    near(fit.scale, 606.527558, 4);
    near(fit.logLikelihood, -75.13461816, 6);
    near(fit.scaleError, 0.205943909, 7);
    near(fit.shapeError, 0.2918127631, 7);
    near(fit.mean, 540.7370255, 4);
  });
  it("23 ball bearings, Lieblein and Zelen 1956 (from memory), complete: R gives 2.1021, 81.878, −113.691", () => {
    const fit = weibullFit(
      lives(
        "17.88 28.92 33 41.52 42.12 45.6 48.48 51.84 51.96 54.12 55.56 67.8 68.64 68.64 68.88 84.12 93.12 98.64 105.12 105.84 127.92 128.04 173.4",
      ),
    )!;
    near(fit.shape, 2.102058875, 6);
    near(fit.scale, 81.87833405, 5);
    near(fit.logLikelihood, -113.6912909, 5);
  });
  it("five blades, one pulled (R)", () => {
    const fit = weibullFit(lives("3.1 3.6 4.4 2.7", "2"))!;
    near(fit.shape, 5.970316597, 6);
    near(fit.scale, 3.728619737, 7);
    near(fit.mean, 3.458162319, 7);
  });
  it("30 49 82 90 96, pulled 10 45 100: 3.017, 87.96 (R)", () => {
    const fit = weibullFit(lives("30 49 82 90 96", "10 45 100"))!;
    near(fit.shape, 3.017, 3);
    near(fit.scale, 87.96, 2);
  });
  it("the error of ln mean is the curvature of the likelihood along it, taken by differences of the likelihood itself", () => {
    const sample = lives("3.1 3.6 4.4 2.7", "2");
    const fit = weibullFit(sample)!;
    // −ℓ in (ln scale, ln 1/shape), its Hessian by differences, inverted by hand; gradient of ln mean by differences of an integral.
    const minus = (a: number, b: number): number =>
      -sample.reduce((s, { area, ended }) => {
        const z = (Math.log(area) - a) / Math.exp(b);
        return s + (ended ? z - b - Math.log(area) : 0) - Math.exp(z);
      }, 0);
    const logMean = (a: number, b: number): number => {
      // mean = ∫ survival
      let sum = 0;
      for (let x = 0.0005; x < 40; x += 0.001) sum += Math.exp(-((x / Math.exp(a)) ** (1 / Math.exp(b)))) * 0.001;
      return Math.log(sum);
    };
    const [a, b, h] = [Math.log(fit.scale), -Math.log(fit.shape), 1e-4];
    const [faa, fbb, fab] = [
      (minus(a + h, b) - 2 * minus(a, b) + minus(a - h, b)) / h ** 2,
      (minus(a, b + h) - 2 * minus(a, b) + minus(a, b - h)) / h ** 2,
      (minus(a + h, b + h) - minus(a + h, b - h) - minus(a - h, b + h) + minus(a - h, b - h)) / (4 * h ** 2),
    ];
    const k = 0.01;
    const [ga, gb] = [
      (logMean(a + k, b) - logMean(a - k, b)) / (2 * k),
      (logMean(a, b + k) - logMean(a, b - k)) / (2 * k),
    ];
    const variance = (ga * ga * fbb - 2 * ga * gb * fab + gb * gb * faa) / (faa * fbb - fab * fab);
    expect(fit.meanError).toBeCloseTo(Math.sqrt(variance), 4);
  });
  it("does not exist without an end, or where every end is at the largest area", () => {
    expect(weibullFit(lives("", "3 4"))).toBeUndefined();
    expect(weibullFit(lives("4 4 4", "2 3"))).toBeUndefined();
    expect(weibullFit(lives("3", "5"))).toBeDefined();
  });
});
