import { describe, expect, it } from "vitest";
import { defaultShop } from "../../../src/shop/defaultShop";
import { otherwise, shopLabels, type ShopLabel } from "../../../functions/shop/labels";

/** Labels that stand twice: the block matches them without regard to case. */
const twice = (labels: readonly ShopLabel[]): readonly string[] => {
  const folded = labels.map((l) => l.label.toLowerCase());
  return folded.filter((label, i) => folded.indexOf(label) !== i);
};

describe("the labels of the shop block", () => {
  it("stand once each, and fill a field of the shop", () => {
    expect(twice(shopLabels)).toEqual([]);
    expect(twice([...shopLabels, { ...shopLabels[0]!, label: "HOURLY COST" }])).toEqual(["hourly cost"]);
    for (const { key } of shopLabels) expect(Object.keys(defaultShop)).toContain(key.split(".")[0]);
  });

  it("say what holds without them from the shop's own defaults, in the block's units", () => {
    const of = (label: string) => shopLabels.find((l) => l.label === label)!;
    expect(otherwise(of("Guide gap"), "metric")).toBe(`${defaultShop.guideGap} mm`);
    expect(otherwise(of("Guide gap"), "inch")).toBe(`${Number((defaultShop.guideGap / 25.4).toPrecision(5))} in`);
    expect(otherwise(of("Trim"), "inch")).toBe("0");
    expect(otherwise(of("Motor power"), "inch")).toBe("no limit");
    expect(otherwise(of("Saw condition"), "inch")).toBe("good");
  });

  it("leave no label without a word for its default", () => {
    for (const label of shopLabels) expect(otherwise(label, "inch"), label.label).not.toMatch(/^$|undefined|object/);
  });
});
