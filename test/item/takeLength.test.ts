import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { takeLength } from "../../src/item/takeLength";
import { sentence } from "./fixture";
import { lineOf, taken } from "./line";

it.each([
  ["RD 3 x 21ft", "21ft", false, "x 21 ft"],
  ["1m Rund 80", "1m", false, "1 m"],
  ["RD 3 12FT R/L", "12ft", false, "12 FT R/L"],
  ["Rund 80 L=6000", "6000", true, "L = 6000"],
  ["Rund 80 L 6000", "6000", true, "L 6000"],
  [`RD 3 x 24" LG`, `24"`, false, `x 24 " LG`],
  [`cut to 12-1/2" RD 3`, `12-1/2"`, false, `cut to 12-1/2 "`],
  [`W8x31 20'-6"`, `20'-6"`, false, `20 ' - 6 "`],
  ["RD 3 12 ft 6 in", "12 ft 6 in", false, "12 ft 6 in"],
  ["3000 long round 80", "3000", true, "3000 long"],
  ["RD 4140 LG 24", "24", true, "LG 24"],
  [`RD 3 LG 24"`, `24"`, false, `LG 24 "`],
  ["HEX 15/16 12L14 LG 2-1/4", "2-1/4", false, "LG 2-1/4"],
  ["RD 3 x 24 LG 4140", "24", true, "x 24"],
  ["RD 3 - 24 LG 4140", "24", true, "24"],
  ["RD 3 CUT 12", "12", true, "CUT 12"],
])("%s: %s, bare %s (common practice, no source)", (text, length, bare, words) => {
  const line = lineOf(text);
  expect(takeLength(line)).toMatchObject({ text: length, bare });
  expect(taken(line, "length")).toBe(words);
});

it.each([
  "RD 3 x 12",
  "L 3x3x1/4",
  "RD 3 LG 24",
  "M 10x9",
  "angle 4x3x1/4 long leg",
  "CUT 4140 RD 3",
  "2.25 LG 15/16 HEX",
  `6 LG 3" RD`,
  "6 CUT 3 RD",
])("%s names none", (text) => {
  expect(takeLength(lineOf(text))).toBeUndefined();
});

it("one length written twice is one; two are refused, and a range", () => {
  expect(takeLength(lineOf("12 ft 144 in long"))).toMatchObject({ text: "12 ft" });
  expect(takeLength(lineOf(`FLAT 2x1 x 12' (144")`))).toMatchObject({ text: "12'" });
  expect(takeLength(lineOf("12 ft RD 144 in long"))).toMatchObject({ text: "12 ft" });
  expect(sentence(takeLength(lineOf("12 ft RD 3 x 6 m")))).toContain("12 ft or 6 m");
  expect(sentence(takeLength(lineOf("10-12' RD 3")))).toContain("from 10 to 12'");
});

it("the length of the bar it is cut from is none of the piece", () => {
  const line = lineOf(`RD 2 CUT 5" FROM 12' BAR`);
  expect(takeLength(line)).toMatchObject({ text: `5"` });
  expect(taken(line, "unread")).toBe("12 '");
  expect(takeLength(lineOf("RD 2 aus 6 m"))).toBeUndefined();
});

it.each([
  ["L=6000 Rund 80 L=6000", "6000"],
  [`RD 3 12-1/2" LG cut 12-1/2"`, `12-1/2"`],
])("%s: the same words twice are one length", (text, length) => {
  expect(takeLength(lineOf(text))).toMatchObject({ text: length });
});
it.each([
  ["L=6000 Rund 80 L=3000", "the line gives more than one length: 6000 or 3000"],
  ["12 ft RD 12.1 ft long", "the line gives more than one length: 12 ft or 12.1 ft"],
  ["RD 3 10-12'", "a length from 10 to 12': write the one that is meant"],
  ["10-12' RD 3", "a length from 10 to 12': write the one that is meant"],
  ["RD 3 10-12 ft", "a length from 10 to 12 ft: write the one that is meant"],
])("%s is refused whole: %s", (text, says) => {
  expect(sentence(takeLength(lineOf(text)))).toBe(says);
});
it("a dash behind a number that is read already makes no range", () => {
  const line = lineOf("5-12' RD 3");
  line.roles[0] = "quantity";
  expect(takeLength(line)).toMatchObject({ text: "12'" });
});
it.each(["cut", "saw", "sawn", "zuschnitt", "zugeschnitten", "gesägt"])("%s to 24 is a length", (word) => {
  for (const to of ["to", "auf"]) {
    const line = lineOf("RD 3");
    const plain = (text: string) => ({ kind: "word" as const, text, typed: text, spaced: true });
    const number = { kind: "number" as const, text: "24", typed: "24", spaced: true };
    const atoms = [...line.atoms, plain(word), plain(to), number];
    expect(takeLength({ ...line, atoms, roles: atoms.map(() => "" as const) })).toMatchObject({ text: "24" });
  }
});
it.each(["from", "ex", "aus"])("%s 6 m is the bar's length", (word) => {
  expect(takeLength(lineOf(`RD 2 ${word} 6 m`))).toBeUndefined();
});

it.each([
  ["RD 3 - 24 LG", "24"],
  ["RD 3 x 24 LG", "24"],
  ["2 M 10x9", undefined],
  ["RD 3 x 2m", "2m"],
  ["RD 3 x 2 m", "2 m"],
  ["L: 24 RD 3", "24"],
  ["L 24 RD", "24"],
  ["L 24", undefined],
  ["3 length 24 RD", undefined],
  ["4140 length 24 RD", "24"],
  ["RD 3 length 24", "24"],
  ["dia 3 length 24", "24"],
  ["3 dia length 24", "24"],
])("%s: %s", (text, length) => {
  const got = takeLength(lineOf(text));
  expect(got instanceof InputError ? sentence(got) : got?.text).toBe(length);
});

it("a number that is something else already is no part of a length", () => {
  const feet = lineOf(`RD 3 12' 6"`);
  expect(takeLength(feet)).toMatchObject({ text: `12' 6"` });
  const counted = lineOf(`RD 3 12' 6"`);
  counted.roles[4] = "quantity";
  expect(takeLength(counted)).toMatchObject({ text: "12'" });
  expect(takeLength(lineOf("3 LG 24 hex"))).toBeUndefined();
  const three = lineOf("3 LG 24 hex");
  three.roles[0] = "quantity";
  expect(takeLength(three)).toMatchObject({ text: "24", bare: true });
});

it.each(["round 3 L=", "round 3, cut to", "length", "L="])("%s: the label of nothing", (text) => {
  expect(takeLength(lineOf(text))).toBeUndefined();
});
