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

it("a dash before a designation is no part of it", () => {
  expect(gradeSpans(lineOf("RD 3 - 4140"), new Set()).map(({ from, to, text }) => [from, to, text])).toEqual([
    [3, 3, "4140"],
  ]);
});

it("own names are designations, too", () => {
  expect(spans("RD 3 shop special", ["SHOPSPECIAL"])).toEqual(["shop special"]);
});

it.each(["super", "lean", "hyper"])("%s duplex is another steel than duplex, with a dash or without", (word) => {
  for (const text of [`${word} duplex`, `${word}-duplex`, `${word} - duplex`])
    expect(spans(`RD 3 ${text}`)).not.toContain("duplex");
});
it.each(["superb duplex", "unsuper duplex", "duplex", "round duplex", "super round duplex"])(
  "%s has duplex",
  (text) => {
    expect(spans(text)).toContain("duplex");
  },
);
it.each([
  ["316 L 2x2x1/4", ["316"]],
  ["316 L", ["316 L"]],
  ["17-4 PH", ["17-4 PH"]],
  ["310UC96", []],
  ["310 UC96", ["310"]],
  ["1.4301", ["1.4301"]],
  ["1,4301", ["1,4301"]],
  ["41", []],
  ["steel", []],
  ["hss", []],
  ["stainless", ["stainless"]],
  ["4140 (304)", ["4140", "304"]],
  ["4140 1018", ["4140", "1018"]],
])("%s: %j (common practice, no source)", (text, found) => {
  expect(spans(text)).toEqual(found);
});
it("a span says where it stands, and whether it is a grade", () => {
  expect(gradeSpans(lineOf("RD 3 brass 17-4 PH"), new Set())).toEqual([
    { from: 2, to: 2, text: "brass", strong: false },
    expect.objectContaining({ from: 3, text: "17-4 PH", strong: true }),
  ]);
  expect(gradeSpans(lineOf("RD 3 shop special"), new Set(["SHOPSPECIAL"]))).toEqual([
    { from: 2, to: 3, text: "shop special", strong: true },
  ]);
});
