import { expect, it } from "vitest";
import type { CutSigns } from "../../src/cutting/cutSigns";
import { signConditions } from "../../src/cutting/signConditions";

/** The conditions of these that hold for a cut of which only so much is known. */
const held = (names: readonly string[], own: object, given: readonly string[], shop = {}) => {
  const signs = { ...own, shop: { ...shop, given } } as unknown as CutSigns;
  return names.filter((name) => signConditions[name]![0](signs));
};

it.each([
  [199, []],
  [200, ["tensionUsual"]],
  [250, ["tensionUsual"]],
  [300, ["tensionUsual"]],
  [301, []],
  [325, []],
  [326, ["tensionHigh"]],
])("a tension of %d MPa, usual 250 give or take a fifth, high from 1.3 (judgement): %j", (bandTension, names) => {
  const all = ["tensionUsual", "tensionHigh"];
  expect(held(all, {}, ["bandTension"], { bandTension })).toEqual(names);
  // The usual tension of a saw that says none is a guess, and no sign of anything.
  expect(held([...all, "tensionLow"], {}, [], { bandTension })).toEqual([]);
});

it("guides, thickness and width are signs only where the shop block gives them (judgement: 1.1, 1.15, 0.75)", () => {
  const all = ["guidesClose", "bandThick", "bandNarrow"];
  const given = ["guideGap", "bandThickness", "bandWidth"];
  expect(held(all, { guides: 1.1, thick: 1.16, wide: 0.74 }, given)).toEqual(all);
  expect(held(all, { guides: 1.11, thick: 1.15, wide: 0.75 }, given)).toEqual([]);
  expect(held(all, { guides: 1, thick: 2, wide: 0.5 }, [])).toEqual([]);
});
