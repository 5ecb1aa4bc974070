import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { platedBar } from "../../src/size/platedBar";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

it.each([
  ["h 200x100x6x8 mm", 2 * 100 * 8 + (200 - 16) * 6],
  ["u 40x20x3 mm", 2 * 20 * 3 + (40 - 6) * 3],
])("%s has the area of its plates (geometry)", (size, area) => {
  expect(readSection(size, "metric").area).toBeCloseTo(area, 6);
});
it("too thick a plate is refused; fewer numbers are no such section (definition)", () => {
  expect(() => readSection("h 200x100x60x120 mm", "metric")).toThrow();
  // A channel's web as thick as its flange is wide is a bar; one a hair thinner is a channel.
  expect(() => readSection("u 400x20x20 mm", "metric")).toThrow();
  expect(readSection("u 400x20x19.9 mm", "metric").area).toBeCloseTo(2 * 20 * 19.9 + (400 - 39.8) * 19.9, 6);
  expect(platedBar("h", [], "metric")).toBeUndefined();
});

const numbers = (text: string) => sizeTokens(text).filter(({ kind }) => kind === "number");

it("says its dimensions, and that its corners are sharp", () => {
  expect(platedBar("h", numbers("200x100x6x8"), "metric")).toEqual({
    text: "h 200 mm x 100 mm x 6 mm x 8 mm",
    notes: ["millimetres assumed", "by its dimensions, with sharp corners"],
    shape: { kind: "beam", depth: 200, width: 100, web: 6, flange: 8, slope: 0, root: 0, toe: 0 },
  });
  for (const word of ["u", "ch", "channel"])
    expect(platedBar(word, numbers("40x20x3"), "metric")).toMatchObject({
      text: "u 40 mm x 20 mm x 3 mm",
      shape: { kind: "channel", web: 3, flange: 3 },
    });
});
it("a flange or web of half the section is refused, a hair less is not (geometry)", () => {
  const sentence = (name: string) =>
    `${name} is written depth x width x web x flange, a channel depth x flange x thickness`;
  for (const [word, size, name] of [
    ["h", "200x100x6x100", "H"],
    ["h", "200x100x50x8", "H"],
    ["u", "40x30x20", "U"],
  ] as const)
    expect(refusal(() => platedBar(word, numbers(size), "metric"))).toEqual({
      reason: "invalid",
      parameter: "section",
      sentence: sentence(name),
    });
  expect(platedBar("h", numbers("200x100x49.9x99.9"), "metric")).toBeDefined();
});
it("a beam takes four numbers and a channel three", () => {
  expect(platedBar("h", numbers("200x100x6"), "metric")).toBeUndefined();
  expect(platedBar("u", numbers("200x100x6x8"), "metric")).toBeUndefined();
});
