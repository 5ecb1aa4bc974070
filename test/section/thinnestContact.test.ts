import { expect, it } from "vitest";
import { thinnestContact } from "../../src/section/thinnestContact";

const contact = (shortest: number) => ({ contact: shortest, extent: shortest, longest: shortest, shortest });
const level = (shortest: number, height: number, top: number, times = 1) => ({
  slab: { top, bottom: top + height, courses: [] },
  times,
  above: 0,
  factor: 1,
  stations: [{ depth: top + height / 2, travel: height * times, ...contact(shortest) }],
  first: contact(shortest),
  last: contact(shortest),
});

it("level slabs: the width that a fifth of the way stays below (definition)", () => {
  expect(thinnestContact([level(5, 10, 0), level(50, 90, 10)], 0.2)).toBeCloseTo(50, 6);
  expect(thinnestContact([level(50, 70, 0), level(5, 30, 70)], 0.2)).toBeCloseTo(5, 6);
  expect(thinnestContact([level(5, 10, 0, 3), level(50, 70, 30)], 0.2)).toBeCloseTo(5, 6);
});
it("one width all the way is that width, to the last digit", () => {
  expect(thinnestContact([level(5.1, 10, 0), level(5.1, 90, 10)], 0.2)).toBe(5.1);
});
it("a wedge from 0 to 100: 20 (geometry)", () => {
  const wedge = { ...level(50, 100, 0), first: contact(0), last: contact(100) };
  expect(thinnestContact([wedge], 0.2)).toBeGreaterThan(19);
  expect(thinnestContact([wedge], 0.2)).toBeLessThan(21);
});

it("a slab that lies lower has the same contacts (geometry)", () => {
  const wedge = (above: number, top: number) => ({
    ...level(50, 100, 0),
    above,
    slab: { top, bottom: top + 100, courses: [] },
    stations: [{ depth: above + top + 30, travel: 100, ...contact(45) }],
    first: contact(0),
    last: contact(80),
  });
  const here = thinnestContact([wedge(0, 0)], 0.2);
  // 45 of 30: straight up to there, so a fifth of the way ends near 30.
  expect(here).toBeGreaterThan(28);
  expect(here).toBeLessThan(32);
  for (const [above, top] of [
    [100, 0],
    [0, 40],
    [100, 40],
  ] as const)
    expect(thinnestContact([wedge(above, top)], 0.2)).toBeCloseTo(here, 9);
});
