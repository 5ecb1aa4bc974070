import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { takeSize } from "../../src/item/takeSize";
import { sentence } from "./fixture";
import { lineOf } from "./line";

const open = { length: true, quantity: true };

it.each([
  ["round 3", "round 3 in", undefined, undefined],
  ["round 3 x 12", "round 3 in", "12", undefined],
  [`round 3 x 12"`, "round 3 in", `12 "`, undefined],
  ['W12x50 240"', "W12X50", `240 "`, undefined],
  ["2 W12x50", "W12X50", undefined, 2],
  ["2 flat 6x1x12", "flat 6 in x 1 in", "12", 2],
  ["3.5 (3-1/2) round", "round 3.5 in", undefined, undefined],
  ["round 3 bundle 2x3", "round 3 in bundle 2x3", undefined, undefined],
])("%s: %s, length %s, quantity %s (common practice, no source)", (text, size, length, quantity) => {
  const read = takeSize(lineOf(text), open);
  expect(read.section).toMatchObject({ text: size });
  expect(read.length?.text).toBe(length);
  expect(read.quantity).toBe(quantity);
});

it.each([
  ["round 3 12", "round 12 in or round 3 in"],
  ["flat 6x1x3", "which of the three"],
  ["half round 2", '"half" names a shape'],
  ["ruond 3", '"ruond"'],
  ["W12x50 7", "7 is neither"],
])("%s is refused: %s", (text, part) => {
  const { section } = takeSize(lineOf(text), open);
  expect(section).toBeInstanceOf(InputError);
  expect(sentence(section)).toContain(part);
});

it("a length that the line names already is not taken twice", () => {
  expect(takeSize(lineOf("round 3 x 12"), { length: false, quantity: true }).section).toBeInstanceOf(InputError);
});

it.each(["6000 IPE 200", "1000 round 2", "144 W12x50", "240 round 3"])(
  "%s: the number in front may be the quantity or the length (common practice, no source)",
  (text) => {
    expect(sentence(takeSize(lineOf(text), open).quantity)).toContain("may be the quantity or a length");
  },
);

it.each([
  ["500 hex 3/4 x 2.25", open, 500],
  ["240 round 3", { length: false, quantity: true }, 240],
  ["99 round 3", open, 99],
])("%s: the number in front is the quantity", (text, what, quantity) => {
  expect(takeSize(lineOf(text), what).quantity).toBe(quantity);
});

const named = { length: false, quantity: true };
it("a diameter with a wall is a tube where the line has a length or a schedule, else a disc (common practice, no source)", () => {
  const text = (line: string, what = named) => {
    const { section } = takeSize(lineOf(line, "metric"), what);
    return section instanceof InputError ? sentence(section) : section.text;
  };
  expect(text("Ø60 x 4 wall")).toBe("tube 60 mm x 4 mm wall");
  expect(text("Ø60 x 4 wall", open)).not.toContain("tube");
  expect(text("60 x 4 wall")).not.toContain("tube");
  expect(text("Ø60 x 4")).not.toContain("tube");
  expect(text("round Ø60 x 4 wall")).not.toContain("tube");
});
it.each([
  ["round 3 12", "the size may be round 12 in or round 3 in"],
  [
    "flat 6x1x3",
    "6 x 1 x 3: which of the three is the length? Write the size first and the length last, with its unit",
  ],
  ["half round 2", '"half" names a shape that sizes do not know'],
  ["W12x50 7", "7 is neither size, length nor quantity beside W12X50"],
])("%s is refused whole: %s", (text, says) => {
  expect(sentence(takeSize(lineOf(text), open).section)).toBe(says);
});
it("the unit of a bare length is that of the size where one is written", () => {
  expect(takeSize(lineOf("round 80 mm x 500"), open).units).toBe("metric");
  expect(takeSize(lineOf("round 8 cm x 500"), open).units).toBe("metric");
  expect(takeSize(lineOf("round 3 in x 12", "metric"), open).units).toBe("inch");
  expect(takeSize(lineOf("round 3 x 12"), open).units).toBe("inch");
  expect(takeSize(lineOf("round 80 x 12", "metric"), open).units).toBe("metric");
  // Both are written: that of the line.
  expect(takeSize(lineOf("flat 60 mm x 1 in"), open).units).toBe("inch");
  expect(takeSize(lineOf("flat 60 mm x 1 in", "metric"), open).units).toBe("metric");
});
it("a length says whether its unit is written", () => {
  expect(takeSize(lineOf("round 3 x 12"), open).length).toEqual({ text: "12", bare: true });
  expect(takeSize(lineOf("round 3 x 12 in"), open).length).toEqual({ text: "12 in", bare: false });
  expect(takeSize(lineOf("round 3 x 12-1/2"), open).length).toEqual({ text: "12-1/2", bare: false });
});
it.each([
  ["100 round 3", open, "100 may be the quantity or a length; write for example qty 100"],
  ["6000 IPE 200", open, "6000 may be the quantity or a length; write for example qty 6000"],
])("%s is refused whole: %s", (text, what, says) => {
  expect(sentence(takeSize(lineOf(text), what).quantity)).toBe(says);
});
it.each(["0 round 3", "12345 W12x50"])("%s: that number is no count", (text) => {
  expect(takeSize(lineOf(text), open).section).toBeInstanceOf(InputError);
});
