import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { findMaterial } from "../../src/material/findMaterial";
import { matchMaterial } from "../../src/material/matchMaterial";
import { ownMaterial } from "../../src/material/ownMaterial";
import { fixture } from "./fixture";

const find = (designation: string | number) => findMaterial(designation, []);
const refusal = (designation: string | number): InputError => {
  try {
    find(designation);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error(`${designation} was answered`);
};
const names = new Map(builtInMaterials().map((material) => [material.key, material.name]));

describe.each(["aliases.csv", "lookups.csv"])("%s: every designation gives its row", (file) => {
  it.each(fixture(file))("%s is %s (%s)", (designation, key) => {
    const keys = key!.split("|");
    if (keys.length === 1) expect(find(designation!).key).toBe(key);
    else {
      expect(refusal(designation!).reason).toBe("none");
      for (const meaning of keys) expect(refusal(designation!).facts["meanings"]).toContain(names.get(meaning));
    }
  });
});

describe("every row resolves to itself", () => {
  it.each(builtInMaterials())("$key", (material) => {
    expect(find(material.key)).toBe(material);
    expect(find(material.name)).toBe(material);
    expect(find(material.name.toLowerCase())).toBe(material);
  });
});

const isUns = (text: string): boolean => /^[A-Z]\d{5}$/.test(text);
const isNumber = (text: string): boolean => /^\d\.\d{4}$/.test(text);
const listed = new Set(
  builtInMaterials()
    .flatMap(({ designations }) => designations.map(({ text }) => text))
    .filter((text) => isUns(text) || isNumber(text)),
);

function neighbours(text: string): string[] {
  return [...text].flatMap((character, i) =>
    /\d/.test(character)
      ? [..."0123456789"]
          .filter((digit) => digit !== character)
          .map((digit) => text.slice(0, i) + digit + text.slice(i + 1))
      : [],
  );
}

describe("one designation is never answered with another", () => {
  it("no one-digit neighbour of a UNS or material number resolves, unless the table lists it", () => {
    const strangers = [...new Set([...listed].flatMap(neighbours))].filter((text) => !listed.has(text));
    expect(listed.size).toBeGreaterThan(380);
    expect(strangers.length).toBeGreaterThan(14_000);
    expect(strangers.filter((text) => !(refusal(text).reason === "none"))).toEqual([]);
  });

  it.each([
    "1.4302",
    "4141",
    "A572-5",
    "316LL",
    "C36001",
    "5.2100",
    "1.095",
    "174",
    "654512",
    "6061-T4",
    "6061-O",
    "1045 QT",
    "304/303",
    "17-4 H1151",
    "420 C",
    "304 N",
    "304H",
    "316 F",
    "1018/1020",
  ])("%s is none", (designation) => {
    expect(refusal(designation).reason).toBe("none");
  });

  it("an unknown one is told what begins like it", () => {
    expect(refusal("4141").facts["nearest"]).toContain("4140");
    expect(refusal("1.4302").facts["nearest"]).toContain("1.4301");
    expect(refusal("6061-O").facts["conditions"]).toBe("T6/T651");
  });
});

describe("a dimension, a count or a radius is no grade (order lines write L=450, T=22, N=80)", () => {
  it.each([
    "L450",
    "L360",
    "L=450",
    "T22",
    "T=91",
    "N80",
    "Q125",
    "R18",
    "H62",
    "H=65",
    "B8",
    "L80",
    "L7",
    "D6",
    "201",
  ])("%s is none", (text) => {
    expect(refusal(text).reason).toBe("none");
  });
});

describe("numbers in cells", () => {
  const numbers = [...listed].filter(isNumber);
  /** Who has the number by the standard: listed as the same first, then near; the default condition of a grade. */
  const owner = (number: string): string[] => {
    const who = builtInMaterials().flatMap((material) =>
      material.designations.filter(({ text }) => text === number).map(({ near }) => ({ material, near })),
    );
    const same = who.filter(({ near }) => !near || who.every((other) => other.near));
    return same.filter(({ material }) => material.isDefault).map(({ material }) => material.key);
  };

  it("every material number typed as a number gives its own grade; two rows with one number: the same before the near, then the default condition", () => {
    expect(numbers.length).toBeGreaterThanOrEqual(203);
    for (const number of numbers) expect([number, find(Number(number)).key]).toEqual([number, ...owner(number)]);
  });

  it("shared numbers, from EN 10025-2, EN 10083-2 and EN 10083-3", () => {
    expect(find(1.0044).key).toBe("s275jr");
    expect(find(1.0503).key).toBe("1045");
    expect(find(1.7225).key).toBe("4140-ann");
    expect(find(1.4542).key).toBe("17-4ph-a");
    expect(find(3.7165).key).toBe("ti-6al-4v");
  });

  it("a cell drops the last zero of 1.4310", () => {
    expect(find(1.431).key).toBe(find("1.4310").key);
    expect(refusal("1.431").reason).toBe("none");
  });

  it("whole numbers are their digits", () => {
    expect(find(4140).key).toBe("4140-ann");
    expect(find(304).key).toBe("304");
    expect(find(6061).key).toBe("al-6061");
  });

  it.each([Number.NaN, Infinity, -304])("%s is invalid", (number) => {
    expect(refusal(number)).toMatchObject({ reason: "invalid", parameter: "material" });
  });

  it.each([0, 1, 20, 200, 400, 1000, 316.5, 2.25, 1e300, 5.21])("%s is none", (number) => {
    expect(refusal(number).reason).toBe("none");
  });
});

describe("odd texts throw nothing but InputError", () => {
  const odd = [
    "constructor",
    "__proto__",
    "toString",
    "hasOwnProperty",
    "1E3",
    "1e5",
    "((((",
    "////",
    "+",
    "%",
    "@",
    "~",
    "=1+1",
    "Ⅳ",
    "ﬁ",
    "💥",
    "4140".repeat(100),
    "a".repeat(100_000),
    " ".repeat(10_000) + "x",
    "((".repeat(50_000),
    "GRADE ".repeat(5000),
    "SS ".repeat(20_000),
    "1.4301/".repeat(2000),
    "\u0000",
    "NaN",
    "undefined",
  ];
  it.each(odd.map((text) => [text.slice(0, 20), text]))("%s", (_, text) => {
    expect(refusal(text).reason).toBe("none");
  });

  it.each(["", "   ", "\t\n"])("blank %j is invalid", (text) => {
    expect(refusal(text).reason).toBe("invalid");
  });
});

describe("separators, case and width do not matter", () => {
  it.each([
    "x5crni1810",
    "X5 CrNi 18 10",
    "X5CrNi18-10",
    "Ｘ５ＣｒＮｉ１８－１０",
    "1,4301",
    "14301",
    "W.-Nr. 1.4301",
    "WNr 1.4301",
    "Werkstoff-Nr. 1.4301",
    "EN 1.4301",
    "DIN EN 1.4301",
    "UNS S30400",
    "aisi-304",
    "Type 304",
    " 304 ",
  ])("%s is 304", (text) => {
    expect(find(text).key).toBe("304");
  });
});

describe("own materials", () => {
  const own = ownMaterial({
    name: "Customer X 304",
    like: find("304"),
    rateFactor: 0.9,
    density: undefined,
    price: undefined,
  });
  const shadow = ownMaterial({
    name: "4140",
    like: find("4340"),
    rateFactor: undefined,
    density: undefined,
    price: undefined,
  });

  it("are found first, by name", () => {
    expect(findMaterial("customer x-304", [own])).toBe(own);
    expect(findMaterial(4140, [own, shadow])).toBe(shadow);
    expect(findMaterial("304", [own]).own).toBeUndefined();
  });
});

describe("designations of two materials keep the one and say the other (AISI, ISO 3506, GOST 859, DIN 1.2738, CDA, AA)", () => {
  it.each([
    ["A2", "a2", "A2 fastener"],
    ["M2", "m2", "М2 in Cyrillic"],
    ["718", "alloy718-h", "718 mould steel"],
    ["630", "17-4ph-a", "630 bronze"],
    ["1060", "1060", "1060 aluminium"],
  ])("%s", (designation, key, other) => {
    const { material, note } = matchMaterial(designation, []);
    expect([material.key, note]).toEqual([key, expect.stringContaining(other)]);
  });
  it.each([
    ["A2 fastener", "304"],
    ["A2 stainless", "304"],
    ["М2", "c11000"],
    ["718 mould steel", "1.2738"],
    ["718 mold", "1.2738"],
    ["718 tool steel", "1.2738"],
    ["630 bronze", "c63000"],
    ["1060 aluminium", "al-1050a"],
  ])("%s is %s", (designation, key) => {
    expect(find(designation).key).toBe(key);
  });
});
