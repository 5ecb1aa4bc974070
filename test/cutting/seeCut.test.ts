import { expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { seeCut } from "../../src/cutting/seeCut";
import { work } from "./fixture";

const seen = (grade: string) =>
  seeCut({ ...work("square 2", grade, "bi-metal"), pitch: readPitch("4/6"), bandSpeed: 80_000, minutes: 0.5 });

it("a 2 in square in half a minute: chip = area / minutes · pitch / (speed · width), by hand", () => {
  expect(seen("A36").chip).toBeCloseTo((50.8 * 50.8) / 0.5 / ((80_000 * 50.8) / 5.08), 12);
  expect(seen("A36").known.predicted).toBeDefined();
});

it("where nothing can be predicted, what is known is only what runs", () => {
  expect(seen("tantalum").known).toMatchObject({ predicted: undefined, best: undefined, bandSpeedToSet: undefined });
});
