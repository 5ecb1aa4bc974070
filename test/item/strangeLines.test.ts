import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import type { Item } from "../../src/item/item";
import { readItem } from "../../src/item/readItem";

type Units = "inch" | "metric" | undefined;
type Row = readonly [units: Units, line: string, size: string, length: number | "", quantity: number | ""];

const or = <T>(field: T | InputError): T | "" => (field instanceof InputError ? "" : field);
const mm = (length: Item["length"]): number | "" => (length instanceof InputError ? "" : Number(length.toFixed(6)));

/** Size, length in mm and quantity of each line; "" is a refusal. Invented lines of strangers' kinds; common practice, no source. */
function reads(rows: readonly Row[]): void {
  it.each(rows)("%s: %s", (units, line, size, length, quantity) => {
    const item = readItem(line, units, []);
    expect([or(item.size), mm(item.length), or(item.quantity)]).toEqual([size, length, quantity]);
  });
}

describe("1. a number that belongs to the word before it counts nothing", () => {
  reads([
    ["metric", "CuZn39Pb3 Sechskant SW 19 Stange 3 m", "hex 19 mm", 3000, ""],
    ["metric", "Yuvarlak Ç4140 Ø 80 boy 250 mm 5 adet", "round 80 mm", 250, 5],
    ["metric", "Esagono CH 30 AVP L=55 pz 80", "", 55, 80],
    ["metric", "Rund 60 x C45 200 lang", "", 200, ""],
    ["metric", "Tubo mecânico ST52 ext. 100 x int. 70 x 60 comp.", "", 60, ""],
    ["inch", 'PTR 2" x 2" cal 11 x 6 m', "", 6000, ""],
    ["metric", "two off 60 dia x 100 EN24T", "round 60 mm", 100, ""],
    ["metric", "IPE 200 Stk 4 6 m", "", 6000, ""],
    ["metric", "IPE 200 4 Stk 6 m", "IPE 200", 6000, 4],
    ["inch", 'length 6 pcs 4 2" rd 1018', "", "", ""],
    ["metric", "Rohr 60 x 5 Stk 4 300 mm", "", "", ""],
    ["inch", '2" dia 5 pcs 1018 x 10"', "round 2 in", 254, 5],
    ["metric", "Ø 80 x 250 mm 5 Stk", "round 80 mm", 250, 5],
  ]);
});

describe("2. thousands, lists and ranges are no quantity", () => {
  reads([
    ["inch", '5,000 pcs 1/2" rd 12L14 x 2"', "round 0.5 in", 50.8, ""],
    ["metric", "1.000 Stück Rd 20 x 45 11SMn30", "round 20 mm", 45, ""],
    ["metric", "5-7 Stück Rund 60 C45 x 300 mm", "", "", ""],
    ["metric", "5 oder 10 Stück Rund 60 C45 x 300 mm", "", "", ""],
    ["inch", 'qty 10, 25 or 50, 2" rd 1018', "", "", ""],
    ["inch", '1, 5, 10 pcs 2" rd 1018', "", "", ""],
    ["inch", '2x5 pcs 2" rd 1018', "round 2 in", "", ""],
    ["inch", '4 pcs per set rd 2" 1018 x 6"', "round 2 in", 152.4, ""],
    ["metric", "Rund 40 C45, 3 x 120 mm, 2 x 240 mm", "", "", ""],
    ["metric", "flat 50x10 S235, 4 x 2400 mm", "flat 50 mm x 10 mm", 2400, 4],
    ["metric", "Rund 40 C45 3 St 300mm, 3 St 450mm", "", "", ""],
    ["inch", '12 pcs RD 3 x 12" 12 pcs', "round 3 in", 304.8, 12],
    ["metric", "Rund 60, 10 Stk, 300 mm lang", "round 60 mm", 300, 10],
  ]);
});

describe("3. a number in front counts pieces, not tonnes, pallets and bundles", () => {
  reads([
    ["metric", "3 to Rund 60 42CrMo4 6 m", "", 6000, ""],
    ["metric", "2 Paletten Rund 60 C45 3 m", "", 3000, ""],
    ["metric", "1. Rund 60 C45 x 300", "", "", ""],
    ["metric", "4 bundles flat 50x10 S235JR 6m", "", 6000, ""],
    ["inch", "2 W12x50 A992", "W12X50", "", 2],
  ]);
});

describe("4. a length that is one of several, or whose rest stands behind it", () => {
  reads([
    ["metric", "IPE 160 S275 5m20", "IPE 160", 5200, ""],
    ["metric", "UPN 100 longueur 2 m 350 qté 3", "", "", 3],
    ["inch", 'round 2.5" 4140 1 ft 6', "", "", ""],
    ["inch", 'round 2" 1018 length 6", 8"', "", "", ""],
    ["inch", 'round 2" 1018 6"/8" long', "", "", ""],
    ["inch", '4140 rd 5" 7-3/4" to 8" long', "", "", ""],
    ["inch", '10 to 12 ft 2" rd 1018', "", "", ""],
    ["metric", "Rund 50 C45 Länge 300 bis 320 mm", "", "", ""],
    ["metric", "Rund 50 C45 300-320 mm lang", "", "", ""],
    ["metric", "Rund 60 C45 2'500 mm lang", "round 60 mm", 2500, ""],
    ["inch", '1018 rd 2" x l2"', "", "", ""],
    ["inch", '1018 rd 2" x L12"', "round 2 in", 304.8, ""],
  ]);
});

describe("5. a thickness in front of a plate is no length", () => {
  reads([
    ["inch", '1-1/2" PLATE A572-50 CUT 8" x 24"', "", "", ""],
    ["inch", '1/2" plate 3" x 12" A36', "", "", ""],
    ["metric", "20 mm Blech 100 x 300 mm S355", "", "", ""],
    ["metric", "10mm flat 50mm x 300mm S235", "", "", ""],
    ["inch", '12" flat 2x1/4 A36', "flat 2 in x 0.25 in", 304.8, ""],
  ]);
});

describe("6. a short second number may be a wall", () => {
  reads([
    ["metric", "Vierkant 80 x 5 mm S235", "", "", ""],
    ["metric", "sq 40x40 x 3 C45", "", "", ""],
    ["inch", "sq 2 x .188 A500", "", "", ""],
    ["inch", 'square 2" x 1/4" A36', "", "", ""],
    ["metric", "square 60 x 20 C45", "square 60 mm", 20, ""],
    ["metric", "Rund 200 x 60 C45", "round 200 mm", 60, ""],
  ]);
});

describe("7. the length written first is no side, leg or diameter", () => {
  reads([
    ["metric", "Rohr 1000 x 88,9 x 5 S355", "", "", ""],
    ["inch", 'tube 12" x 2" x 1/8"', "", "", ""],
    ["metric", "Rundrohr 1000 x 60,3 x 4", "", "", ""],
    ["metric", "L 1000 x 50 x 5", "", "", ""],
    ["metric", "1000 x 60 round C45", "", "", ""],
    ["inch", '12" x 2" rd 4140', "", "", ""],
    ["metric", "Rechteckrohr 200x40x4 S235JRH", "box 200 mm x 40 mm x 4 mm wall", "", ""],
    ["inch", "3 x 12 round 4140", "round 3 in", 304.8, ""],
  ]);
});

describe("8. letters and signs of other hands", () => {
  reads([
    ["metric", "S45C 丸鋼 φ50×120L 5本", "round 50 mm", 120, 5],
    ["metric", "20钢管 φ45×5 2米", "tube 45 mm x 5 mm wall", 2000, ""],
    ["metric", "丸棒 SUS304-16φ-200", "round 16 mm", 200, ""],
    ["metric", "Rund 60 x 300 S355J2 5 Stk à 12,50", "round 60 mm", 300, 5],
    ["metric", "Rund 60 S355J2 5 Stk à 12,50 m", "round 60 mm", 12500, 5],
    ["metric", "Круг 60 40X L=300", "round 60 mm", 300, ""],
    ["metric", "20x круг 60 L=300", "round 60 mm", 300, 20],
    ["metric", "40X круг 60 мм", "round 60 mm", "", ""],
    ["metric", "Aluminio 6061 T6 barra 50,8 mm diám. x 1.000 mm", "round 50.8 mm", 1000, ""],
  ]);
  it.each([
    ["20#工字钢 6米", ""],
    ["Kare 40 mm Ç1040", "AISI 1040"],
    ["round 316 x 25", ""],
    ["round 316 x 25 C45", "1045"],
  ])("%s: the grade", (line, name) => {
    const { material } = readItem(line, "metric", []);
    if (name === "") expect(material).toBeInstanceOf(InputError);
    else expect(material).toContain(name.replace("AISI ", ""));
  });
  it("round 316 x 25 names no size, unless another grade stands beside it", () => {
    expect(readItem("round 316 x 25", "metric", []).size).toBeInstanceOf(InputError);
    expect(readItem("round 316 x 25 C45", "metric", []).size).toBe("round 316 mm");
    expect(readItem("Ø 316 x 25", "metric", []).size).toBe("round 316 mm");
  });
});

describe("9. what stands beside the bar is read over: own numbers, standards, hardness, dates", () => {
  reads([
    ["metric", "Rund 60 C45 x 300 5 Stk", "round 60 mm", 300, 5],
    ["metric", "0020 Rund 60 C45 x 300 5 Stk", "round 60 mm", 300, 5],
    ["inch", '1) 2" rd 1018 x 6" 10 pcs', "round 2 in", 152.4, 10],
    ["metric", "GB/T 3077 42CrMo φ120*350 2件", "round 120 mm", 350, 2],
    ["metric", "PN-EN 10060 pręt okrągły 50 S235JR 6 m", "round 50 mm", 6000, ""],
    ["inch", '4140 HT 28-32 HRC 3" rd x 10"', "round 3 in", 254, ""],
    ["inch", '4140 HT 269/321 BHN 3" rd x 10" 2 pcs', "round 3 in", 254, 2],
    ["metric", "42CrMo4+QT 900-1100 N/mm2 Rund 80 x 200", "round 80 mm", 200, ""],
    ["metric", "12.03.2025 Rund 60 C45 x 300 5 Stk", "round 60 mm", 300, 5],
    ["inch", 'rd 2" 1018 x 6" 10 pcs 2025-04-01', "round 2 in", 152.4, 10],
    ["inch", `L 4 x 3 x 3/8 A36 x 7'-4 1/2" - 6 req'd`, "L4X3X3/8", 2247.9, 6],
    ["metric", "2pcs of 100mm dia EN19 at 50mm long", "round 100 mm", 50, 2],
    ["metric", "5 pcs of 40 mm round C45 x 200", "round 40 mm", 200, 5],
    ["inch", '6" wide x 10" long x 2" thick 4140', "", 254, ""],
    ["inch", '2. rd 4140 x 6"', "round 2 in", 152.4, ""],
    ["inch", '12 rc 2" rd', "", "", ""],
    ["metric", "Hollow bar 100 OD 60 ID 4140 length 200 mm", "tube 100 mm x 20 mm wall", 200, ""],
    ["metric", "Perfil IPN 120 S275 a 2350 mm 2 uds", "IPN 120", 2350, 2],
  ]);
  it("a hardness or strength that belongs to no named condition makes another steel of it: no size, so nothing is priced", () => {
    for (const line of [
      "D2 round 50 mm 60 HRC 10 pcs 300 mm long",
      "RD 50 mm 4140 28-32 HRC L=300 mm 5 pcs",
      "RD 50 mm 4140 300 HB L=300 mm",
      "RD 50 mm 4140 HT 52-56 HRC L=300 mm",
      "Rund 50 mm 42CrMo4 1000 N/mm2 300 mm",
    ])
      expect(readItem(line, "metric", []).size, line).toBeInstanceOf(InputError);
  });
  it("the steel before an x, the specification behind a slash", () => {
    for (const [line, name] of [
      ["Rund 60 C45 x 300", "1045"],
      ['304L SQ BAR 1" ASTM A276/A479', "304L"],
      ["QQ-A-225/8 6061-T651 RND 2-1/2", "6061"],
      ["C10 x 15.3 A36", "A36"],
    ] as const)
      expect(readItem(line, undefined, []).material).toContain(name);
    expect(readItem("C10 x 15.3 A36", "inch", []).size).toBe("C10X15.3");
  });
});

describe("10. the length of a bar that is cut up, or its greatest, beside a size that is refused", () => {
  reads([
    ["inch", `1 bar 304 rd 2" x 12' cut into 6 equal pieces`, "", "", ""],
    ["inch", '4140 rd 5" min 7-3/4" max 8" long', "", "", ""],
  ]);
});
