import { describe, expect, it } from "vitest";
import { sizeTokens } from "../../src/size/sizeTokens";
import { sizeUnits } from "../../src/size/sizeUnits";
import { refusal } from "../section/fixture";

const read = (text: string, unit: "inch" | "metric", family?: "in" | "mm") =>
  sizeUnits(
    sizeTokens(text).filter(({ kind }) => kind === "number"),
    "bar",
    family,
    unit,
  );

describe("sizeUnits (order of the rules: common practice)", () => {
  it.each([
    ["6 in x 20 mm", "metric", undefined, [152.4, 20]],
    ["6 x 1 in", "metric", undefined, [152.4, 25.4]],
    ["5 cm", "inch", undefined, [50]],
    ["2 1/2", "metric", undefined, [63.5]],
    ["4 x 1/2", "metric", "mm", [101.6, 12.7]],
    ["100 x 5", "inch", "mm", [100, 5]],
    ["6 x 1", "inch", undefined, [152.4, 25.4]],
    ["60 x 10", "metric", undefined, [60, 10]],
  ] as const)("%s, default %s, family %s", (text, unit, family, mm) => {
    expect(read(text, unit, family).list.map((dimension) => dimension.mm)).toEqual(
      mm.map((each) => expect.closeTo(each, 9) as number),
    );
  });
  it("says the unit of the first number", () => {
    expect(read("60 x 10", "metric").unit).toBe("mm");
    expect(read("6 x 1", "inch").unit).toBe("in");
    expect(read("6 in x 20 mm", "metric").unit).toBe("in");
    expect(read("5 cm x 1 in", "inch").unit).toBe("mm");
  });
  it("an assumed unit is noted, a written or implied one is not", () => {
    expect(read("6", "inch").notes).toEqual(["inches assumed"]);
    expect(read("60", "metric").notes).toEqual(["millimetres assumed"]);
    expect(read("6 in", "metric").notes).toEqual([]);
    expect(read("1/2", "metric").notes).toEqual([]);
  });
  it.each([
    ["80", "inch", "over 30 in) and no unit is written: write the unit, 80 in or 80 mm"],
    ["31x2", "inch", "write the unit"],
    ["100x1/2", "metric", "over 60 in"],
    ["3", "metric", "a bar of 3 mm is unlikely"],
    ["9x3", "metric", "a bar of 9 mm is unlikely"],
    ["180", "inch", '180 in (4572 mm) is too big for a saw; add "mm" if the size is metric'],
    ["4001 mm", "inch", "a bar of 4001 mm is too big for a saw"],
    ["2-1/2 mm", "inch", "fractions are only read as inches"],
    ["0.05 mm", "inch", "too small"],
  ] as const)("%s, default %s, is refused: %s (limits are judgement)", (text, unit, part) => {
    expect(refusal(() => read(text, unit)).sentence).toContain(part);
  });
  it.each([
    ["30", "inch"],
    ["6", "metric"],
    ["80 in", "inch"],
    ["3 mm", "metric"],
  ] as const)("%s, default %s, passes", (text, unit) => {
    expect(read(text, unit).list).toHaveLength(1);
  });
});
