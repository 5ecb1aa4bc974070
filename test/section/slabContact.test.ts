import { describe, expect, it } from "vitest";
import type { Edge } from "../../src/section/outlineEdges";
import { slabContact } from "../../src/section/slabContact";

const edge = (x: number): Edge => ({ top: 0, bottom: 10, x, slope: 0, centre: 0, r: 0, side: 0 });
const slab = (...xs: number[]) => ({ top: 0, bottom: 10, courses: [{ edges: xs.map(edge), drop: 0, shift: 0 }] });
const plain = { columns: 1, spacing: 100, secant: 1, share: 1 };

describe("slabContact (geometry; gap of 20 mm: judgement)", () => {
  it("two walls close together are joined", () => {
    expect(slabContact(slab(0, 5, 15, 22), 5, plain)).toEqual({
      contact: 12,
      extent: 22,
      joined: 12,
      longest: 7,
      shortest: 5,
    });
  });
  it("two walls 20 mm apart are not", () => {
    expect(slabContact(slab(0, 5, 25, 32), 5, plain).joined).toBe(7);
  });
  it("columns repeat the bar; touching bars count one by one, but as one for chips", () => {
    expect(slabContact(slab(0, 10), 5, { ...plain, columns: 3, spacing: 10 })).toEqual({
      contact: 30,
      extent: 30,
      joined: 30,
      longest: 10,
      shortest: 10,
    });
  });
  it("a mitre lengthens everything, gaps too; the published share only the contacts", () => {
    expect(slabContact(slab(0, 5, 20, 25), 5, { ...plain, secant: 2, share: 1.1 })).toEqual({
      contact: expect.closeTo(22, 9),
      extent: 50,
      joined: expect.closeTo(11, 9),
      longest: expect.closeTo(11, 9),
      shortest: expect.closeTo(11, 9),
    });
  });
});
