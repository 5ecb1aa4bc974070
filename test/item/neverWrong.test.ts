import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readItem } from "../../src/item/readItem";
import { sentence } from "./fixture";

type Units = "inch" | "metric" | undefined;

/** The size of a line, "" where it is refused. */
const sizeOf = (line: string, units: Units): string => {
  const { size } = readItem(line, units, []);
  return size instanceof InputError ? "" : size;
};
/** Each line gives one of these sizes, or is refused, with units and without. */
function never(rows: readonly (readonly [line: string, ...sizes: string[]])[]): void {
  it.each(rows)("%s", (line, ...sizes) => {
    for (const units of ["inch", "metric", undefined] as const) expect(["", ...sizes]).toContain(sizeOf(line, units));
  });
}

describe("1. a word not read beside a shape sign decides nothing (invented near misses)", () => {
  never([
    ["Kesselrohr Ø33,7×3", "tube 33.7 mm x 3 mm wall", "tube 33.7 in x 3 in wall"],
    ["Zylinderrohr Ø63x4", "tube 63 mm x 4 mm wall"],
    ["Труба котельная Ø57×3,5", "tube 57 mm x 3.5 mm wall"],
    ["Quorbalo Ø60x3"],
    ["Quorbalo round 60 x 3 mm"],
    ["Wexline □100x4"],
    ["Wexline square 80 x 3 mm"],
    ["Tubolare tondo Ø42.4x2", "tube 42.4 mm x 2 mm wall"],
    ["Brandelung rund 48,3 x 2,6 mm"],
    ["Plomtec hex 50 x 2 mm"],
    ["Frobnitz 45 round"],
    ["round Frobnitz 45"],
    ["pijpstuk Ø76 x 2.9 mm", "tube 76 mm x 2.9 mm wall"],
    ["Ømantel Ø80x2"],
  ]);
  it("the refusal names the word in its own script", () => {
    expect(sentence(readItem("Фробниц Ø60x3 мм", "metric", []).size)).toContain("Фробниц");
    expect(sentence(readItem("Quorbalo round 60 x 3 mm", "metric", []).size)).toContain("Quorbalo");
  });
});

describe("2. a grade's number is not a size (invented near misses)", () => {
  never(
    [
      ..."600 625 690 718 800 825 400 500".split(" ").map((n) => `Inconel ${n} round bar`),
      "Monel 400 round",
      "Monel K-500 hex bar",
      "Hastelloy C276 round bar",
      "Incoloy 800 square bar",
      "round bar Nimonic 90",
      "Alloy 20 round bar",
      "Stellite 6 round bar",
      "Duplex 2205 round bar",
    ].map((line) => [line] as const),
  );
});

describe("3. a size is not a grade (invented near misses)", () => {
  it.each([
    "Φ50 -310 LG",
    "Ø60 -316 LG",
    "310UC137",
    "310UB40",
    "Ø40 - 304 lg",
    "Ø45 x 420 LG",
    "rd 60 x 430 long",
    "Ø50 310L mm",
    "HEB 300",
    "IPE 330",
    "round 50 x 410 mm LG",
    "PL 10 x 304 mm",
    "flat 304 x 10 mm",
    "310 x 6 flat mm",
  ])("%s names no grade", (line) => {
    const { grade } = readItem(line, "metric", []);
    expect(grade).toBeInstanceOf(InputError);
  });
});

describe("4. a length takes its unit from the line (invented near misses)", () => {
  it.each([
    ["Ø80 mm 1.4301 L=120", 120],
    ["round 50 mm x 300 LG", 300],
    ["flat 60 mm x 10 mm L=450", 450],
    ["hex 24 mm 1.4305 length 200", 200],
    ["Rund 60 mm C45 L 350", 350],
    ["square 40 mm x 500", 500],
    ["tube 60 mm x 4 mm L=850", 850],
    ['round 2" x 24 LG', 609.6],
    ['flat 3" x 1/2" L=36', 914.4],
    ['hex 1" x 30 LG', 762],
    ["round 5 cm L=300", 300],
    ["Ø40mm S355J2 275 lg", 275],
  ])("%s: %d mm, whatever is given", (line, mm) => {
    for (const units of ["inch", undefined] as const) {
      const { length } = readItem(line, units, []);
      if (!(length instanceof InputError)) expect(length).toBeCloseTo(mm, 6);
    }
    expect(readItem(line, "inch", []).length).not.toBeInstanceOf(InputError);
  });
  it.each(['round 2" x 60 mm C45 L=150', 'flat 3" x 10 mm L=200', '1" hex 25 mm L=500'])(
    "%s: both units, and a bare length",
    (line) => {
      expect(readItem(line, "metric", []).length).toBeInstanceOf(InputError);
    },
  );
});

describe("5. a tolerance is no grade (ISO 286; invented near misses)", () => {
  it.each([
    ["Rund 50 h11 C45", "1045"],
    ["Ø40 mm h13 S355J2", "s355j2"],
    ["Ø40 h9 1.4301", "304"],
    ["1.4301 Ø30 h11", "304"],
    ["C45 Rund 60 mm Tol. h11", "1045"],
    ["Rund 60 mm Tol h13", ""],
    ["round 25 mm tol. h11", ""],
    ["Ø35 h11 L=300", ""],
    ["Ø35 h13 L=300", ""],
    ["round 45 mm k11 42CrMo4", "4140-ann"],
    ["round 45 mm f7 42CrMo4", "4140-ann"],
    ["round 45 mm js9 42CrMo4", "4140-ann"],
    ["round 45 mm H11 tolerance 42CrMo4", "4140-ann"],
  ])("%s", (line, key) => {
    const { grade } = readItem(line, "metric", []);
    expect(grade instanceof InputError ? "" : grade.key).toBe(key);
  });
  it.each(["H13 RD 3-1/4 x 18", "H13 round 60 mm", "RD 3-1/4 H13", "2 pcs RD 3-1/4 H13"])(
    "%s is the tool steel",
    (line) => {
      const { grade } = readItem(line, "inch", []);
      expect(grade instanceof InputError ? "" : grade.key).toBe("h13");
    },
  );
});

describe("6. two angles, second units, super duplex (invented near misses)", () => {
  never([
    ["2L4X4X1/2"],
    ["2L6X4X3/8 LLBB"],
    ["2L3X3X1/4 A36"],
    ["2l5x3x1/2"],
    ["2L3-1/2X3X1/4"],
    ['round 2" (50.8 mm)', "round 2 in"],
    ['flat 3" x 1/2" (76.2x12.7mm)', "flat 3 in x 0.5 in"],
    ['angle 2" x 2" x 1/4" (50.8x50.8x6.35 mm)', "L2X2X1/4"],
    ['1/4" (6.35mm) x 1" (25.4mm) flat bar', "flat 1 in x 0.25 in"],
    ["round 50 mm (1.969 in)", "round 50 mm"],
    ["hex 24 mm (0.945 in)", "hex 24 mm"],
    ['tube 60.3 mm x 3.91 mm (2.375" x 0.154")', "tube 60.3 mm x 3.91 mm wall"],
    ['square 1-1/2" [38.1 mm]', "square 1.5 in"],
    ["2L80x80x8"],
  ]);
  it.each(["Super Duplex round 50", "super duplex flat 50x10", "Lean duplex Ø40", "SUPER DUPLEX RD 2"])(
    "%s is not the plain duplex",
    (line) => {
      const { grade } = readItem(line, "metric", []);
      expect(grade instanceof InputError ? "" : grade.name).not.toContain("2205");
    },
  );
  it('a second length that is not the first leaves both open: 425mm (33.5")', () => {
    expect(readItem('L2X2X1/4 300mm (20")', "inch", []).length).toBeInstanceOf(InputError);
  });
});

describe("7. plastics, glass, wood and goods are no metal bars (invented near misses)", () => {
  it.each([
    'Nylon rod 2" x 12"',
    "POM round 60 x 200",
    "Delrin rod Ø50",
    "acetal bar 40 mm",
    "PTFE Rundstab Ø80",
    "plexiglas plate 10x100",
    "acrylic tube 60x3",
    "plywood 18 x 1220 x 2440",
    "glass rod Ø10",
    "Polyamid rund 50 mm",
    "Нейлон труба 40x3 капролон",
    "尼龙棒 φ50×100",
    "ナイロン丸棒 φ40",
    "나일론봉 Φ60",
    "hex bolt M16x60",
    "SS hex nut M12",
    "Подшипник 6206",
    "焊条 3.2mm",
    "Schraube M10x40",
    "elbow 60,3x2,9",
  ])("%s", (line) => {
    for (const units of ["inch", "metric", undefined] as const) expect(sizeOf(line, units)).toBe("");
  });
});

describe("8. without units a metric word, grade or series decides; else both readings are shown (invented near misses)", () => {
  it.each([
    ["Flachstahl 40x8", "flat 40 mm x 8 mm"],
    ["Rundstahl 25", "round 25 mm"],
    ["Ø25 1.4301", "round 25 mm"],
    ["Ø20 S355J2", "round 20 mm"],
    ["round 25 S45C", "round 25 mm"],
    ["hex 24 CW614N", "hex 24 mm"],
    ["flat 25x5 EN8", "flat 25 mm x 5 mm"],
    ["Круг 25", "round 25 mm"],
    ["丸棒 φ25", "round 25 mm"],
    ["Barra redonda 25", "round 25 mm"],
    ["Méplat 25x5", "flat 25 mm x 5 mm"],
    ["SHS 25x25x2", "box 25 mm x 25 mm x 2 mm wall"],
    ["HR FLAT 1/4 X 3", "flat 3 in x 0.25 in"],
  ])("%s: %s", (line, size) => {
    expect(sizeOf(line, undefined)).toBe(size);
  });
  it.each(["round 20", "flat 25x12", "square 16", "hex 24 4140", "RD 12 x 20", "tube 20x2"])("%s: both", (line) => {
    expect(sentence(readItem(line, undefined, []).size)).toMatch(/ in.* mm/);
  });
});
