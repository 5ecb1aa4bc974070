import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { sectionStack } from "../../src/section/sectionStack";
import { slabArea } from "../../src/section/slabArea";

it("sums to the area of the stack (closed form of the area, geometry)", () => {
  for (const text of [
    "round 100 mm",
    "tube 100x8 mm",
    "flat 60x20 mm mitre 30",
    "W12x50",
    "L4x4x1/2",
    "round 20 mm bundle 3x4 nested",
  ]) {
    const section = readSection(text, "inch");
    const { layers, spread } = sectionStack(section);
    const area = layers.reduce(
      (sum, { times, slabs }) => sum + times * slabs.reduce((s, slab) => s + slabArea(slab, spread), 0),
      0,
    );
    expect(area / section.area, text).toBeCloseTo(1, 12);
  }
});
