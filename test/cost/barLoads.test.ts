import { expect, it } from "vitest";
import { barLoads } from "../../src/cost/barLoads";
import { refused, shape, shopOf } from "./fixture";

const shop = shopOf({ stockLength: 6000, trim: 10, grip: 60 });

it("120 pieces of 100 mm from 6 m: 58 a bar, 3 bars (by hand); under 30° the kerf is 1.6 / cos 30° along the bar", () => {
  const input = { section: shape("round 100 mm"), length: 100, pieces: 120, kerf: 1.6, shop };
  expect(barLoads(input)).toMatchObject({ bars: 3, cuts: 120 });
  const mitre = barLoads({ ...input, section: shape("round 100 mm mitre 30") });
  expect(mitre.kerf).toBeCloseTo((120 * 1.6) / Math.cos(Math.PI / 6), 6);
  expect(refused(() => barLoads({ ...input, shop: shopOf({}) }))).toMatchObject({ parameter: "settings" });
});
