import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compactDesignation } from "../../src/material/compactDesignation";

describe("compactDesignation (rules: common practice, no source)", () => {
  it.each([
    ["X5CrNi18-10", "X5CRNI1810"],
    ["17-4 PH", "174PH"],
    ["17-4", "17-4"],
    ["65 45 12", "65-45-12"],
    ["1.4301", "1.4301"],
    ["1,4301", "1.4301"],
    ["AlZn5,5MgCu", "ALZN5.5MGCU"],
    ["W.-Nr. 1.4301", "WNR1.4301"],
    ["ASTM A572 Gr. 50", "ASTMA57250"],
    ["A500 GR B", "A500B"],
    ["A500 GRB", "A500B"],
    ["A48 Class 30", "A4830"],
    ["Grey iron", "GREYIRON"],
    ["42CrMo4+QT", "42CRMO4QT"],
    ["304/304L", "304304L"],
    ["  ", ""],
    ["Ⅳ－１", "IV1"],
    ["45#", "GB45"],
    ["45 # steel", "GB45STEEL"],
    ["＃45", "45"],
    ["steel 45#", "STEELGB45"],
    ["3..4", "3-4"],
    ["17 .4", "17-4"],
    ["A.36", "A36"],
  ])("%s becomes %s", (text, form) => {
    expect(compactDesignation(text)).toBe(form);
  });

  it("keeps apart what differs in more than separators: digits and letters come out as they went in", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z0-9]{1,12}$/), (text) => {
        expect(compactDesignation(text)).toBe(text);
      }),
      { seed: 1 },
    );
  });

  it("is its own fixed point", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 40 }), (text) => {
        const form = compactDesignation(text);
        expect(compactDesignation(form)).toBe(form);
      }),
      { seed: 2, examples: [["x GR 5"], ["1..2"], ["a.1"]] },
    );
  });
});
