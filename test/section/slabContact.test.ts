import { describe, expect, it } from "vitest";
import type { Edge } from "../../src/section/outlineEdges";
import { slabContact } from "../../src/section/slabContact";

const edge = (x: number): Edge => ({ top: 0, bottom: 10, x, slope: 0, centre: 0, r: 0, side: 0 });
const slab = (...xs: number[]) => ({ top: 0, bottom: 10, courses: [{ edges: xs.map(edge), drop: 0, shift: 0 }] });
const plain = { columns: 1, spacing: 100, secant: 1, share: 1 };

describe("slabContact (geometry; contacts under 0.5 mm apart are one: judgement)", () => {
  it("two walls are two contacts", () => {
    expect(slabContact(slab(0, 5, 15, 22), 5, plain)).toEqual({ contact: 12, extent: 22, longest: 7, shortest: 5 });
  });
  it("a gap of 0.4 mm joins them, one of 0.5 mm does not", () => {
    expect(slabContact(slab(0, 5, 5.4, 12.4), 5, plain)).toMatchObject({ contact: 12, longest: 12, shortest: 12 });
    expect(slabContact(slab(0, 5, 5.5, 12.5), 5, plain)).toMatchObject({ contact: 12, longest: 7, shortest: 5 });
  });
  it("columns repeat the bar, and bars that touch are one", () => {
    const three = { ...plain, columns: 3, spacing: 10 };
    expect(slabContact(slab(0, 10), 5, three)).toEqual({ contact: 30, extent: 30, longest: 30, shortest: 30 });
    expect(slabContact(slab(0, 9), 5, three)).toEqual({ contact: 27, extent: 29, longest: 9, shortest: 9 });
    // Walls of 2 in bars of 10: the inner ones touch in pairs.
    expect(slabContact(slab(0, 2, 8, 10), 5, three)).toEqual({ contact: 12, extent: 30, longest: 4, shortest: 2 });
  });
  it("a mitre lengthens everything, gaps too; the published share only the contacts", () => {
    expect(slabContact(slab(0, 5, 5.3, 10.3), 5, { ...plain, secant: 2, share: 1.1 })).toEqual({
      contact: expect.closeTo(22, 9),
      extent: expect.closeTo(20.6, 9),
      longest: expect.closeTo(11, 9),
      shortest: expect.closeTo(11, 9),
    });
  });
});
