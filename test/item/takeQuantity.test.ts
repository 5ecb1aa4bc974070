import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { takeQuantity } from "../../src/item/takeQuantity";
import { sentence } from "./fixture";
import { lineOf, taken } from "./line";

it.each([
  ["12 pcs RD 3", 12, "12 pcs"],
  ["RD 3 qty: 5", 5, "qty : 5"],
  ["qty 7 round 80", 7, "qty 7"],
  ["(10) RD 3", 10, "(10)"],
  ["(304) RD 3", undefined, ""],
  ["25 ea RD 3", 25, "25 ea"],
  ["5 off RD 3", 5, "5 off"],
  ["10 pcs round 80", 10, "10 pcs"],
  ["5 x RD 3", 5, "5 x"],
  ["RD 3 x 12", undefined, ""],
  ['RD 3 x 24" x 10 pcs', 10, "x 10 pcs"],
  ['5 @ 24"', 5, "5"],
  ["4140 pcs 5", 5, "pcs 5"],
  ["4140 pcs 5 RD", 5, "pcs 5"],
  ["RD 3 qty # 5", 5, "qty # 5"],
  ["RD 3 qty = 5", 5, "qty = 5"],
  ["RD pcs: 5", 5, "pcs : 5"],
  ["pieces 100 RD 3", 100, "pieces 100"],
  ["pieces 4140 RD 3", undefined, ""],
  ["pieces 100 mm RD 3", undefined, ""],
  ["pieces 100 x 3", undefined, ""],
  ["pieces 12345 RD 3", undefined, ""],
  ["1000000 pcs RD 3", 1e6, "1000000 pcs"],
  ["1 pcs RD 3", 1, "1 pcs"],
  ["3/4 pcs RD", undefined, ""],
  ["10x RD 3", 10, "10 x"],
  ["3 x (10)", 10, "(10)"],
  ["St 52 RD 3", undefined, ""],
  ["20 St 52 round", undefined, ""],
  ["12 pcs RD 3 12 pcs", 12, "12 pcs 12 pcs"],
  // Behind the size and the grade a count times a length; 4 times 3 mm is none, nor is a number that stands at the size.
  ["flat 50x10 S235, 4 x 2400 mm", 4, "4"],
  ["RHS 60x40x3 S355 12 x 6 m", 12, "12"],
  ["flat 2x1/2 A36, 4 x 20'", 4, "4"],
  ["flat 50x10 S235 4 x 3 mm", undefined, ""],
  ["flat 50x10 S235 4 x 2400", undefined, ""],
  ["flat 50x10 S235 4 x 2400 mm x 3", undefined, ""],
  ["flat 50x10 round 4 x 2400 mm", undefined, ""],
  ["S235 4 x 2400 mm", undefined, ""],
])("%s: %s (common practice, no source)", (text, quantity, words) => {
  const line = lineOf(text);
  expect(takeQuantity(line)).toBe(quantity);
  expect(taken(line, "quantity")).toBe(words);
});

it.each([
  ["RD 3 x 12 ea", "12 may be the quantity"],
  ["12 pcs qty 5", "12 or 5"],
  ["2,5 pcs", "not a whole number"],
  ["0 pcs", "1 or more"],
  ["9999999 pcs", "not a whole number"],
])("%s is refused: %s", (text, part) => {
  const refusal = takeQuantity(lineOf(text));
  expect(refusal).toBeInstanceOf(InputError);
  expect(sentence(refusal)).toContain(part);
});

it.each([
  ["RD 3 x 12 ea", "12 may be the quantity, or a length or grade; write for example qty 12"],
  ["4140 pcs RD 3", "4140 may be the quantity, or a length or grade; write for example qty 4140"],
  ["4140 pcs 5 mm", "4140 may be the quantity, or a length or grade; write for example qty 4140"],
  ["4140 pcs 5 x 3", "4140 may be the quantity, or a length or grade; write for example qty 4140"],
  ["4140 pcs 1/2 RD", "4140 may be the quantity, or a length or grade; write for example qty 4140"],
  ["12 pcs qty 5", "the line gives more than one quantity: 12 or 5"],
  ["2,5 pcs", "a quantity of 2,5 is not a whole number of pieces, 1 or more"],
  ["0 pcs", "a quantity of 0 is not a whole number of pieces, 1 or more"],
  ["1000001 pcs", "a quantity of 1000001 is not a whole number of pieces, 1 or more"],
])("%s is refused whole: %s", (text, says) => {
  expect(sentence(takeQuantity(lineOf(text)))).toBe(says);
});

it.each(["5 x", "50x50x5 dia 4 x 2400 mm", "50x50x5 Ø4 x 2400 mm"])("%s says no quantity", (text) => {
  expect(takeQuantity(lineOf(text))).toBeUndefined();
});
