import { describe, expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { sectionStack } from "../../src/section/sectionStack";
import { slabContact } from "../../src/section/slabContact";
import { fixture, refusal } from "./fixture";

const stack = (text: string) => sectionStack(readSection(text, "inch"));

describe("sectionStack (geometry)", () => {
  it("a box has breaks at its walls and corner radii; its lower half is the mirror image of the upper", () => {
    const [layer] = stack("box 100 mm x 60 mm x 5 mm").layers;
    expect(layer!.slabs.map(({ bottom }) => Number(bottom.toFixed(9)))).toEqual([5, 7.5, 10, 30]);
    expect(layer).toMatchObject({ times: 2, period: 30, mirrored: true });
  });
  it("mid height of a round is a break", () => {
    expect(stack("round 100 mm").layers[0]!.slabs[0]!.bottom).toBe(50);
  });
  it("plain rows repeat one bar, nested ones have a first part, a repeated one and a last", () => {
    expect(stack("round 50 mm bundle 4x2").layers.map(({ times }) => times)).toEqual([8]); // halves
    expect(
      stack("angle 50 mm x 50 mm x 5 mm bundle 4x2").layers.map(({ times, mirrored }) => [times, mirrored]),
    ).toEqual([[4, false]]);
    const nested = stack("round 50 mm bundle 4x2 nested");
    expect(nested.layers.map(({ times }) => times)).toEqual([1, 3, 1]);
    expect(nested.layers.reduce((sum, { times, period }) => sum + times * period, 0)).toBeCloseTo(nested.height, 9);
  });
  it("every slab has two and two edges", () => {
    for (const text of [
      "W12x50 rot 17",
      "L6X4X1/2",
      "IPN 200 web up",
      "box 100 mm x 60 mm x 5 mm rot 33",
      "round 50 mm bundle 3x3 nested",
    ]) {
      for (const { slabs } of stack(text).layers)
        for (const { courses } of slabs) for (const { edges } of courses) expect(edges.length % 2).toBe(0);
    }
  });
  it("an area alone is refused", () => {
    expect(refusal(() => stack("area 5")).sentence).toContain("no shape");
  });
});

/** Tanh-sinh rule: takes square roots at both ends, and shares nothing with the code under test. */
function integral(f: (y: number) => number, from: number, to: number): number {
  const [half, step] = [24, 3.1 / 24];
  let sum = 0;
  for (let k = -half; k <= half; k++) {
    const u = (Math.PI / 2) * Math.sinh(k * step);
    sum +=
      (f((from + to) / 2 + ((to - from) / 2) * Math.tanh(u)) * ((Math.PI / 2) * Math.cosh(k * step))) /
      Math.cosh(u) ** 2;
  }
  return (sum * step * (to - from)) / 2;
}

it("the integral of the width over the height is the area to 1e-9, for every row of every table and some turned ones", () => {
  const sizes = [
    ...fixture("rolled.csv").map(([, , designation]) => designation!),
    ...fixture("hollow.csv").map(([, , , size]) => size!),
    ...fixture("pipes.csv").map(([nps, schedule]) => `NPS ${nps} Sch ${schedule}`),
  ];
  const turned = [
    "W12x50 rot 30",
    "C8X11.5 web up",
    "UPN 200 rot 77",
    "L6X4X1/2 rot 10",
    "box 100 mm x 60 mm x 5 mm rot 33",
    "hex 30 mm rot 7",
    "round 20 mm bundle 5x6 nested",
  ];
  for (const size of [...sizes, ...turned]) {
    const section = readSection(size, "inch");
    const { layers, spread } = sectionStack(section);
    let area = 0;
    for (const { times, slabs } of layers)
      for (const slab of slabs)
        area += times * integral((y) => slabContact(slab, y, spread).contact, slab.top, slab.bottom);
    expect(Math.abs(area / section.area - 1), size).toBeLessThan(1e-9);
  }
});
