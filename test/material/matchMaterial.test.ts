import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { matchMaterial } from "../../src/material/matchMaterial";

const match = (designation: string | number) => matchMaterial(designation, []);

describe("what matched and what was assumed", () => {
  it.each([
    ["S17400", "UNS S17400"],
    ["1.4301", "W.-Nr. 1.4301"],
    ["SUS304", "JIS SUS304"],
    ["4140", "SAE 4140"],
    ["C360", "UNS C36000"],
    ["aisi 304", "AISI 304"],
    ["Inconel 625", "UNS N06625"],
    ["monel k500", "UNS N05500"],
    ["40Х", "40Х"],
    ["40X", "40Х"],
  ])("%s matched %s", (designation, matched) => {
    expect(match(designation).matched).toBe(matched);
  });

  it.each([
    ["bronze", "plain name, taken as Bearing bronze C93200 (SAE 660), continuous cast"],
    ["1.4034", "the nearest in the table is 420 martensitic stainless"],
    ["4140", "condition not stated: annealed taken; also in the table: Q&T 28-32 HRC"],
    ["4140 HT", ""],
    ["304", ""],
    ["Inconel 625", "trade name, taken as Alloy 625"],
    [
      "Inconel 718",
      "trade name, taken as Alloy 718; condition not stated: solution treated and aged taken; also in the table: solution annealed",
    ],
    ["Hastelloy B", "the nearest in the table is Alloy B-2"],
    ["40Cr", "the nearest in the table is 5140 Cr steel (41Cr4)"],
    ["F316/F316L", "dual certificate, cut as 316L austenitic stainless"],
  ])("%s: %s", (designation, note) => {
    expect(match(designation).note).toBe(note);
  });
});

describe("refusals", () => {
  it.each([
    ["1050", "none", "{given} means more than one material: {meanings}"],
    ["4141", "none", "{given} is not in the material table; the nearest there: {nearest}"],
    ["zzzz", "none", "{given} is not in the material table"],
    ["6061-T4", "none", "{given}: the table has {name} only as {conditions}"],
    ["", "invalid", "a material is wanted"],
    [-1, "invalid", "{given} is not a designation"],
  ])("%s is %s", (designation, reason, problem) => {
    try {
      match(designation);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect(error).toMatchObject({ reason, parameter: "material", problem });
    }
  });

  it("a long text is cut in the message", () => {
    expect(() => match("q".repeat(500))).toThrow(
      expect.objectContaining({ facts: { given: `${"q".repeat(60)}…` } }) as Error,
    );
  });
});

it("any text is answered or refused with an InputError (2,000 texts, half of them built from pieces of designations)", () => {
  const piece = fc.constantFrom(
    "AISI",
    "4140",
    "304",
    "1.4301",
    "EN",
    "AW",
    "-",
    "/",
    "(",
    ")",
    "+",
    "QT",
    " ",
    "GR",
    "B",
    "A500",
    "SS",
    "steel",
    "titanium",
    "T6",
    ".",
    ",",
    "17-4",
    "PH",
    "H1150",
    "UNS",
    "S30400",
  );
  const text = fc.oneof(
    fc.string({ maxLength: 60 }),
    fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join("")),
  );
  fc.assert(
    fc.property(text, (designation) => {
      try {
        expect(match(designation).material.key).not.toBe("");
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
      }
    }),
    { seed: 3, numRuns: 2000 },
  );
});

it("upper and lower case and outer blanks never change the answer", () => {
  for (const text of ["x5crni18-10", "en aw-6082 t6", "17-4ph h900", "grade 2 titanium", "a500 gr b"])
    expect(match(` ${text.toUpperCase()} `).material).toBe(match(text).material);
});

it("iron is cast iron, and no steel is (definition)", () => {
  expect(matchMaterial("iron GG25", []).material.family).toBe("cast iron");
  expect(() => matchMaterial("iron 304", [])).toThrow();
});
it("up to three designations of one piece are read, four are not", () => {
  expect(matchMaterial("304/1.4301/S30400", []).material.grade).toBe("304");
  expect(() => matchMaterial("304/1.4301/S30400/304", [])).toThrow();
});

it.each([
  ["A2", "A2 fastener is stainless"],
  ["M2", "copper is М2 in Cyrillic"],
  ["718", "718 mould steel is P20+Ni"],
])("%s is answered, with its other meaning said: %s (ISO 3506-1, GOST 859, DIN 1.2738)", (text, other) => {
  expect(match(text).note).toContain(other);
  expect(match("4140").note).not.toContain(other);
});

describe("what a refusal and an answer say", () => {
  const says = (text: string): string => {
    try {
      matchMaterial(text, []);
    } catch (error) {
      if (error instanceof InputError) return error.problem.replace("{given}", String(error.facts["given"]));
    }
    throw new Error(`not refused: ${text}`);
  };

  it("a name of at most 60 characters is said whole, a longer one is cut", () => {
    expect(says("qwertzu")).toMatch(/^qwertzu is not in the material table/);
    expect(says("q".repeat(60))).toMatch(/^q{60} is not/);
    expect(says("q".repeat(61))).toMatch(/^q{60}… is not/);
  });

  it("a designation of 120 characters is read, a longer one is not", () => {
    expect(matchMaterial(`AISI${" ".repeat(112)}4140`, []).material.grade).toBe(
      matchMaterial("4140", []).material.grade,
    );
    expect(says(`AISI${" ".repeat(113)}4140`)).toMatch(/… is not in the material table$/);
  });

  it("W.-Nr. 2.4856 is NiCr22Mo9Nb, UNS N06625 (EN 10095): the number of a metal that is no steel", () => {
    for (const text of ["W.-Nr. 2.4856", "2.4856", "UNS N06625"])
      expect(
        matchMaterial(text, []).material.designations.map((each) => each.text),
        text,
      ).toContain("N06625");
  });
});
