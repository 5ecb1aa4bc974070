import { expect, it } from "vitest";
import { outlineArea } from "../../src/section/outlineArea";
import { shapeOutline } from "../../src/section/shapeOutline";
import { turnOutline } from "../../src/section/turnOutline";

const flat = shapeOutline({ kind: "flat", width: 60, thickness: 8 });

it.each([0, 90, 180, 270, 360, 450, -90])("a turn by %d° gives whole numbers", (degrees) => {
  for (const { x, y } of turnOutline(flat, degrees).loops[0]!)
    expect([Math.abs(x), Math.abs(y)].every((v) => [0, 8, 60].includes(v))).toBe(true);
});
it("30° (geometry): height b sin φ + t cos φ, same area", () => {
  const turned = turnOutline(flat, 30);
  const ys = turned.loops[0]!.map(({ y }) => y);
  expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(30 + 8 * Math.cos(Math.PI / 6), 12);
  expect(outlineArea(turned)).toBeCloseTo(480, 9);
});
