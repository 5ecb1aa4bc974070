import { describe, expect, it } from "vitest";
import { shapeOutline } from "../../src/section/shapeOutline";

describe("shapeOutline (nominal outlines: EN 10365, ASTM A6/A6M, EN 10210-2)", () => {
  it("hollow shapes have two loops that turn opposite ways", () => {
    const turns = shapeOutline({ kind: "box", width: 60, height: 40, wall: 4, outer: 6, inner: 4 }).loops.map(
      (loop) => {
        const [a, b, c] = loop;
        return Math.sign((b!.x - a!.x) * (c!.y - b!.y) - (b!.y - a!.y) * (c!.x - b!.x));
      },
    );
    expect(turns).toEqual([1, -1]);
  });
  it("a round is a square with corners of half its side", () => {
    expect(shapeOutline({ kind: "round", diameter: 10 }).loops[0]).toEqual(
      [0, 10, 10, 0].map((x, i) => ({ x, y: i < 2 ? 0 : 10, r: 5 })),
    );
  });
  it("a tapered flange is thinner at its tip than at its foot by slope × outstand", () => {
    const [loop] = shapeOutline({
      kind: "channel",
      depth: 200,
      width: 75,
      web: 8.5,
      flange: 11,
      slope: 0.08,
      root: 11.5,
      toe: 6,
    }).loops;
    const [tip, foot] = [200 - loop![3]!.x, 200 - loop![4]!.x];
    expect(foot - tip).toBeCloseTo(0.08 * (75 - 8.5), 12);
    expect((foot + tip) / 2).toBeCloseTo(11, 12);
  });
  it("a toe radius that does not fit the tip is cut", () => {
    const [loop] = shapeOutline({
      kind: "channel",
      depth: 152,
      width: 89,
      web: 8.6,
      flange: 9.8,
      slope: 1 / 6,
      root: 11,
      toe: 5,
    }).loops;
    const tip = 9.8 - (89 - 8.6) / 12;
    expect(loop![3]!.r).toBeCloseTo(tip / Math.tan((Math.PI / 2 - Math.atan(1 / 6)) / 2), 12);
  });
});
