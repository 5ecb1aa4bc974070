import { expect, it } from "vitest";
import { lineMinutes } from "../../src/cost/lineMinutes";

it("123 cycles of 2.7 min, 3 loads of 6, a quarter of a blade of 12 + 8 min (by hand): 350.1 and 5, 355.1 in all", () => {
  const found = lineMinutes({
    cycles: 123,
    cutMinutes: 2,
    handlingMinutes: 0.7,
    loads: 3,
    loadMinutes: 6,
    setupMinutes: 15,
    area: 1e6,
    price: 180,
    life: 4e6,
    changeMinutes: 12,
    breakInMinutes: 8,
  });
  expect(found.run).toBeCloseTo(350.1, 9);
  expect(found).toMatchObject({ perBlade: 20, blades: 0.25 });
  expect(found.sawing).toBeCloseTo(355.1, 9);
});
