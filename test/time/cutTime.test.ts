import { describe, expect, it } from "vitest";
import { cutTime } from "../../src/time/cutTime";
import { defaultShop } from "../../src/shop/defaultShop";
import { shape, shopOf } from "../cost/fixture";

describe("minutes per cut", () => {
  it("80 cm² at 40 cm²/min, 0.30 approach and return, 0.40 index and clamp: 2.7 min: own check value, exact", () => {
    expect(cutTime({ section: shape("area 80 cm2"), rate: 4000, handling: 0.3 + 0.4, shop: defaultShop })).toBeCloseTo(
      2.7,
      12,
    );
  });

  it("the shop's maximum feed holds it back (derived)", () => {
    const section = shape("flat 100x80 mm");
    expect(cutTime({ section, rate: 1e9, handling: 1, shop: shopOf({ maximumFeed: 10 }) })).toBeCloseTo(
      section.profile().height / 10 + 1,
      9,
    );
  });
});
