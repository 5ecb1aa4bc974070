import { describe, expect, it } from "vitest";
import { outlineArea } from "../../src/section/outlineArea";
import { shapeOutline } from "../../src/section/shapeOutline";

const area = (shape: Parameters<typeof shapeOutline>[0]) => outlineArea(shapeOutline(shape));
const K = 1 - Math.PI / 4; // void of a unit right-angle fillet
const fillet = (turn: number) => 1 / Math.tan((Math.PI - turn) / 2) - turn / 2; // f(θ) = cot(θ/2) − (π − θ)/2 with θ = π − turn

describe("outlineArea against closed forms (geometry; EN 10365, EN 10056-1, EN 10210-2 for the shapes)", () => {
  it.each([
    ["round", area({ kind: "round", diameter: 80 }), (Math.PI * 80 ** 2) / 4],
    ["square", area({ kind: "square", across: 40 }), 1600],
    ["flat", area({ kind: "flat", width: 60, thickness: 8 }), 480],
    ["hexagon", area({ kind: "hexagon", across: 36 }), (Math.sqrt(3) / 2) * 36 ** 2],
    ["octagon", area({ kind: "octagon", across: 50 }), 2 * (Math.SQRT2 - 1) * 50 ** 2],
    ["tube", area({ kind: "tube", diameter: 114.3, wall: 5 }), Math.PI * 5 * 109.3],
    [
      "box",
      area({ kind: "box", width: 150, height: 100, wall: 8, outer: 12, inner: 8 }),
      2 * 8 * (250 - 16) - (4 - Math.PI) * (144 - 64),
    ],
    [
      "angle",
      area({ kind: "angle", long: 100, short: 75, thickness: 8, root: 10, toe: 5 }),
      8 * (175 - 8) + K * (100 - 50),
    ],
    [
      "beam",
      area({ kind: "beam", depth: 200, width: 100, web: 5.6, flange: 8.5, slope: 0, root: 12, toe: 0 }),
      2 * 100 * 8.5 + 183 * 5.6 + 4 * K * 144,
    ],
    [
      "channel",
      area({ kind: "channel", depth: 200, width: 80, web: 6, flange: 11, slope: 0, root: 13, toe: 0 }),
      2 * 80 * 11 + 178 * 6 + 2 * K * 169,
    ],
    [
      "tee",
      area({ kind: "tee", depth: 150, width: 200, web: 9, flange: 15, slope: 0, root: 18, toe: 0 }),
      200 * 15 + 135 * 9 + 2 * K * 324,
    ],
    [
      "tapered beam",
      area({ kind: "beam", depth: 200, width: 90, web: 7.5, flange: 11.0375, slope: 0.14, root: 7.5, toe: 4.5 }),
      200 * 7.5 + 2 * (90 - 7.5) * 11.0375 + 4 * fillet(Math.PI / 2 - Math.atan(0.14)) * (7.5 ** 2 - 4.5 ** 2),
    ],
    [
      "tapered channel",
      area({ kind: "channel", depth: 200, width: 75, web: 8.5, flange: 11.16, slope: 0.08, root: 11.5, toe: 6 }),
      200 * 8.5 + 2 * (75 - 8.5) * 11.16 + 2 * fillet(Math.PI / 2 - Math.atan(0.08)) * (11.5 ** 2 - 6 ** 2),
    ],
  ])("%s", (_name, found, expected) => {
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-12);
  });
});
