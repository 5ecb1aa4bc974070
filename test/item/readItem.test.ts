import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readItem } from "../../src/item/readItem";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { findMaterial } from "../../src/material/findMaterial";
import type { Material } from "../../src/material/material";
import { readSection } from "../../src/section/readSection";
import { fixture, sentence } from "./fixture";

type Units = "inch" | "metric";

/** "!" is a refusal, "!text" one whose sentence holds the text. */
function check(value: unknown, expected: string): void {
  if (!expected.startsWith("!")) {
    expect(typeof value === "number" ? String(Number(value.toFixed(6))) : value).toBe(expected);
    return;
  }
  expect(value).toBeInstanceOf(InputError);
  expect((value as InputError).reason).toBe("none");
  expect((value as InputError).parameter).toBe("item");
  expect(sentence(value)).toContain(expected.slice(1));
}

const rows = fixture("lines.txt");

describe("description lines (invented; common practice, no source)", () => {
  it("are at least 120, of which at least 30 leave size, material or a named length or quantity open", () => {
    expect(rows.length).toBeGreaterThanOrEqual(120);
    expect(
      rows.filter(
        ([, , size, material, length, quantity]) =>
          size!.startsWith("!") ||
          material!.startsWith("!") ||
          (length!.length > 1 && length!.startsWith("!")) ||
          (quantity!.length > 1 && quantity!.startsWith("!")),
      ).length,
    ).toBeGreaterThanOrEqual(30);
  });
  it.each(rows)("%s: %s", (units, line, size, key, length, quantity, unread) => {
    const item = readItem(line!, units as Units, []);
    check(item.size, size!);
    check(item.grade instanceof InputError ? item.grade : item.grade.key, key!);
    check(item.length, length!);
    check(item.quantity, quantity!);
    expect(item.unread).toBe(unread);
  });
  it.each(rows)("%s: %s: size and material read again are the same", (units, line) => {
    const { size, section, material, grade } = readItem(line!, units as Units, []);
    if (section instanceof InputError) expect(size).toBe(section);
    else
      for (const other of ["inch", "metric"] as const)
        expect(readSection(size as string, other).area / section.area).toBeCloseTo(1, 9);
    if (grade instanceof InputError) expect(material).toBe(grade);
    else expect(findMaterial(material as string, [])).toBe(grade);
  });
});

describe("cells that are no lines", () => {
  it.each([
    ["", "no description given"],
    ["   ", "no description given"],
    ["#N/A", "the Excel error #N/A"],
    ["#REF!", "the Excel error #REF!"],
    ["3/4/2025", "is a date"],
    ["4-Mar", "is a date"],
    ["2025-03-04", "is a date"],
    [`${"RD 3 ".repeat(40)}x`, "at most 200 characters"],
  ])("%s", (line, part) => {
    try {
      readItem(line, "inch", []);
      expect.unreachable();
    } catch (refusal) {
      expect(refusal).toBeInstanceOf(InputError);
      expect((refusal as InputError).reason).toBe("invalid");
      expect(sentence(refusal)).toContain(part);
    }
  });
  it("a number can be a grade, and no more", () => {
    const item = readItem(4140, "inch", []);
    expect(item.grade).toBe(findMaterial("4140", []));
    for (const value of [item.size, item.length, item.quantity]) expect(sentence(value)).toContain("4140");
    expect(readItem(1.431, "inch", []).grade).toBe(findMaterial("1.4310", []));
    for (const value of Object.values(readItem(45720, "inch", [])))
      if (value !== "" && !Array.isArray(value)) expect(value).toBeInstanceOf(InputError);
    for (const value of Object.values(readItem(Number.NaN, "inch", [])))
      if (value !== "" && !Array.isArray(value)) expect(value).toBeInstanceOf(InputError);
  });
});

describe("own materials", () => {
  const own: Material = { ...findMaterial("1045", []), key: "own", grade: "own", name: "Shop Special 7", own: true };
  it("are found by their names, figures or none", () => {
    const item = readItem("shop special 7 RD 3 x 12 ft", "inch", [own]);
    expect(item.grade).toBe(own);
    expect(item.size).toBe("round 3 in");
    expect(item.length).toBeCloseTo(3657.6, 9);
    const plain: Material = { ...own, name: "Shaftalloy" };
    expect(readItem("RD 3 shaftalloy", "inch", [plain]).grade).toBe(plain);
  });
});

// One designation of every kind of steel and metal; sizes in canonical form.
const grades = [
  "4140",
  "1018",
  "12L14",
  "304",
  "1.4301",
  "A36",
  "C45",
  "S355J2",
  "42CrMo4",
  "6061-T6",
  "17-4PH",
  "C36000",
  "16MnCr5",
  "D2",
  "brass",
  "A500 GR B",
];
const sizes = fc.oneof(
  fc
    .tuple(fc.constantFrom("round", "square", "hex"), fc.integer({ min: 1, max: 160 }))
    .map(([shape, n]) => `${shape} ${n / 16} in`),
  fc
    .tuple(fc.constantFrom("round", "square", "hex"), fc.integer({ min: 10, max: 400 }))
    .map(([shape, n]) => `${shape} ${n} mm`),
  fc
    .tuple(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 5, max: 19 }))
    .map(([b, t]) => `flat ${b} mm x ${t} mm`),
  fc
    .tuple(fc.integer({ min: 20, max: 300 }), fc.integer({ min: 1, max: 9 }))
    .map(([d, t]) => `tube ${d} mm x ${t} mm wall`),
  fc
    .tuple(fc.integer({ min: 30, max: 300 }), fc.integer({ min: 1, max: 9 }))
    .map(([a, t]) => `box ${a} mm x ${a} mm x ${t} mm wall`),
  fc.constantFrom(
    "W12X50",
    "C8X11.5",
    "L4X4X1/2",
    "HEB 200",
    "IPE 300",
    "UPN 200",
    "NPS 4 Sch 40",
    "HSS 6 in x 4 in x 0.25 in wall",
    "MC10X22",
    "L 80x80x8",
  ),
);
const lengths = fc.oneof(
  fc.integer({ min: 1, max: 40 }).map((n) => [`${n} ft`, n * 304.8] as const),
  fc
    .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 11 }))
    .map(([f, i]) => [`${f}'-${i}"`, f * 304.8 + i * 25.4] as const),
  fc.integer({ min: 1, max: 12 }).map((n) => [`${n} m`, n * 1000] as const),
  fc.integer({ min: 13, max: 6000 }).map((n) => [`L=${n} mm`, n] as const),
  fc.integer({ min: 1, max: 120 }).map((n) => [`${n}" LG`, n * 25.4] as const),
);
const counts = fc
  .tuple(fc.integer({ min: 1, max: 500 }), fc.constantFrom("# pcs", "qty #", "(#)", "# Stk", "# pieces"))
  // "(304)" may be a grade, "304 pcs" too.
  .filter(
    ([n]) =>
      ![301, 302, 303, 304, 309, 310, 314, 316, 317, 319, 321, 347, 356, 409, 410, 416, 420, 430, 431].includes(n),
  )
  .map(([n, form]) => [form.replace("#", String(n)), n] as const);
const unitsOf = fc.constantFrom<Units>("inch", "metric");

describe("laws", () => {
  it("a line made from its parts reads back to its parts, in whatever order they stand", () => {
    fc.assert(
      fc.property(
        sizes,
        fc.constantFrom(...grades),
        lengths,
        counts,
        unitsOf,
        fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
        (size, grade, [length, mm], [count, n], units, order) => {
          const parts = [size, grade, length, count];
          const line = order.map((i) => parts[i]).join(" , ");
          const item = readItem(line, units, []);
          expect([line, item.size]).toEqual([line, readSection(size, units).text]);
          expect(item.grade).toBe(findMaterial(grade, []));
          expect([line, item.length]).toEqual([line, expect.closeTo(mm, 6)]);
          expect([line, item.quantity, item.unread]).toEqual([line, n, ""]);
        },
      ),
      { seed: 20260801, numRuns: 2000 },
    );
  });

  it("every display name and key of the table is found in a line", () => {
    for (const material of builtInMaterials()) {
      const { grade } = readItem(material.key, "inch", []);
      if (!(grade instanceof InputError)) expect([material.key, grade.key]).toEqual([material.key, material.key]);
    }
  });

  it("words that say nothing of the size stand anywhere: the item is the same", () => {
    const words = fc.shuffledSubarray(["HR", "annealed", "TGP", "urgent", "customer", "PO 778", "(12)", "4140", "RD"], {
      minLength: 9,
    });
    const plain = readItem('RD 3" x 14 ft 4140 annealed (12)', "inch", []);
    fc.assert(
      fc.property(words, fc.integer({ min: 0, max: 9 }), (order, at) => {
        const item = readItem([...order.slice(0, at), '3" x 14 ft', ...order.slice(at)].join(" "), "inch", []);
        expect({ ...item, unread: "" }).toEqual({ ...plain, unread: "" });
        expect(item.unread.split(" ").sort()).toEqual(["778", "PO", "customer", "urgent"]);
      }),
      { seed: 20260802, numRuns: 1000 },
    );
  });

  const tokens = [
    ..."0123456789",
    "4140",
    "304",
    "1.4301",
    "1-1/4",
    "1/2",
    "x",
    "X",
    "by",
    "RD",
    "flat",
    "tube",
    "W12X50",
    "HEB 200",
    "Sch 40",
    "ft",
    "'",
    '"',
    "mm",
    "m",
    "pcs",
    "(10)",
    "qty",
    "LG",
    "L=",
    "@",
    "R/L",
    "Stk",
    "Rohr",
    "Winkel",
    "S355",
    "42CrMo4+QT",
    "brass",
    "17-4",
    "PH",
    "constructor",
    "__proto__",
    "€",
    "😀",
    "+",
    "-",
    "/",
    ",",
    ".",
    "#",
    "(",
    ")",
    "PO",
    "EN",
    "OD",
    "wall",
    "bundle",
    "mitre",
    "ü",
    "½",
    "Ø",
    "\u0000",
    "\u0001",
    "\u0002",
    "x".repeat(30),
  ];
  const stringRuns = Number(process.env["STRINGS"] ?? 6_000);
  it(`${String(stringRuns)} strings: nothing but InputError, every field a value or a refusal`, () => {
    const strings = fc.oneof(
      fc.string({ maxLength: 60, unit: "binary" }),
      fc
        .array(fc.constantFrom(...tokens), { maxLength: 16 })
        .chain((list) => fc.constantFrom("", " ").map((gap) => list.join(gap))),
    );
    fc.assert(
      fc.property(strings, unitsOf, (text, units) => {
        try {
          // No expect here: it takes longer than the reader.
          const { size, section, material, grade, length, quantity, unread } = readItem(text, units, []);
          const refused = [size, section, material, grade, length, quantity].filter(
            (value) => value instanceof InputError,
          );
          const positive = (value: unknown) => value instanceof InputError || (typeof value === "number" && value > 0);
          if (refused.some(({ reason }) => reason !== "none")) return false;
          return (
            positive(length) &&
            positive(quantity) &&
            (quantity instanceof InputError || Number.isInteger(quantity)) &&
            (section instanceof InputError || section.area > 0) &&
            typeof unread === "string"
          );
        } catch (refusal) {
          if (!(refusal instanceof InputError)) throw refusal;
          return refusal.reason === "invalid";
        }
      }),
      { seed: 20260803, numRuns: stringRuns },
    );
  });
});

it("a number alone is a grade, and in the unit given, inch without one", () => {
  const item = readItem(4140, undefined, []);
  expect(item.material).toContain("4140");
  expect(sentence(item.length)).toContain("4140 is only a number: the line gives no length");
  expect(sentence(item.quantity)).toContain("4140 is only a number: the line gives no quantity");
  expect(readItem(4140, "metric", []).material).toBe(item.material);
});
