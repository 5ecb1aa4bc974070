import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { takeMaterial } from "../../src/item/takeMaterial";
import { sentence } from "./fixture";
import { lineOf, taken } from "./line";

it.each([
  ["4140 HT RD 3", "4140-ht"],
  ["HT RD 4140", "4140-ht"],
  ["vergütet Rund 42CrMo4", "4140-ht"],
  ["S355J2 + N Rund", "s355j2"],
  ["A276 RD 316", "316"],
  ["T651 PLATE 6061", "al-6061"],
  ["718 mould steel RD", "1.2738"],
  ["tool steel 718 RD", "1.2738"],
  ["A2 fastener RD", "304"],
  ["DOM TUBE 1026", "1026"],
  ["1026 TUBE DOM", "1026"],
  ["360 brass", "c36000"],
  ["660 bronze", "c93200"],
  ["titanium RD grade 2", "ti-2"],
  ["1.4301 / 304", "304"],
  ["A36 / A572-50", "a572-50"],
  ["brass RD", "c36000"],
])("%s is %s (designations: src/data/materials.ts)", (text, key) => {
  const { grade, unknown } = takeMaterial(lineOf(text), []);
  expect(grade).toMatchObject({ key });
  expect(unknown).toEqual([]);
});

it.each([
  ["RD 3 in", "names no material"],
  ["steel RD", "no single material"],
  ["4140 RD 304", "more than one material"],
  ["stainless 4140", "which of the two"],
  ["XYZ99 4140", "another grade than"],
  ["XYZ99", "not in the material table"],
  ["A36 annealed", "only as hot rolled"],
  ["C22", "more than one material"],
])("%s is refused: %s", (text, part) => {
  const { grade } = takeMaterial(lineOf(text), []);
  expect(grade).toBeInstanceOf(InputError);
  expect(sentence(grade)).toContain(part);
});

it.each([
  ["RD 3 in", "the line names no material"],
  ["steel RD", "steel names no single material; write the grade"],
])("%s is refused whole: %s", (text, says) => {
  expect(sentence(takeMaterial(lineOf(text), []).grade)).toBe(says);
});
it.each([
  ["inconel 625 RD", "N06625"],
  ["inconel-625 RD", "N06625"],
  ["inconel alloy 625 RD", "N06625"],
  ["RD monel k500", "N05500"],
  ["RD monel k-500", "N05500"],
])("%s: the number behind the family is its alloy (designations: src/data/materials.ts)", (text, uns) => {
  const { grade, numbers } = takeMaterial(lineOf(text), []);
  expect(grade instanceof InputError ? sentence(grade) : grade.designations.map((d) => d.text)).toContain(uns);
  expect(numbers).toEqual([]);
});
it("says which bare numbers were grades, what was assumed, and what is read", () => {
  const line = lineOf("RD 3 4140 steel");
  const { numbers, note } = takeMaterial(line, []);
  expect(numbers).toEqual([2]);
  expect(note).toMatch(/^condition not stated: /);
  expect(taken(line, "material")).toBe("4140");
  expect(taken(line, "read")).toBe("steel");
  expect(takeMaterial(lineOf("RD 3 S355J2"), []).numbers).toEqual([]);
  expect(takeMaterial(lineOf("RD 3"), []).note).toBe("");
});
it.each([
  ["titanium grade 2 RD", "ti-2"],
  ["ti grade 2 RD", "ti-2"],
  ["ti gr 5 RD", "ti-6al-4v"],
])("%s: %s", (text, key) => {
  expect(takeMaterial(lineOf(text), []).grade).toMatchObject({ key });
});
it("quenched and tempered anywhere are one condition", () => {
  for (const text of ["4140 RD quenched and tempered", "quenched tempered RD 4140", "4140 QT RD"])
    expect(takeMaterial(lineOf(text), []).grade).toMatchObject({ key: "4140-ht" });
});

it("the condition is read where it stands, the shape between stays", () => {
  for (const [text, words] of [
    ["4140 RD annealed", "4140 annealed"],
    ["annealed RD 4140", "annealed 4140"],
  ] as const) {
    const line = lineOf(text);
    expect(takeMaterial(line, []).grade).toMatchObject({ key: "4140-ann" });
    expect(taken(line, "material")).toBe(words);
  }
});
it.each([
  ["4140 RD inconel 625", "4140/inconel 625"],
  ["inconel 625 RD 4140", "inconel 625/4140"],
])("%s: two materials are named in the order of the line", (text, both) => {
  expect(sentence(takeMaterial(lineOf(text), []).grade)).toContain(both);
});
it.each([
  ["brass 360 RD", [1]],
  ["brass 36000 RD", [1]],
  ["brass 3600 RD", []], // no brass has four figures
  ["brass 360 x 3", []], // a dimension
  ["brass RD 360 x 3", []],
  ["360 RD", []], // no family beside it
] as const)("%s: the bare numbers %j are grades (CDA numbers have three figures, UNS five)", (text, numbers) => {
  expect(takeMaterial(lineOf(text), []).numbers).toEqual(numbers);
});

it.each(["inconel alloy 625", "inconel - 625", "inconel 625"])("%s: every word of it is the material", (words) => {
  const line = lineOf(`${words} RD`);
  takeMaterial(line, []);
  expect(taken(line, "material")).toBe(words);
});
