import { describe, expect, it } from "vitest";
import { layBar } from "../../src/section/layBar";
import { outlineEdges } from "../../src/section/outlineEdges";
import { rolledRow } from "../../src/size/rolledRow";
import { rolledShape } from "../../src/size/rolledShape";
import { refusal } from "./fixture";

const beam = rolledShape(rolledRow("HEB", "200")!).shape;
const angle = rolledShape(rolledRow("L", "6x4x0.5")!).shape;
const height = (shape: typeof beam, lie: string | undefined, turn = 0) => {
  const edges = outlineEdges(layBar(shape, "bar", lie, turn).outline);
  return Math.max(...edges.map(({ bottom }) => bottom)) - Math.min(...edges.map(({ top }) => top));
};

describe("layBar (default orientations: common practice, no source; heights: geometry)", () => {
  it.each([
    ["flat", { kind: "flat", width: 60, thickness: 10 }, undefined, 10],
    ["flat on edge", { kind: "flat", width: 60, thickness: 10 }, "edge", 60],
    ["square", { kind: "square", across: 50 }, undefined, 50],
    ["square on a corner", { kind: "square", across: 50 }, "diamond", 50 * Math.SQRT2],
    ["hexagon", { kind: "hexagon", across: 30 }, undefined, 30],
    ["hexagon point up", { kind: "hexagon", across: 30 }, "diamond", 60 / Math.sqrt(3)],
    ["octagon point up", { kind: "octagon", across: 30 }, "diamond", 30 / Math.cos(Math.PI / 8)],
    ["box", { kind: "box", width: 60, height: 40, wall: 4, outer: 6, inner: 4 }, undefined, 40],
    [
      "channel",
      { kind: "channel", depth: 200, width: 80, web: 6, flange: 11, slope: 0, root: 13, toe: 0 },
      undefined,
      80,
    ],
    [
      "channel upright",
      { kind: "channel", depth: 200, width: 80, web: 6, flange: 11, slope: 0, root: 13, toe: 0 },
      "upright",
      200,
    ],
    ["tee", { kind: "tee", depth: 150, width: 200, web: 9, flange: 15, slope: 0, root: 18, toe: 0 }, "flange up", 150],
  ] as const)("%s", (_name, shape, lie, expected) => {
    expect(height(shape, lie)).toBeCloseTo(expected, 9);
  });
  it("an unequal angle heel up stands on both toes (6x4x1/2: 3.5479 in, by a separate program)", () => {
    expect(height(angle, undefined) / 25.4).toBeCloseTo(3.5479, 3);
    expect(height(angle, "heel down")).toBeCloseTo(height(angle, "heel up"), 9);
    expect(height(angle, "leg flat")).toBeCloseTo(4 * 25.4, 9);
  });
  it("a further turn comes on top", () => {
    expect(height(beam, "web up", 90)).toBeCloseTo(height(beam, "web flat"), 9);
  });
  it("a round is not turned", () => {
    expect(layBar({ kind: "round", diameter: 10 }, "round", undefined, 33)).toEqual(
      layBar({ kind: "round", diameter: 10 }, "round", undefined, 0),
    );
  });
  it.each([
    [{ kind: "round", diameter: 10 }, "flat", "it lies the same every way"],
    [{ kind: "flat", width: 60, thickness: 10 }, "heel up", "it lies on flat, on edge"],
    [{ kind: "box", width: 60, height: 40, wall: 4, outer: 6, inner: 4 }, "diamond", "does not fit"],
  ] as const)("%j %s is refused: %s", (shape, lie, part) => {
    expect(refusal(() => layBar(shape, "bar", lie, 0)).sentence).toContain(part);
  });
});

it("the name that is printed of a lie is a word that asks for the same lie (definition)", () => {
  const angleOf = { kind: "angle", long: 60, short: 40, thickness: 5, root: 0, toe: 0 } as const;
  const profile = { depth: 200, width: 80, web: 6, flange: 11, slope: 0, root: 13, toe: 0 } as const;
  const box = { kind: "box", width: 40, height: 40, wall: 4, outer: 6, inner: 4 } as const;
  for (const [shape, names] of [
    [beam, ["web flat", "web up"]],
    [{ kind: "channel", ...profile }, ["toes down", "toes up", "web up"]],
    [{ kind: "tee", ...profile }, ["flange down", "flange up"]],
    [angleOf, ["heel up", "heel down", "leg flat"]],
    [box, ["diamond"]],
  ] as const) {
    for (const name of names) expect(layBar(shape, "bar", name, 0).lie, name).toBe(name);
    expect(refusal(() => layBar(shape, "bar", "nowhere", 0)).sentence).toContain(names.join(", "));
  }
  expect(layBar(beam, "bar", "upright", 0).lie).toBe("web up");
  expect(layBar(beam, "bar", "flanges up", 0).lie).toBe("web flat");
  expect(layBar(beam, "bar", "flat", 0).lie).toBe("web flat");
});
