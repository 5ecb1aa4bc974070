import { describe, expect, it } from "vitest";
import { outlineArea } from "../../src/section/outlineArea";
import { readSection } from "../../src/section/readSection";
import { rolledRow } from "../../src/size/rolledRow";
import { rolledShape } from "../../src/size/rolledShape";
import { sectionStack } from "../../src/section/sectionStack";
import { fixture } from "../section/fixture";

// L3X3X3/16 has 1.36 % with its toe radius whole, 0.188 in on a thickness of 0.1875 in; cut to the thickness it has 1.37 %.
/** Greatest deviation of the outline's area from the published one [%]: by a separate program, from toe and fillet radii that the standards leave open. */
const most = new Map(
  Object.entries({
    W: 0.73,
    M: 0.94,
    HP: 0.7,
    S: 0.87,
    C: 0.49,
    MC: 1.19,
    L: 1.37,
    WT: 0.73,
    "IPE-750": 0.27,
    "IPE-V": 0.09,
    "IPE-O": 0.29,
    IPE: 0.57,
    "IPE-A": 0.38,
    "IPE-AA": 0.51,
    "HE-x": 0.11,
    HEM: 0.3,
    HEB: 0.38,
    HEA: 0.47,
    HEAA: 0.5,
    HEC: 0.37,
    IPN: 0.33,
    UB: 0.46,
    UC: 0.36,
    UPN: 0.36,
    UPE: 0.3,
    PFC: 0.14,
    "L-EN": 0.41,
    "L-EU": 1.07,
  }),
);
const rows = fixture("rolled.csv");
const families = [...new Set(rows.map(([, family]) => family!))];

describe("every row of every table", () => {
  it("1,541 rows in 28 families", () => {
    expect(rows).toHaveLength(1541);
    expect(families.sort()).toEqual([...most.keys()].sort());
  });
  it.each(families)(
    "%s: read by its designation, published area kept, outline within the family's known deviation",
    (family) => {
      for (const [, , designation, other, h, b, area, unit] of rows.filter(([, name]) => name === family)) {
        const section = readSection(designation!, unit === "in" ? "metric" : "inch");
        const [scale, square] = unit === "in" ? [25.4, 645.16] : [1, 100];
        const outline = outlineArea(section.outline!);
        if (area !== "") {
          expect(section.pieceArea / square / Number(area)).toBeCloseTo(1, 12);
          expect(Math.abs(outline / square / Number(area) - 1) * 100, designation).toBeLessThan(
            most.get(family)! + 0.006,
          );
        }
        if (other !== "") expect(readSection(other!, "inch").text).toBe(section.text);
        if (family.startsWith("L")) continue; // heel up: the height is not a leg
        const { height, width } = sectionStack(section);
        const [lying, along] = family === "WT" ? [h, b] : [b, h];
        expect([height / scale, width / scale]).toEqual([
          expect.closeTo(Number(lying), 9),
          expect.closeTo(Number(along), 9),
        ]);
      }
    },
  );
});

describe("rolledShape (flange taper: DIN 1025-1, DIN 1026-1; American 1/6, from memory, confirmed by the areas)", () => {
  it.each([
    ["UPN", "200", 0.08, 11.5 - (0.08 * 8.5) / 2],
    ["UPN", "400", 0.05, 18],
    ["IPN", "200", 0.14, 11.3 - (0.14 * 7.5) / 4],
    ["C", "12x20.7", 1 / 6, 0.501 * 25.4],
    ["HEB", "200", 0, 15],
  ])("%s %s: slope %d, mean flange %d mm", (name, key, slope, flange) => {
    const { shape } = rolledShape(rolledRow(name, key)!);
    expect(shape).toMatchObject({ slope, flange: expect.closeTo(flange, 9) });
  });
  it("C12x20.7 has flanges of 0.723 in at the root and 0.280 in at the tip (seen in a mill handbook; rounded there)", () => {
    const { shape } = rolledShape(rolledRow("C", "12x20.7")!);
    if (shape.kind !== "channel") throw new Error("not a channel");
    const fall = (shape.slope * (shape.width - shape.web)) / 2;
    expect((shape.flange + fall) / 25.4).toBeCloseTo(0.723, 2);
    expect((shape.flange - fall) / 25.4).toBeCloseTo(0.28, 2);
  });
  it("a WT has the flange and web of its W", () => {
    expect(rolledShape(rolledRow("WT", "6x25")!).shape).toMatchObject({
      kind: "tee",
      width: 8.08 * 25.4,
      web: 0.37 * 25.4,
      depth: 6.1 * 25.4,
    });
  });
  it("an angle without a published area has none (mill size)", () => {
    expect(rolledShape(rolledRow("L", "50x30x4")!).area).toBeUndefined();
  });
});
