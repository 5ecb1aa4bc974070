import { describe, expect, it } from "vitest";
import { sizeParts } from "../../src/size/sizeParts";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const parts = (text: string) => sizeParts(sizeTokens(text));
const tags = (text: string) =>
  parts(text).numbers.flatMap(({ kind, text: written, tag }) =>
    kind === "number" ? [`${written}${tag === "" ? "" : `:${tag}`}`] : [],
  );

describe("sizeParts (common practice, no source)", () => {
  it.each([
    ["tube 6 od x 5 id", ["6:od", "5:id"]],
    ["tube od 6 x wall .5", ["6:od", ".5:wall"]],
    ["tube 2 wall .12", ["2", ".12:wall"]],
    ["tube 2 od .12 wall", ["2:od", ".12:wall"]],
    ["sq tube 2x2x.12w", ["2", "2", ".12:wall"]],
    ["wt6x25", ["6", "25"]],
    ["tube 6 od wall .12 wall", ["6:od", ".12:wall"]],
  ])("%s: tags", (text, expected) => {
    expect(tags(text)).toEqual(expected);
  });
  it.each([
    ["4 sch 40 pipe", "40"],
    ["pipe 4 sch 40s", "40s"],
    ["pipe 4 s40", "40"],
    ["pipe 4 sch std", "std"],
    ["pipe 4 xh", "xs"],
    ["round 4", undefined],
  ])("%s: schedule %s", (text, schedule) => {
    expect(parts(text).schedule).toBe(schedule);
  });
  it("flat beside another shape says how it lies", () => {
    expect(parts("flat 6x1 flat")).toMatchObject({ shapes: ["flat"], flat: true });
    expect(parts("flat bar 6x1")).toMatchObject({ shapes: ["flat", "bar"], flat: false });
  });
  it("cold is kept for hollow sections; finish words are read over", () => {
    expect(parts("shs cold formed erw 100")).toMatchObject({ shapes: ["shs"], cold: true });
    expect(parts("round tgp hr 2")).toMatchObject({ shapes: ["round"], cold: false });
  });
  it.each([
    [
      "4140 round 3 x 2",
      '"4140" before "round" looks like a grade; the material goes into its own cell, the size here is only "round 3x2"',
    ],
    [
      "stainless round 3",
      '"stainless" is a material; it goes into its own cell, the size says only shape and dimensions',
    ],
    ["en8 round", 'unknown word "en"'],
    ["a36 round 3", 'do not know "a36"; if it is a grade'],
    ["roud 7", 'did you mean "round"?'],
    ["constructor 7", 'unknown word "constructor"'],
    ["gauge 11", "gauge sizes are not read"],
    ["pipe 4 sch", "needs its number"],
  ])("%s is refused: %s", (text, part) => {
    expect(refusal(() => parts(text)).sentence).toContain(part);
  });
});

it.each([
  ["mitr 30", 'unknown word "mitr"; did you mean "mitre"?'],
  ["bundel 3x4", 'unknown word "bundel"; did you mean "bundle"?'],
  ["nestd", 'unknown word "nestd"; did you mean "nested"?'],
  ["schedul 40", 'unknown word "schedul"; did you mean "schedule"?'],
  ["uprigt", 'unknown word "uprigt"; did you mean "upright"?'],
  ["diamnd", 'unknown word "diamnd"; did you mean "diamond"?'],
  ["qqqqqqqq", 'unknown word "qqqqqqqq"'],
  ["pipe 4 sch", '"sch" needs its number, for example Sch 40'],
  ["pipe 4 schedule", '"schedule" needs its number, for example Sch 40'],
  ["pipe 4 sched", '"sched" needs its number, for example Sch 40'],
  ["gauge 11", "gauge sizes are not read (several gauge tables exist); give the wall in inches or mm"],
  ["a36 round 3", 'do not know "a36"; if it is a grade, the material goes into its own cell'],
  [
    "410 flat 3 x 2",
    '"410" before "flat" looks like a grade; the material goes into its own cell, the size here is only "flat 3x2"',
  ],
])("%s is refused whole: %s", (text, sentence) => {
  expect(refusal(() => parts(text))).toEqual({ reason: "invalid", parameter: "section", sentence });
});
it.each(["41 round 3", "41400 round 3", "4140 mm round 3", "4140 round", "4140 3 round"])(
  "%s: no grade before its shape",
  (text) => {
    expect(() => parts(text)).not.toThrow();
  },
);
it.each([
  ["flat round 2", ["round"], true],
  ["round flat 2", ["round"], true],
  ["flat flat 6x1", ["flat"], true],
  ["bar flat 6x1", ["bar", "flat"], false],
])("%s: shapes %j, lying flat %s", (text, shapes, flat) => {
  expect(parts(text)).toMatchObject({ shapes, flat });
});
it.each(["cold", "cf", "cw"])("%s is cold formed", (word) => {
  expect(parts(`shs ${word} 100`).cold).toBe(true);
});
it("a letter s behind the schedule belongs to it; s alone is a schedule of a pipe only", () => {
  expect(parts("pipe 4 sch 10 s")).toMatchObject({ schedule: "10s" });
  expect(parts("pipe 4 s 10")).toMatchObject({ schedule: "10" });
});
