import { describe, expect, it } from "vitest";
import { once } from "../../src/once";
import { signsOf } from "./signsOf";
import { symptomCases } from "./symptomCases";

const first = once(() => signsOf(symptomCases[0]!));

describe("the numbers that tell causes apart", () => {
  it("a 4 in round of A36 at 3/4 in 1.23 min: teeth, load, chip as worked by hand from docs/method.md", () => {
    expect(first().thinTeeth).toBeCloseTo((0.6 * 101.6) / (50.8 / 7), 1);
    expect(first().load).toBeCloseTo((1.2342 / 1.23) * (275.607 / 277), 3);
    expect(first().chip * 1000).toBeCloseTo(7.1113 * first().load, 1);
    expect(first().speed).toBeCloseTo(277 / 275.607, 4);
  });

  it("push: 0.8 Fc over half the buckling load, by the formulas of docs/method.md written out here", () => {
    const { chip, section } = first();
    const [w, t, S, e, sigma] = [27, 0.9, 101.6 + 75, 101.6, 250];
    const kc = 1780 * Math.max(0.005, 2 * chip) ** -0.17;
    const force = 1.4 * 1.15 * 1.3 * (section.area / 101.6 / (50.8 / 7)) * chip * kc;
    const T = sigma * w * t;
    const J = ((w * t ** 3) / 3) * (1 - (0.63 * t) / w);
    const M = Math.sqrt(
      ((Math.PI ** 2 * 206000 * ((w * t ** 3) / 12)) / S ** 2 + T) *
        ((206000 / 2.6) * J + (T * (w ** 2 + t ** 2)) / 12),
    );
    const limit = (0.5 * 4 * M) / S / (1 - e / (2 * S));
    expect(first().push).toBeCloseTo((0.8 * force) / limit, 6);
  });

  it("guides 200 mm off a 2 in bar: (200 + 25.4) / (50 + 25.4) = 2.99", () => {
    expect(signsOf(symptomCases[3]!).guides).toBeCloseTo(2.9894, 3);
  });
});
