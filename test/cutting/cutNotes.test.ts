import { expect, it } from "vitest";
import { cutNotes } from "../../src/cutting/cutNotes";
import { predict, work } from "./fixture";
import { said } from "./phrases";

const notes = (...args: Parameters<typeof predict>) =>
  said(cutNotes(predict(...args), work(args[0], args[1], args[2], args[3])));

it("says few teeth, thin chips and a saw that runs too fast, and nothing where nothing is to be said", () => {
  expect(notes("flat 6x1", "A36")).toBe("");
  expect(notes("tube 2x0.065", "A36")).toMatch(/^1\.\d teeth in the thinnest part: light feed\.$/);
  expect(notes("square 4", "304", "bi-metal", {}, "14/18")).toMatch(
    /^Caution: a thin chip, .* thou; this material work-hardens/,
  );
  expect(notes("square 12", "D2", "bi-metal", { sawCondition: "worn" }, "10/14")).toMatch(/^A thin chip/);
  expect(notes("flat 6x1", "304", "bi-metal", { minimumBandSpeed: 40_000 })).toMatch(
    /slowest band speed of this saw is above/,
  );
});

it("says where no published rate was found, until the shop has its own", () => {
  expect(notes("flat 6x1", "N07718")).toBe(
    "No published rate was found for nickel and cobalt alloys with bi-metal: time a cut of your own.",
  );
  expect(notes("flat 6x1", "N07718", "bi-metal", { rateFactor: 1.1 })).toBe("");
});

it("doubts a rate factor outside the published band", () => {
  expect(notes("flat 6x1", "A36", "bi-metal", { rateFactor: 2.4 })).toBe(
    "Rate factor 2.4 is outside the published band: check the log (minutes, sizes, units) before setting this feed.",
  );
  expect(notes("flat 6x1", "A36", "bi-metal", { rateFactor: 0.5 })).toMatch(/^Rate factor 0\.5 is outside/);
  expect(notes("flat 6x1", "A36", "bi-metal", { rateFactor: 1.6 })).toBe("");
});
