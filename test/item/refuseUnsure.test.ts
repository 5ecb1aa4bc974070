import { describe, expect, it } from "vitest";
import { InputError, orRefusal } from "../../src/errors";
import { openLine } from "../../src/item/openLine";
import { refuseUnsure } from "../../src/item/refuseUnsure";
import { readSection } from "../../src/section/readSection";
import type { Role } from "../../src/item/item";
import type { Units } from "../../src/quantities";
import { sentence } from "./fixture";

const ask = (text: string, unread: string, length: string | undefined) => {
  const open = openLine(text);
  const roles = open.atoms.map(({ text: word }): Role => (word === unread ? "unread" : "size"));
  const line = { atoms: open.atoms, roles, units: "metric" as const };
  const said = length === undefined ? undefined : { text: length, bare: true };
  return refuseUnsure(open, line, readSection("round 60 mm", "metric"), said);
};

it("a word not read beside a short length, or beside the one number, refuses (definition)", () => {
  expect(ask("quorbalo round 60 mm", "quorbalo", "3")).toBeInstanceOf(InputError);
  expect(ask("quorbalo 60 round", "quorbalo", undefined)).toBeInstanceOf(InputError);
  expect(ask("quorbalo round 60 mm", "quorbalo", "300")).not.toBeInstanceOf(InputError);
  expect(ask("round 60 mm", "", "3")).not.toBeInstanceOf(InputError);
});
it("a plastic refuses (definition)", () => {
  expect(ask("nylon round 60 mm", "", undefined)).toBeInstanceOf(InputError);
});

describe("refusals whole", () => {
  const of = (text: string, size: string, unread: readonly string[], length?: string, units: Units = "metric") => {
    const open = openLine(text);
    const roles = open.atoms.map(({ text: word }): Role => (unread.includes(word) ? "unread" : "size"));
    const said = length === undefined ? undefined : { text: length, bare: true };
    const section = orRefusal(() => readSection(size, units));
    const got = refuseUnsure(open, { atoms: open.atoms, roles, units }, section, said);
    return got instanceof InputError ? sentence(got) : got.text;
  };
  it.each([
    ["nylon round 60 mm", "round 60 mm", [], undefined, 'not a metal bar: "nylon"'],
    ["round 1300", "round 1300 mm", [], undefined, "round 1300 mm is larger than any bar: write its unit"],
    ["round 1300 mm", "round 1300 mm", [], undefined, "round 1300 mm"],
    ["round 130 cm", "round 1300 mm", [], undefined, "round 1300 mm"],
    ["round 60 in", "round 60 in", [], undefined, "round 60 in"],
    // 2,000 in² is a round of 50.46 in.
    ["round 50.4", "round 50.4 in", [], undefined, "round 50.4 in"],
    ["round 50.6", "round 50.6 in", [], undefined, "round 50.6 in is larger than any bar: write its unit"],
    ["round 60 m", "round 1300 mm", [], undefined, "round 1300 mm is larger than any bar: write its unit"],
    [
      "quorbalo 60 round",
      "round 60 mm",
      ["quorbalo"],
      undefined,
      '"quorbalo" is not read, and the number beside it may belong to it',
    ],
    [
      "60 quorbalo round",
      "round 60 mm",
      ["quorbalo"],
      undefined,
      '"quorbalo" is not read, and the number beside it may belong to it',
    ],
    ["60 mm quorbalo round", "round 60 mm", ["quorbalo"], undefined, "round 60 mm"],
    ["60x20 quorbalo flat", "flat 60 mm x 20 mm", ["quorbalo"], undefined, "flat 60 mm x 20 mm"],
    ["q 60 round", "round 60 mm", ["q"], undefined, "round 60 mm"],
    ["quorbalo round 60 mm", "round 60 mm", ["quorbalo"], "30", "round 60 mm"],
    [
      "quorbalo round 60 mm",
      "round 60 mm",
      ["quorbalo"],
      "29",
      '"quorbalo" is not read: round 60 mm, or hollow with that wall?',
    ],
    ["quorbalo tube 60x5 mm", "tube 60 mm x 5 mm", ["quorbalo"], "3", "tube 60 mm x 5 mm wall"],
    ["quorbalo round 2 in", "round 2 in", ["quorbalo"], "1", "round 2 in"],
    [
      "quorbalo round 2 in",
      "round 2 in",
      ["quorbalo"],
      "0.99",
      '"quorbalo" is not read: round 2 in, or hollow with that wall?',
    ],
  ] as const)("%s, %s: %s %s: %s (judgement)", (text, size, unread, length, says) => {
    expect(of(text, size, unread, length)).toBe(says);
  });
  it("a bare length is in the unit of the size", () => {
    // 2 in are 50.8 mm, more than half of 60 mm; 2 mm are less.
    const says = '"quorbalo" is not read: round 60 mm, or hollow with that wall?';
    expect(of("quorbalo round 60 mm", "round 60 mm", ["quorbalo"], "2 in", "metric")).toBe("round 60 mm");
    expect(of("quorbalo round 60 mm", "round 60 mm", ["quorbalo"], "2 mm", "inch")).toBe(says);
    expect(of("quorbalo round 60 mm", "round 60 mm", ["quorbalo"], "29", "inch")).toBe(says);
    expect(of("quorbalo round 2 in", "round 2 in", ["quorbalo"], "1", "metric")).toBe("round 2 in");
    expect(of("quorbalo round 60 mm", "round 60 mm", ["quorbalo"], "2", "metric")).toBe(says);
  });
});
