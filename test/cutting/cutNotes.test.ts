import { expect, it } from "vitest";
import { cutNotes } from "../../src/cutting/cutNotes";
import { predict } from "./fixture";
import { said } from "./phrases";

it("says few teeth, thin chips and a saw that runs too fast, and nothing where nothing is to be said", () => {
  expect(said(cutNotes(predict("flat 6x1", "A36")))).toBe("");
  expect(said(cutNotes(predict("tube 2x0.065", "A36")))).toMatch(/0\.9\d of a tooth in the wall: light feed/);
  expect(said(cutNotes(predict("box 8x4x3/8", "A36")))).toMatch(/Two teeth, not three/);
  expect(said(cutNotes(predict("W24x68", "A36")))).toMatch(/Thin chips, under 0\.098425 thou, over \d+ %/);
  expect(said(cutNotes(predict("W24x68", "304")))).toMatch(/Caution: chips under .* work-hardens/);
  expect(said(cutNotes(predict("flat 6x1", "304", "bi-metal", { minimumBandSpeed: 40_000 })))).toMatch(
    /slowest band speed of this saw is above/,
  );
});
