import fc from "fast-check";
import { expect, it } from "vitest";
import { chipAtForce } from "../../src/cutting/chipAtForce";
import { cuttingForce } from "../../src/cutting/cuttingForce";

it("is the inverse of the cutting force, on both sides of 5 µm", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -4, max: -1, noNaN: true }),
      fc.double({ min: 0.5, max: 60, noNaN: true }),
      fc.double({ min: 0.1, max: 0.3, noNaN: true }),
      (log, teeth, mc) => {
        const chip = 10 ** log;
        const law = { kc11: 2150, mc, kerf: 3 };
        expect(
          Math.abs(chipAtForce({ force: cuttingForce({ chip, teeth, law }), teeth, law }) / chip - 1),
        ).toBeLessThan(1e-12);
      },
    ),
    { seed: 3 },
  );
});
