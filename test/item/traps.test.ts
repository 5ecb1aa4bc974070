import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readItem } from "../../src/item/readItem";
import { sentence } from "./fixture";

const read = (line: string) => readItem(line, "metric", []);
const sizeOf = (line: string): string => {
  const { size } = read(line);
  return size instanceof InputError ? "" : size;
};

describe("traps of the languages (invented lines; common practice, no source)", () => {
  it.each([
    ["Rundrohr 42,4x2", "tube 42.4 mm x 2 mm wall"],
    ["tubo redondo 48,3x3", "tube 48.3 mm x 3 mm wall"],
    ["rura okrągła 57x4", "tube 57 mm x 4 mm wall"],
    ["丸パイプ 60×3", "tube 60 mm x 3 mm wall"],
    ["труба квадратная 50х50х3", "box 50 mm x 50 mm x 3 mm wall"],
  ])("1. a hollow word beats every solid word: %s", (line, size) => {
    expect(sizeOf(line)).toBe(size);
  });
  it("2. х is × only between figures", () => {
    expect(sizeOf("Полоса 60х8")).toBe("flat 60 mm x 8 mm");
    for (const grade of ["40Х", "12Х18Н10Т", "38ХМ"]) {
      const { size, grade: found } = read(`Круг ${grade} Ø60`);
      expect([grade, size]).toEqual([grade, "round 60 mm"]);
      if (found instanceof InputError) expect(sentence(found)).toContain(grade.toLowerCase());
    }
  });
  it.each([
    ["角パイプ 50×50×2.3T", "box 50 mm x 50 mm x 2.3 mm wall"],
    ["앵글 60×60×6T", "L 60x60x6"],
    ["tee 50x50x6", "tee 50 mm x 50 mm x 6 mm"],
    ["60x40x3t", ""],
  ])("3. a joined T is a thickness: %s", (line, size) => {
    expect(sizeOf(line)).toBe(size);
  });
  it.each(["Koker 60x40", "方管60×60", "Kutu profil 50x50", "Труба профильная 60х40", "tubo cuadrado 50x50"])(
    "4. two numbers and an outline without a wall: %s",
    (line) => {
      expect(sizeOf(line)).toBe("");
    },
  );
  it("5. 45# and ст.20 are grades, 10# of a channel a size", () => {
    expect(sizeOf("45#圆钢 φ70")).toBe("round 70 mm");
    expect(sizeOf("Круг ст.20 Ø70")).toBe("round 70 mm");
    expect(sentence(read("10#槽钢").size)).toContain("槽钢");
  });
  it.each(["Труба ВГП 25х3,2", "Труба Ду50", "tube DN40", "ERW pipe 32mm"])(
    "6. nominal bores are no diameters: %s",
    (line) => {
      expect(sizeOf(line)).toBe("");
    },
  );
  it.each(["焊条圆 3.2", "溶接棒 2.6φ", "용접봉 4mm", "POM Ø40x200", "отвод 90 76х3,5", "Rohrbogen 90 48,3x2,6"])(
    "7. goods and plastics are looked for before the shape: %s",
    (line) => {
      expect(sizeOf(line)).toBe("");
    },
  );
  it("8. 1.250 mm and 1.1/2 by language, else both readings", () => {
    expect(read("Winkelstahl 50x50x5 Länge 1.250 mm").length).toBe(1250);
    expect(read("Plochá tyč 60x8 řez na 1 350 mm").length).toBe(1350);
    expect(sizeOf('Barra chata 1.1/2" x 1/4" 10 barras')).toBe("flat 1.5 in x 0.25 in");
    expect(sentence(read("hex 50 x 1.250 mm").length)).toContain("1250");
  });
  it.each(["2 BDL round 50 mm", "3 pkt flat 50x10 mm", "2 kpl pręt Ø50"])("9. bundles are no pieces: %s", (line) => {
    expect(read(line).quantity).toBeInstanceOf(InputError);
  });
  it.each([
    ["5 St. Flachstahl 60x8", 5],
    ["Rundstahl St 37 Ø60", undefined],
    ["Rundstahl Ø60 St 52-3 7 Stk", 7],
    ["Köşebent 50x50x5 4 boy", 4],
    ["Lama 50x10 boy 1200 mm", undefined],
  ])("10. words of two minds: %s", (line, quantity) => {
    const { quantity: found } = read(line);
    expect(found instanceof InputError ? undefined : found).toBe(quantity);
  });
  it.each([
    ["RUNDSTAHL Ø60", "rundstahl ø60"],
    ["Präzisionsrohr 40x3", "Praezisionsrohr 40x3"],
    ["ÇELİK KUTU 40x40x3", "çelik kutu 40x40x3"],
    ["丸棒 φ50", "丸棒　Φ５０"],
    ["Круг Ф50", "круг ø50"],
  ])("%s and %s are the same", (one, other) => {
    expect(sizeOf(one)).not.toBe("");
    expect(sizeOf(one)).toBe(sizeOf(other));
  });
});
