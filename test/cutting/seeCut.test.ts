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

it("a number in the reason for no prediction has three digits", () => {
  const { result } = seeCut({
    ...work("square 2", "Ti-6Al-4V", "bi-metal", { minimumBandSpeed: 200_000 }),
    pitch: readPitch("4/6"),
    bandSpeed: 80_000,
    minutes: 0.5,
  });
  expect(result.verdict).toMatchObject({
    template: "The slowest band speed of this saw, {slowest}, is above the fastest for {group}, {top}",
    facts: { slowest: { number: 200_000, quantity: "bandSpeed", digits: 3 }, group: "titanium alloys" },
  });
});
