import { expect, it } from "vitest";
import { lineUnits } from "../../src/item/lineUnits";
import { openLine } from "../../src/item/openLine";

it.each([
  ["round 50 mm x 300", "metric", false, undefined],
  ['round 2" x 300', "inch", false, undefined],
  ['round 2" x 300 mm', undefined, true, undefined],
  ["Rundstahl 50", undefined, false, "metric"],
  ["round 50 1.4301", undefined, false, "metric"],
  ["round 1-1/2", undefined, false, "inch"],
  ["W12x50 x 20 ft", undefined, false, "inch"],
  ["HEB 200", undefined, false, "metric"],
  ["round 5 cm", "metric", false, undefined],
  ["round 5 in", "inch", false, undefined],
  ["mm round 50", undefined, false, undefined],
  ["pipe 4 std x 6 m", undefined, false, undefined],
  ["round 50 x 6 m", undefined, false, "metric"],
  ["round 50 x 6 ft", undefined, false, "inch"],
  ["round 50 x 6'", undefined, false, "inch"],
  ["pipe 4 std", undefined, false, "inch"],
  ["round 50 1,4301", undefined, false, "metric"],
  ["round 50 S355J2", undefined, false, "metric"],
  ["round 50", undefined, false, undefined],
])("%s: written %s, both %s, its words %s (common practice, no source)", (line, written, mixed, hinted) => {
  expect(lineUnits(openLine(line))).toEqual({ written, mixed, hinted });
});
