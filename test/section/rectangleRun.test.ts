import fc from "fast-check";
import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { rectangleRun } from "../../src/section/rectangleRun";
import { sectionProfile } from "../../src/section/sectionProfile";
import { slabArea } from "../../src/section/slabArea";

it("is the rectangle: width over the whole height, area exactly (geometry)", () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 900 }), fc.integer({ min: 1, max: 300 }), (a, b) => {
      const [wide, thick] = [Math.max(a, b) + 10, Math.min(a, b)];
      const section = readSection(`flat ${wide}x${thick} mm`, "metric");
      const found = rectangleRun(section.outline!)!;
      const { run } = found;
      const spread = { columns: 1, spacing: 0, secant: 1, share: 1 };
      expect([found.width, found.height].map((n) => Number(n.toFixed(9)))).toEqual([wide, thick]);
      expect((run.times * slabArea(run.slab, spread)) / (wide * thick)).toBeCloseTo(1, 12);
      expect(run.stations.reduce((sum, s) => sum + s.travel, 0)).toBeCloseTo(thick, 9);
    }),
  );
});

it("has the numbers of the same bar as one of a bundle of one column, which the slabs give", () => {
  const [one, two] = ["flat 80x30 mm", "flat 80x30 mm bundle 2x1"].map((size) =>
    sectionProfile(readSection(size, "metric")),
  );
  expect([one!.maximumWidth, one!.longestContact, one!.maximumExtent, one!.meanWidth]).toEqual([
    two!.maximumWidth,
    two!.longestContact,
    two!.maximumExtent,
    two!.meanWidth,
  ]);
  expect(one!.height * 2).toBe(two!.height);
});

it.each(["flat 6x1 on edge", "round 7", "hex 2", "square 2 diamond", "tube 6x0.5", "box 4x4x0.25", "tee 4x4x1/2"])(
  "%s is none",
  (size) => {
    expect(rectangleRun(readSection(size, "inch").outline!)).toBeUndefined();
  },
);

it("every contact of a rectangle is its width, from the first depth to the last (geometry)", () => {
  const { run } = rectangleRun(readSection("flat 80x30 mm", "metric").outline!)!;
  const across = { contact: 80, extent: 80, longest: 80, shortest: 80 };
  expect([run.first, run.last]).toEqual([across, across]);
  expect(run.stations).toEqual([{ depth: 7.5, travel: 30, ...across }]);
  const profile = sectionProfile(readSection("flat 80x30 mm", "metric"));
  // Its area over its height, 2400 / 30.
  expect(profile.thinnest).toBeCloseTo(80, 9);
});

const corners = (own: Readonly<Record<number, { x?: number; y?: number; r?: number }>> = {}) =>
  (
    [
      [0, 0],
      [80, 0],
      [80, 30],
      [0, 30],
    ] as const
  ).map(([x, y], i) => ({ x, y, r: 0, ...own[i] }));

it("four sharp corners of which two and two are level are one; every other outline is none (geometry)", () => {
  expect(rectangleRun({ loops: [corners()] })).toMatchObject({ width: 80, height: 30 });
  const hole = [
    { x: 10, y: 10, r: 0 },
    { x: 20, y: 10, r: 0 },
    { x: 20, y: 20, r: 0 },
  ];
  const others = [
    [],
    [corners().slice(0, 3)],
    [[...corners(), { x: -5, y: 15, r: 0 }]],
    [corners(), hole],
    ...[0, 1, 2, 3].flatMap((i) => [0, 1, 2, 3].map((k) => [corners({ [i]: { r: 2 }, [k]: { r: 2 } })])),
    [corners({ 0: { y: 5 } })],
    [corners({ 1: { y: 5 } })],
    [corners({ 2: { y: 25 } })],
    [corners({ 3: { y: 25 } })],
    [corners({ 0: { x: 5 } })],
    [corners({ 1: { x: 75 } })],
    [corners({ 2: { x: 75 } })],
    [corners({ 3: { x: 5 } })],
    [corners({ 1: { x: 0 }, 2: { x: 0 } })],
    [corners({ 2: { y: 0 }, 3: { y: 0 } })],
    [corners({ 1: { x: -80 }, 2: { x: -80 } })],
    [corners({ 2: { y: -30 }, 3: { y: -30 } })],
  ];
  for (const loops of others) expect(rectangleRun({ loops }), JSON.stringify(loops)).toBeUndefined();
});
