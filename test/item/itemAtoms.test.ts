import { describe, expect, it } from "vitest";
import { itemAtoms } from "../../src/item/itemAtoms";

const cut = (line: string): string =>
  itemAtoms(line)
    .map(({ kind, text }) => `${kind[0]!}:${text}`)
    .join(" ");

describe("atoms of a line (common practice, no source)", () => {
  it.each([
    ["W12X50", "w:w n:12 x:x n:50"],
    ["2x2x.120", "n:2 x:x n:2 x:x n:.120"],
    ["12FT", "n:12 w:ft"],
    [`8'-6"`, `n:8 m:' m:- n:6 m:"`],
    ["1 1/4 RD", "n:1 1/4 w:rd"],
    ["1018 1/2", "n:1018 n:1/2"],
    ["42CrMo4+QT", "c:42crmo4+qt"],
    ["6061-T6 T651", "c:6061-t6 c:t651"],
    ["C10 x 20", "w:c n:10 x:x n:20"],
    ["C10 RD", "c:c10 w:rd"],
    ["S420 L6000 D50", "c:s420 w:l n:6000 w:dia n:50"],
    ["SQT 60x4", "w:square tube n:60 x:x n:4"],
    ["(10) (A36)", "c:(10) c:a36"],
    ["304/304L", "c:304/304l"],
    ["3odx.25w", "n:3 w:od x:x n:.25 w:w"],
    ["RD, 3,5 mm;", "w:rd n:3,5 w:mm"],
    ["65-45-12", "c:65-45-12"],
    ["xs XXS", "w:xs w:xxs"],
    ["Ø50", "w:dia n:50"],
    ["4140 DIA.", "n:4140 w:dia"],
    ["3 o.d. x 2 i.d.", "n:3 w:od x:x n:2 w:id"],
    ["3 o/d .25 w/t", "n:3 w:od n:.25 w:wt"],
    ["a.f. 17", "w:af n:17"],
    // Only the point behind one letter opens an abbreviation.
    ["ab.cd 3", "w:ab w:cd n:3"],
    ["10x round", "n:10 x:x w:round"],
    ["odx3", "w:od x:x n:3"],
    // "ex works" and "ex 6 m" are no E behind which an x stands.
    ["ex 6 m", "w:ex n:6 w:m"],
    ["1 1/4", "n:1 1/4"],
    ["12 1/4", "n:12 1/4"],
    ["123 1/4", "n:123 n:1/4"],
    ["1-1/4", "n:1-1/4"],
    ["(123456)", "c:(123456)"],
    ["(1234567)", "n:1234567"],
    ["[3] {4} |5|", "n:3 n:4 n:5"],
    ["3;4,5", "n:3 n:4,5"],
    ["round 50.", "w:round n:50"],
    ["round 50.:", "w:round n:50 m:. m::"],
    ["xyz9+qt", "c:xyz9+qt"],
    ["w9+l", "c:w9+l"],
    ["1234m2", "c:1234m2"],
    ["6000m 600-m", "n:6000 w:m n:600 m:- w:m"],
    ["sus999 st9876 sts4567a", "c:sus999 c:st9876 c:sts4567a"],
    // A whole number and a fraction are one number; a number and two grades are not.
    ["3 304/316", "n:3 c:304/316"],
    ["3 1/4", "n:3 1/4"],
    ["qty: 5", "w:qty m:: n:5"],
    ["", ""],
  ])("%s", (line, atoms) => {
    expect(cut(line)).toBe(atoms);
  });
  it("keeps what was typed and whether a space stood before", () => {
    expect(itemAtoms("Stück RD3").map(({ typed, spaced }) => [typed, spaced])).toEqual([
      ["Stück", true],
      ["RD", true],
      ["3", false],
    ]);
  });
});
