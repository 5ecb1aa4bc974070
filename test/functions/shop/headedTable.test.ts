import { describe, expect, it } from "vitest";
import { InputError } from "../../../src/errors";
import { CellError, type Range } from "../../../functions/kinds/cell";
import { readHeadedTable, readOffers } from "../../../functions/shop/headedTable";
import { sentence } from "../../../functions/kinds/sentence";

const across: Range = [
  ["Rate", "name", "PRICE", " Life "],
  [40, "A", 120, 30000],
  [55, "B", 260, 50000],
];
const turned = (range: Range): Range => range[0]!.map((_, c) => range.map((r) => r[c]!));
const said = (range: Range): string => {
  try {
    const [offer] = readOffers(range, 10, "offers");
    if (offer !== undefined && "refusal" in offer) return sentence(offer.refusal, "inch");
  } catch (error) {
    if (error instanceof InputError) return sentence(error, "inch");
    throw error;
  }
  return "";
};
const one = (labels: Range[0], values: Range[0]): Range => [labels, values];
const usual = ["price", "life", "rate"];

describe("a headed table", () => {
  it("is read with its labels across or down, in any order and case", () => {
    const read = readOffers(across, 10, "offers");
    expect(read).toEqual([
      { name: "A", price: 120, life: 30000, rate: 40, change: 10, kerf: 0, rebate: 0, rebateFrom: 1 },
      { name: "B", price: 260, life: 50000, rate: 55, change: 10, kerf: 0, rebate: 0, rebateFrom: 1 },
    ]);
    expect(readOffers(turned(across), 10, "offers")).toEqual(read);
  });

  it("leaves out blank rows and columns", () => {
    const wide = across.map((r) => [...r, null]);
    expect(readOffers([...wide, [null, "", null, null, null]], 10, "offers").length).toBe(2);
    expect(readOffers(turned([...wide, [null, "", null, null, null]]), 10, "offers").length).toBe(2);
  });

  it("keeps each record's place and cells by label", () => {
    expect(
      readHeadedTable(turned(across), ["rate", "name", "price", "life"], "t").map((r) => [
        r.where,
        r.cells.get("name"),
      ]),
    ).toEqual([
      ["column 2", "A"],
      ["column 3", "B"],
    ]);
  });

  it("refuses by name a label that is unknown or stands twice, a value without one, and a table without any", () => {
    expect(
      said([
        ["price", "live", "rate"],
        [1, 2, 3],
      ]),
    ).toMatch(/^offers: "live" is not a label of the table; it knows name, price/);
    expect(
      said([
        ["price", "life", "Price"],
        [1, 2, 3],
      ]),
    ).toBe('offers: "price" stands twice');
    expect(
      said([
        ["price", "life", "rate", null],
        [120, 30000, 40, 7],
      ]),
    ).toBe("offers: row 2 has a value without a label");
    expect(
      said([
        ["price", 7, "rate"],
        [1, 2, 3],
      ]),
    ).toMatch(/"a number" is not a label/);
    expect(
      said([
        [1, 2],
        [3, 4],
      ]),
    ).toMatch(/no label found in the first row or column/);
    expect(said([["price", "life", "rate"]])).toBe("offers holds labels but no offer");
  });
});

describe("an offer", () => {
  it("has a price, or a length and a price per foot: 15 ft 6 in at 8 is 124 (definition)", () => {
    const price = (length: string | number) =>
      readOffers(one(["length", "price per foot", "life", "rate"], [length, 8, 30000, 40]), 10, "offers").map(
        (offer) => ("price" in offer ? offer.price : 0),
      )[0]!;
    expect(price(15.5)).toBeCloseTo(124, 12);
    expect(price("15'-6\"")).toBeCloseTo(124, 12);
    expect(price("4.7244 m")).toBeCloseTo(124, 12);
    expect(price("186 in")).toBeCloseTo(124, 12);
    expect(price("186″")).toBeCloseTo(124, 12);
  });

  it("has its own change minutes and rebate, and goes by its place without a name", () => {
    expect(
      readOffers(one([...usual, "change minutes", "rebate", "rebate from"], [120, 30000, 40, 6, 0.1, 5]), 10, "offers"),
    ).toEqual([{ name: "row 2", price: 120, life: 30000, rate: 40, change: 6, kerf: 0, rebate: 0.1, rebateFrom: 5 }]);
  });

  it.each([
    [
      "no price",
      one(["life", "rate"], [30000, 40]),
      "offers: row 2 gives no price, nor both length and price per foot",
    ],
    [
      "a length alone",
      one(["length", "life", "rate"], [15, 30000, 40]),
      "offers: row 2 gives no price, nor both length and price per foot",
    ],
    [
      "a length of 186 in as a bare number",
      one(["length", "price per foot", "life", "rate"], [186, 8, 30000, 40]),
      "offers: length 186 of row 2 needs its unit: write it as 15 ft, 186 in or 4720 mm",
    ],
    [
      "a length as text without a unit",
      one(["length", "price per foot", "life", "rate"], ["15.5", 8, 30000, 40]),
      "offers: length 15.5 of row 2 needs its unit: write it as 15 ft, 186 in or 4720 mm",
    ],
    [
      "a length as a fraction without a unit",
      one(["length", "price per foot", "life", "rate"], ["15-1/2", 8, 30000, 40]),
      "offers: length 15-1/2 of row 2 needs its unit: write it as 15 ft, 186 in or 4720 mm",
    ],
    [
      "two prices",
      one([...usual, "price per foot"], [120, 30000, 40, 8]),
      "offers: row 2 gives a price and a price per foot; give one",
    ],
    ["no life", one(usual, [120, null, 40]), "offers: row 2 gives no life"],
    ["a rate of 0", one(usual, [120, 30000, 0]), "offers: row 2 gives no rate"],
    ["text", one(usual, ["cheap", 30000, 40]), "offers: price of row 2 is text, not a number"],
    ["a money sign", one(usual, ["€385,00", 30000, 40]), "offers: price of row 2 is text, €385,00: write 385"],
    [
      "thousands",
      one(usual, ["1,250.50 USD", 30000, 40]),
      "offers: price of row 2 is text, 1,250.50 USD: write 1250.50",
    ],
    [
      "1.500, which may be two numbers",
      one(usual, ["1.500", 30000, 40]),
      "offers: price of row 2 is text, not a number",
    ],
    ["a negative life", one(usual, [120, -30000, 40]), "offers: life of row 2 must be more than 0; it is -30000"],
    [
      "a price out of range",
      one(usual, [1e13, 30000, 40]),
      "offers: price of row 2 must be at most 1000000000000; it is 10000000000000",
    ],
    [
      "a rebate in per cent",
      one([...usual, "rebate"], [120, 30000, 40, 10]),
      "offers: rebate of row 2 must be at most 0.99; it is 10",
    ],
    [
      "a rebate of nothing",
      one([...usual, "rebate from"], [120, 30000, 40, 5]),
      "offers: row 2 says rebate from, but no rebate",
    ],
    ["an error", one(usual, [120, 30000, new CellError("#REF!")]), "offers: rate of row 2 is #REF!"],
    [
      "life and rate swapped",
      one(usual, [120, 40, 30000]),
      "offers row 2: the rate is not less than the life; the three cells are price, life, rate, in that order",
    ],
  ])("with %s is refused by row and label", (_, range, text) => {
    expect(said(range)).toBe(text);
  });
});
