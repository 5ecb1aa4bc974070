import { expect, it } from "vitest";
import { spoiledText } from "../../src/size/spoiledText";

it.each([
  ["4-mar", "date"],
  ["mar-4", "date"],
  ["4 march 2025", "date"],
  ["mar 4", "date"],
  ["3/4/2025", "date"],
  ["04.03.2025", "date"],
  ["2025-03-04", "date"],
  ["2025-03-04 00:00:00", "date"],
  ["2-oct", "date"],
  ["oct-2", "date"],
  ["oct 2", undefined],
  ["3/4", undefined],
  ["7-1/2", undefined],
  ["2-1", undefined],
  ["round 3", undefined],
  ["#n/a", "error"],
  ["#div/0!", "error"],
  ["#4", undefined],
])("%s: %s (common practice, no source)", (text, what) => {
  expect(spoiledText(text)).toBe(what);
});
