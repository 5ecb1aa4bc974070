import { expect, it } from "vitest";
import { usualBand } from "../../src/cutting/usualBand";
import { shop } from "./fixture";

it("is the shop's band, else the one usual for the width (judgement; kerfs common practice, no source)", () => {
  expect(usualBand({ extent: 178, shop: shop() })).toEqual({ width: 27, thickness: 0.9, kerf: 1.4, described: false });
  expect(usualBand({ extent: 1000, shop: shop() })).toMatchObject({ width: 67, kerf: 2.5 });
  expect(usualBand({ extent: 100, shop: shop({ bandWidth: 41 }) })).toEqual({
    width: 41,
    thickness: 1.3,
    kerf: 2,
    described: true,
  });
  expect(usualBand({ extent: 100, shop: shop({ bandWidth: 41, bandThickness: 1.1 }) }).kerf).toBe(1.65);
  expect(usualBand({ extent: 100, shop: shop({ bandThickness: 2 }) }).kerf).toBeCloseTo(3.08, 9);
  expect(usualBand({ extent: 100, shop: shop({ kerf: 1.2 }) }).kerf).toBe(1.2);
});
