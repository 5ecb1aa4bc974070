import { expect, it } from "vitest";
import { openLine } from "../../src/item/openLine";
import { readLine, type BareUnit } from "../../src/item/readLine";
import type { Units } from "../../src/quantities";
import { sentence } from "./fixture";

it.each([
  ["inch", "round 3 in"],
  ["metric", "round 30 mm"],
] as const)("bare numbers are in the unit decided: %s (definition)", (units, size) => {
  const number = units === "inch" ? "3" : "30";
  const item = readLine(openLine(`round ${number}`), { units, from: "given", mixed: false, given: units }, []);
  expect(item.size).toBe(size);
  expect(item.notes.join()).toContain("as given");
});

const read = (text: string, units: Units, more: Partial<BareUnit> = {}) =>
  readLine(openLine(text), { units, from: "given", mixed: false, given: units, ...more }, []);

it("a length behind an x is in the unit of its size; one with a word of its own in that of the line", () => {
  expect(read("round 80 mm x 500", "inch").length).toBe(500);
  expect(read("round 80 mm 24 LG", "inch").length).toBeCloseTo(24 * 25.4, 9);
  expect(read("round 3 in x 24", "metric").length).toBeCloseTo(24 * 25.4, 9);
});
it.each([
  ["inch", "line", "inches, as the line writes"],
  ["inch", "given", "inches, as given"],
  ["inch", "words", "inches, as its words and grade are used"],
  ["inch", "both", "inches: impossible in the other unit"],
  ["metric", "line", "millimetres, as the line writes"],
  ["metric", "given", "millimetres, as given"],
  ["metric", "words", "millimetres, as its words and grade are used"],
  ["metric", "both", "millimetres: impossible in the other unit"],
] as const)("%s, from %s: the note is %s", (units, from, note) => {
  expect(read(units === "inch" ? "round 3" : "round 30", units, { from }).notes).toEqual([note]);
});
it("nothing is said of units where they are written, and nothing of a size that is refused", () => {
  expect(read("round 3 in", "inch").notes).toEqual([]);
  expect(read("24 in LG", "inch").notes).toEqual([]);
  expect(read("3000 LG", "metric").notes).toEqual(["millimetres, as given"]);
  expect(read("round 3 in 3000 LG", "metric").notes).toEqual(["millimetres, as given"]);
});
it.each([
  ["round 3", "length", "the line gives no length"],
  ["round 3", "quantity", "the line gives no quantity"],
  ["4140", "length", "the line gives no length that can be told from its size"],
  ["round 3 a36 b12", "section", "b12 is not known; it may belong to the size"],
] as const)("%s: %s is refused: %s", (text, field, says) => {
  expect(sentence(read(text, "inch")[field])).toBe(says);
});
it("the one number of the line may be the grade or the size", () => {
  expect(sentence(read("round 410", "metric").section)).toBe(
    "410 may be the grade or the size: write for example round 410 mm",
  );
  // 410 in is no bar: the number is the grade, and the size is missing.
  expect(sentence(read("round 410", "inch").section)).toContain("has no dimensions");
});
it("in millimetres three figures behind the size may be a length; a word of the grade says which", () => {
  const says = "410 may be the grade or a length: write AISI 410 or 410 mm";
  expect(sentence(read("round 50 410", "metric").length)).toBe(says);
  expect(sentence(read("round 50 410", "metric").grade)).toBe(says);
  expect(read("round 50 stainless 410", "metric").grade).toMatchObject({ grade: "410" });
  expect(read("410 round 50", "metric").grade).toMatchObject({ grade: "410" });
  expect(read("round 3 in 410", "inch").grade).toMatchObject({ grade: "410" });
});
it("a bare length where both units are written, or the size in the unit not given, is refused", () => {
  const says = "the line has inches and millimetres: 24 in or 24 mm? Write the length's unit";
  expect(sentence(read("round 3 in 24 LG", "inch", { mixed: true }).length)).toBe(says);
  expect(sentence(read("round 3 in 24 LG", "inch", { from: "line", given: "metric" }).length)).toBe(says);
  expect(read("round 3 in 24 LG", "inch", { from: "line", given: "inch" }).length).toBeCloseTo(24 * 25.4, 9);
  expect(read("round 80 mm 500 LG", "metric", { from: "line", given: "metric" }).length).toBe(500);
  expect(read("round 3 in 24 LG", "inch", { from: "words", given: "metric" }).length).toBeCloseTo(24 * 25.4, 9);
});
it("words not read keep their spaces", () => {
  expect(read("round 3 in 62/kg baz", "inch").unread).toBe("62/kg baz");
  expect(read("blah round 3 in foo", "inch").unread).toBe("blah foo");
});
