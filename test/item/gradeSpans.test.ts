import { expect, it } from "vitest";
import { gradeSpans } from "../../src/item/gradeSpans";
import { lineOf } from "./line";

const spans = (text: string, own: readonly string[] = []) =>
  gradeSpans(lineOf(text), new Set(own)).map((span) => span.text);

it.each([
  ["4140 RD 3", ["4140"]],
  ["A500 GR B 2x2x1/4", ["A500 GR B"]],
  ["17-4 PH RD", ["17-4 PH"]],
  ["17 4 RD", []],
  ["RD 3 x 1018", []],
  ["304 L 2x2x1/4", ["304"]],
  ["316 L RD 1", ["316 L"]],
  ["Rund 80 a 3000", []],
  ["hot rolled round 3", []],
  ["HSS 4x4x1/4", []],
  ["brass hex 1", ["brass"]],
  ["1020 tube 2x0.25 4130", ["1020", "4130"]],
  ["1018 mm", []],
])("%s: %j (common practice, no source)", (text, found) => {
  expect(spans(text)).toEqual(found);
});

it("own names are designations, too", () => {
  expect(spans("RD 3 shop special", ["SHOPSPECIAL"])).toEqual(["shop special"]);
});
