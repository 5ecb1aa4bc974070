import { describe, expect, it } from "vitest";
import { edgeX } from "../../src/section/edgeX";
import { outlineEdges } from "../../src/section/outlineEdges";
import { shapeOutline } from "../../src/section/shapeOutline";
import { turnOutline } from "../../src/section/turnOutline";

describe("outlineEdges (geometry)", () => {
  it("a rectangle has its two upright sides; level ones are left out", () => {
    expect(outlineEdges(shapeOutline({ kind: "flat", width: 60, thickness: 8 }))).toHaveLength(2);
  });
  it("a round has four quarters, each on one side of its centre", () => {
    const edges = outlineEdges(shapeOutline({ kind: "round", diameter: 10 }));
    expect(
      edges.map(({ top, bottom, side }) => [Math.abs(Number(top.toFixed(9))), Number(bottom.toFixed(9)), side]).sort(),
    ).toEqual([
      [0, 5, -1],
      [0, 5, 1],
      [5, 10, -1],
      [5, 10, 1],
    ]);
  });
  it("arcs of a turned box are cut at their extremes, so that no edge goes beyond its ends", () => {
    for (const edge of outlineEdges(
      turnOutline(shapeOutline({ kind: "box", width: 100, height: 60, wall: 5, outer: 10, inner: 5 }), 37),
    )) {
      const xs = [0, 0.25, 0.5, 0.75, 1].map((at) => edgeX(edge, edge.top + at * (edge.bottom - edge.top)));
      const rises = xs.slice(1).map((x, i) => Math.sign(x - xs[i]!));
      expect(new Set(rises).size).toBe(1);
      expect(edge.bottom).toBeGreaterThan(edge.top);
    }
  });
});
