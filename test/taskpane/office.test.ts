import { beforeEach, describe, expect, it } from "vitest";
import { explain } from "../../taskpane/views/explain";
import { excelSheet } from "../../taskpane/sheet/office";
import { refusals } from "../../taskpane/sheet/refusals";
import type { Contents, Order, Sheet } from "../../taskpane/sheet/sheet";
import { FakeBook, installFake, newSheet } from "./fakeExcel";
import { hostileTexts } from "./injection";

/** The pane's side of Excel against a fake of the calls it makes; what Excel itself does is on the manual sheet. */

let book: FakeBook;
let sheet: Sheet;
const order = (cells: Contents, more: Partial<Order> = {}): Order => ({
  at: { sheet: "Sheet1", row: 6, column: 2 },
  cells,
  overwrite: false,
  ...more,
});

beforeEach(() => {
  book = new FakeBook();
  installFake(book);
  sheet = excelSheet();
});

describe("the selection", () => {
  it("is where the user is, with the rows above it", async () => {
    book.put("Sheet1", 3, 0, "size");
    book.put("Sheet1", 6, 0, "round 7");
    const at = await sheet.selected();
    expect(at).toMatchObject({ sheet: "Sheet1", row: 6, column: 2, rows: 1, columns: 1, areas: 1, value: "" });
    expect(at.around).toEqual({ top: 0, values: [[""], [""], [""], ["size"], [""], [""], ["round 7"]] });
  });

  it("reads one cell and at most 61 rows of a whole column", async () => {
    book.put("Sheet1", 0, 0, "size");
    book.selection = { sheet: "Sheet1", row: 0, column: 0, rows: 1_048_576, columns: 1, areas: 1 };
    expect((await sheet.selected()).around.values).toHaveLength(1);
    book.selection = { ...book.selection, row: 500, rows: 1 };
    expect((await sheet.selected()).around.values).toHaveLength(61);
  });

  it("counts several areas instead of failing", async () => {
    book.selection = { ...book.selection, areas: 3 };
    expect((await sheet.selected()).areas).toBe(3);
  });

  it("tells when it changes", async () => {
    let told = 0;
    await sheet.onSelect(() => {
      told += 1;
    });
    book.select({ row: 9 });
    expect(told).toBe(1);
  });

  it("tells nothing, and reads nothing, while the pane is closed; once when it shows again", async () => {
    let told = 0;
    await sheet.onSelect(() => {
      told += 1;
      void sheet.selected();
    });
    for (const tell of book.visibility) tell({ visibilityMode: "Hidden" });
    const syncs = book.syncs;
    book.select({ row: 9 });
    book.select({ row: 10 });
    expect([told, book.syncs]).toEqual([0, syncs]);
    for (const tell of book.visibility) tell({ visibilityMode: "Taskpane" });
    book.select({ row: 11 });
    expect(told).toBe(2);
  });
});

describe("why a cell holds an error", () => {
  const why = async (formula: string, value = "#VALUE!"): Promise<string> =>
    explain({ ...(await sheet.selected()), formula, value }, sheet);
  beforeEach(() => {
    for (const [c, text] of ["roud 7", "17-4PH", "bi-metal"].entries()) book.put("Sheet1", 6, c, text);
    book.names.set("Shop", "='Sheet1'!$A$20:$B$21");
    book.set("Sheet1", 8, 0, { formula: "=NA()", value: "#N/A" });
    for (const [r, row] of [
      ["Units", "inch"],
      ["Hourly cots", 70],
    ].entries())
      row.forEach((v, c) => book.put("Sheet1", 19 + r, c, v));
  });

  it.each([
    ["=SAW.CUTRATE(A7,B7,C7)", /did you mean "round"/],
    ["=SAW.CUTRATE($A$7, 'Sheet1'!B7 ,C7)", /did you mean "round"/],
    ['=SAW.CUTRATE("round 7","1.4302",C7)', /not in the material table/],
    ['=SAW.CUTRATE("round 7",B7,C7,,Shop)', /Hourly cots/],
    ["=SAW.AREA(Z99)", /section is empty/],
    ["=SAW.AREA(LOWER(A7))", /formula of its own/],
    ["=SAW.AREA(A:A)", /whole column/],
    ["=_xldudf_SAW_AREA(A7)", /did you mean "round"/],
    ["=saw.area(A7)", /did you mean "round"/],
    ["=ROUND(SAW.AREA(A7),1)", /^SAW\.AREA in it: .*did you mean "round"/],
    ["=SAW.CUTTIME(A7,SAW.CUTRATE(A7,B7,C7))", /^SAW\.CUTRATE in it: .*did you mean "round"/],
    ['=SAW.AREA("round 7")/0', /rest of the formula/],
    ['=SAW.AREA("round 7")', /gives something else: the cell is out of date/],
    ["=SAW.AREA(#REF!)", /has been deleted/],
    ["=SAW.NOSUCH(A7)", /no function NOSUCH/],
    ["=SAW.AREA(A9)", /#N\/A comes from a cell that it reads/],
  ])("%s", async (formula, says) => {
    expect(await why(formula)).toMatch(says);
  });

  it("does not explain one error by another", async () => {
    expect(await why("=SAW.AREA(A7)", "#N/A")).toMatch(/out of date/);
  });

  it.each([
    ["#NAME?", /Once the add-in is there, enter the cell again/],
    ["#SPILL!", /do not fit/],
    ["#BUSY!", /still waits/],
    ["#GETTING_DATA", /still waits/],
  ])("of Excel's own %s", async (value, says) => {
    expect(await why('=SAW.AREA("round 7")', value)).toMatch(says);
  });

  it("reads the cells of the formula's own sheet, wherever the user is, and the spilled cell that is meant", async () => {
    book.sheets.set("Bill's list", newSheet());
    for (const [r, text] of ["round 1", "roud 2", "round 3"].entries()) book.put("Bill's list", r, 0, text);
    const at = { formula: "=SAW.AREA(A1:A3)", value: "#VALUE!", sheet: "Bill's list" };
    expect(await explain({ ...at, offset: [1, 0] }, sheet)).toMatch(/did you mean "round"/);
    expect(await explain({ ...at, offset: [2, 0] }, sheet)).toMatch(/out of date/);
  });

  it("says nothing of a cell that is right, or of another formula; and plainly when the cells cannot be read", async () => {
    expect(await why("=SAW.AREA(A7)", "38.5")).toBe("");
    expect(await why("=SUM(A7)")).toBe("");
    book.refuse = undefined;
    const at = { ...(await sheet.selected()), formula: "=SAW.AREA(A7)", value: "#VALUE!" };
    book.refuse = { call: "getRange", code: "ItemNotFound" };
    expect(await explain(at, sheet)).toMatch(/not read here/);
  });

  it("reads with one sync", async () => {
    const at = { ...(await sheet.selected()), formula: "=SAW.CUTRATE(A7,B7,C7)", value: "#VALUE!" };
    book.syncs = 0;
    await explain(at, sheet);
    expect(book.syncs).toBe(1);
  });
});

describe("writing", () => {
  it("puts numbers, text and formulas where they were ordered, with one sync to look and one to write", async () => {
    expect(await sheet.write(order([[1.5, { text: "304" }, { formula: "=SAW.AREA(A7)" }]]))).toEqual({
      did: "written",
    });
    expect([2, 3, 4].map((c) => book.get("Sheet1", 6, c).formula)).toEqual([1.5, "304", "=SAW.AREA(A7)"]);
    expect(book.syncs).toBe(2);
  });

  it.each(hostileTexts.map((t) => [t]))("keeps %j as text", async (text) => {
    await sheet.write(order([[{ text }]]));
    expect(book.get("Sheet1", 6, 2)).toEqual({ formula: text, value: text });
  });

  it("has 50 such texts", () => {
    expect(new Set(hostileTexts).size).toBe(50);
  });

  it("asks before it writes over something, and only then does", async () => {
    book.put("Sheet1", 7, 2, "=A1*2");
    const cells = [[{ text: "a" }], [{ text: "b" }]];
    expect(await sheet.write(order(cells))).toEqual({ did: "occupied", address: "C8", holds: "=A1*2" });
    expect(book.get("Sheet1", 6, 2).value).toBe("");
    expect(await sheet.write(order(cells, { overwrite: true }))).toEqual({ did: "written" });
    expect(book.get("Sheet1", 7, 2).value).toBe("b");
  });

  it("takes a 0 and FALSE for something", async () => {
    book.put("Sheet1", 6, 2, 0);
    expect(await sheet.write(order([[1]]))).toMatchObject({ did: "occupied", holds: "0" });
    book.put("Sheet1", 6, 2, false);
    expect(await sheet.write(order([[1]]))).toMatchObject({ did: "occupied", holds: "false" });
  });

  it("names what it writes, with the next free name", async () => {
    book.names.set("SHOP", "=x");
    expect(
      await sheet.write(
        order(
          [
            [1, 2],
            [3, 4],
          ],
          { name: "Shop" },
        ),
      ),
    ).toEqual({ did: "written", name: "Shop_2" });
    expect(book.names.get("Shop_2")).toBe("='Sheet1'!$C$7:$D$8");
  });

  it("answers plainly on a protected sheet, and writes into its unlocked cells", async () => {
    const at = book.sheets.get("Sheet1")!;
    at.protected = true;
    expect(await sheet.write(order([[1]]))).toEqual({ did: "refused", why: refusals.protected("Sheet1") });
    at.unlocked = true;
    expect(await sheet.write(order([[1]]))).toEqual({ did: "written" });
  });

  it("answers plainly when the block does not fit, or its sheet is gone", async () => {
    expect(await sheet.write(order([[1], [2]], { at: { sheet: "Sheet1", row: 1_048_575, column: 0 } }))).toEqual({
      did: "refused",
      why: refusals.outside,
    });
    expect(await sheet.write(order([[1]], { at: { sheet: "Other", row: 0, column: 0 } }))).toEqual({
      did: "refused",
      why: refusals.gone("Other"),
    });
  });
});

describe("undo", () => {
  it("puts back formulas, numbers and text as they were, and takes the name away", async () => {
    for (const [c, typed] of [
      [2, "=A1*2"],
      [3, 7],
      [4, "'3/4"],
      [5, "'=1+1"],
    ] as const)
      book.put("Sheet1", 6, c, typed);
    const before = [2, 3, 4, 5].map((c) => book.get("Sheet1", 6, c));
    await sheet.write(order([[1, 2, 3, 4]], { overwrite: true, name: "Shop" }));
    expect(book.names.size).toBe(1);
    expect(await sheet.undo()).toEqual({ did: "written" });
    expect([2, 3, 4, 5].map((c) => book.get("Sheet1", 6, c))).toEqual(before);
    expect(book.names.size).toBe(0);
    expect(await sheet.undo()).toEqual({ did: "refused", why: refusals.nothing });
  });
});

describe("a refusal of each call", () => {
  const reading = [
    "getSelectedRanges",
    "areas.load",
    "range.load",
    "used.load",
    "getUsedRangeOrNullObject",
    "getRangeByIndexes",
    "getCell",
  ];
  it.each(reading)("reading: %s", async (call) => {
    book.refuse = { call, code: "InvalidSelection" };
    await expect(sheet.selected()).rejects.toThrow(refusals.noCell);
    book.refuse = { call, code: "Surprise" };
    await expect(sheet.selected()).rejects.toThrow(refusals.unknown("Surprise"));
  });

  const writing = [
    "getItem",
    "getRangeByIndexes",
    "protection.load",
    "range.load",
    "names.load",
    "range.formulas",
    "names.add",
  ];
  it.each(writing)("writing: %s", async (call) => {
    for (const [code, why] of [
      ["AccessDenied", refusals.protected("Sheet1")],
      ["InvalidOperationInCellEditMode", refusals.editing],
      ["GeneralException", refusals.unknown("GeneralException")],
    ] as const) {
      book.refuse = { call, code };
      expect(await sheet.write(order([[1]], { name: "Shop" }))).toEqual({ did: "refused", why });
    }
    expect(book.get("Sheet1", 6, 2).value).toBe("");
  });

  it.each(["getItem", "range.formulas", "range.numberFormat", "names.delete"])(
    "undo: %s; it can be tried again",
    async (call) => {
      await sheet.write(order([[1]], { name: "Shop" }));
      book.refuse = { call, code: "InvalidOperationInCellEditMode" };
      expect(await sheet.undo()).toEqual({ did: "refused", why: refusals.editing });
      book.refuse = undefined;
      expect(await sheet.undo()).toEqual({ did: "written" });
    },
  );

  it("listening", async () => {
    book.refuse = { call: "onSelectionChanged.add", code: "Surprise" };
    await expect(sheet.onSelect(() => undefined)).rejects.toThrow("Surprise");
  });
});
