import { expect, it } from "vitest";
import { outlineArea } from "../../src/section/outlineArea";
import { shapeOutline } from "../../src/section/shapeOutline";
import { rolledArea } from "../../src/size/rolledArea";
import type { BarShape } from "../../src/size/barShape";

const flanged = { depth: 200, width: 100, web: 6, flange: 10, root: 12, toe: 5 };
const shapes: readonly BarShape[] = [
  { kind: "beam", ...flanged, slope: 0 },
  { kind: "beam", ...flanged, slope: 0.1405 },
  { kind: "channel", ...flanged, slope: 0 },
  { kind: "channel", ...flanged, slope: 0.1 },
  { kind: "tee", ...flanged, slope: 0 },
  { kind: "angle", long: 80, short: 60, thickness: 8, root: 8, toe: 4 },
];

it.each(shapes)(
  "$kind, fall $slope: the closed form and the outline have the same area (geometry, two ways)",
  (shape) => {
    expect(rolledArea(shape)).toBeCloseTo(outlineArea(shapeOutline(shape)), 6);
  },
);

it("a square corner with a fillet of 10 mm holds (1 − π/4)·100 mm² (geometry)", () => {
  const bare: BarShape = { kind: "angle", long: 100, short: 100, thickness: 10, root: 0, toe: 0 };
  expect(rolledArea({ ...bare, root: 10 }) - rolledArea(bare)).toBeCloseTo((1 - Math.PI / 4) * 100, 9);
});

it("shapes of one dimension have none", () => {
  expect(rolledArea({ kind: "round", diameter: 10 })).toBe(0);
});
