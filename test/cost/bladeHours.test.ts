import { describe, expect, it } from "vitest";
import { bladeHours } from "../../src/cost/bladeHours";
import { bladeA } from "./fixture";

describe("saw hours per area", () => {
  it("P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7 (via a published companion, read; it marks an error in the book): 2 min cut, 10 min change, 240 min life: 0.083 min of change a cycle", () => {
    // A cut of 2 min at rate 1 is area 2; a life of 240 min is area 240.
    const change =
      60 *
      2 *
      (bladeHours({ blade: { life: 240, rate: 1 }, change: 10 }) -
        bladeHours({ blade: { life: 240, rate: 1 }, change: 0 }));
    expect(change).toBeCloseTo(0.08333333333333333, 9);
  });

  it("Sharma Ex. 4.8 (companion read, prints 1.67): 360 min cut, 20 min change, 4320 min life", () => {
    const change =
      60 *
      360 *
      (bladeHours({ blade: { life: 4320, rate: 1 }, change: 20 }) -
        bladeHours({ blade: { life: 4320, rate: 1 }, change: 0 }));
    expect(change).toBeCloseTo(1.6666666666666667, 9);
  });

  it("are the cutting alone where a change takes no time (definition)", () => {
    expect(bladeHours({ blade: bladeA, change: 0 })).toBe(1 / 2400);
  });
});
