import { beforeEach, describe, expect, it } from "vitest";
import { valuesName } from "../../taskpane/sheet/address";
import { callsIn } from "../../taskpane/sheet/callsIn";
import { limits, listUses } from "../../taskpane/views/listUses";
import { excelSheet } from "../../taskpane/sheet/office";
import { refusals } from "../../taskpane/sheet/refusals";
import type { Sheet } from "../../taskpane/sheet/sheet";
import { FakeBook, installFake, newSheet } from "./fakeExcel";
import { hostileTexts } from "./injection";

/** The workbook's tab against a fake of the Excel calls it makes; what Excel itself does is in docs/acceptance.md. */

let book: FakeBook;
let sheet: Sheet;
beforeEach(() => {
  book = new FakeBook();
  installFake(book);
  sheet = excelSheet();
});

describe("our functions in a formula", () => {
  const names = (formula: string): string[] => callsIn(formula).map((c) => c.name);
  it.each([
    ["=SAW.AREA(A1)", ["AREA"]],
    ["=saw.Area(A1)", ["AREA"]],
    ["=@SAW.AREA(A1)", ["AREA"]],
    ["=_xldudf_SAW_CUTRATE(A1,B1,C1)", ["CUTRATE"]],
    ["=IF(A1>0,ROUND(SAW.MASS(A1,B1,C1),2),SAW.AREA(A1))", ["MASS", "AREA"]],
    ["=SAW.CUTTIME(A1,SAW.CUTRATE(A1,B1,C1))", ["CUTRATE", "CUTTIME"]],
    ['=SAW.AREA("a "" SAW.MASS(1) b")', ["AREA"]],
    ['="SAW.AREA("&A1&")"', []],
    ["='SAW.AREA(1)'!A1", []],
    ["=SUM(Table1[SAW.AREA(in²)])", []],
    ["=MYSAW.AREA(A1)", []],
    ["=SAW_AREA(A1)", []],
    ["=SAW.AREA", []],
    ["SAW.AREA(A1)", []],
    ["", []],
  ])("%s", (formula, found) => {
    expect(names(formula)).toEqual(found);
  });

  it("are cut at their own commas, and known as the whole formula or a part", () => {
    expect(callsIn('=SAW.BREAKEVEN({180,600,3}, {420,1500;10}, "a,b" ,MAX(1,2),)')).toEqual([
      { name: "BREAKEVEN", args: ["{180,600,3}", "{420,1500;10}", '"a,b"', "MAX(1,2)", ""], whole: true },
    ]);
    expect(callsIn("=SAW.AREA(A1)*2")[0]!.whole).toBe(false);
    expect(callsIn("=2*SAW.AREA(A1)")[0]!.whole).toBe(false);
    expect(callsIn("=@SAW.VERSION()")).toEqual([{ name: "VERSION", args: [""], whole: true }]);
  });

  it("never take long or fail, whatever stands in the cell", () => {
    for (const text of [
      ...hostileTexts,
      `=SAW.AREA(${"(".repeat(5000)}`,
      `=SAW.AREA(${'"'.repeat(4999)}`,
      `=SAW.${"[".repeat(5000)}`,
      `=SAW.A(${"'".repeat(4999)}`,
      ")".repeat(5000),
    ]) {
      // The quickest of three, by the processor: the machine is shared.
      const times = [1, 2, 3].map(() => {
        const before = process.cpuUsage();
        expect(Array.isArray(callsIn(text))).toBe(true);
        return process.cpuUsage(before).user / 1000;
      });
      expect(Math.min(...times)).toBeLessThan(500);
    }
  });
});

/** Two sheets: an order list in which three cells are in error, and one that only looks as if it used us. */
const fill = (): void => {
  for (const [r, size] of ["round 7", "roud 7", "roud 7", "W12x50"].entries()) {
    book.put("Sheet1", 4 + r, 1, size);
    book.set("Sheet1", 4 + r, 2, {
      formula: `=SAW.AREA(B${5 + r})`,
      value: size.startsWith("roud") ? "#VALUE!" : 38.5,
    });
    book.set("Sheet1", 4 + r, 3, { formula: `=ROUND(_xldudf_SAW_AREA(B${5 + r}),1)`, value: 1 });
  }
  book.set("Sheet1", 8, 2, { formula: '=SAW.CUTTIME("round 7",2.14)', value: "#NAME?" });
  book.sheets.set("Other", newSheet());
  book.put("Other", 0, 0, "'=SAW.AREA(A1)");
  book.set("Other", 1, 0, { formula: '="SAW.AREA("', value: "SAW.AREA(" });
  book.set("Other", 2, 0, { formula: "=1/0", value: "#DIV/0!" });
  book.set("Other", 3, 0, { formula: "#N/A", value: "#N/A" });
};

describe("the list", () => {
  const list = (): ReturnType<typeof listUses> => listUses(sheet, () => undefined);

  it("counts the cells with our functions, not those that only name them, and writes nothing", async () => {
    fill();
    book.written.clear();
    const uses = await list();
    expect(uses).toMatchObject({
      cells: 9,
      wrong: 3,
      unread: "",
      functions: [
        ["AREA", 8],
        ["CUTTIME", 1],
      ],
    });
    expect(book.written.size).toBe(0);
  });

  it("gathers the errors by their sentence, most cells first, each with its place", async () => {
    fill();
    const { groups } = await list();
    expect(groups.map(([, places]) => places.map(({ sheet: on, row, column }) => [on, row, column]))).toEqual([
      [
        ["Sheet1", 5, 2],
        ["Sheet1", 6, 2],
      ],
      [["Sheet1", 8, 2]],
    ]);
    expect(groups[0]![0]).toMatch(/did you mean "round"/);
    expect(groups[1]![0]).toMatch(/enter the cell again/);
  });

  it.each([
    ["shows its own value as its formula", "#VALUE!"],
    ["shows the formula of the first cell", "=SAW.AREA(B1:B3)"],
  ])("finds the cell in error of a spilled column, where a spilled cell %s", async (_, formula) => {
    for (const [r, size] of ["round 7", "roud 7", "round 3"].entries()) book.put("Sheet1", r, 1, size);
    book.set("Sheet1", 0, 2, { formula: "=SAW.AREA(B1:B3)", value: 38.5 });
    book.set("Sheet1", 1, 2, { formula, value: "#VALUE!" });
    book.sheets.get("Sheet1")!.spills.set("1,2", "0,2");
    const { wrong, groups } = await list();
    expect(wrong).toBe(1);
    expect(groups).toEqual([
      [expect.stringMatching(/did you mean "round"/), [expect.objectContaining({ row: 1, column: 2 })]],
    ]);
  });

  it("is empty and says nothing of what was not read in an empty workbook", async () => {
    expect(await list()).toEqual({
      cells: 0,
      wrong: 0,
      groups: [],
      stuck: new Map(),
      functions: [],
      unread: "",
      hidden: new Set(),
    });
  });

  it("reads a long sheet in blocks, and counts every row once", async () => {
    for (let r = 3; r < 30_003; r += 1) book.set("Sheet1", r, 0, { formula: `=SAW.AREA("round ${r}")`, value: r });
    const told: string[] = [];
    const uses = await listUses(sheet, (text) => told.push(text));
    expect(uses.cells).toBe(30_000);
    expect(told).toEqual(["Reading Sheet1, from row 1 …", "Reading Sheet1, from row 20,004 …"]);
  });

  it("stops at its limit and says from where on nothing was read", async () => {
    const { cells } = limits;
    limits.cells = 4;
    try {
      fill();
      const uses = await list();
      expect(uses.unread).toBe(
        "Only the first 15 cells were read: Other from row 1 on, and the sheets after it, were not.",
      );
      expect(uses.cells).toBe(9);
    } finally {
      limits.cells = cells;
    }
  });

  it("looks for so many reasons and says so of the rest", async () => {
    for (let r = 0; r < limits.reasons + 3; r += 1)
      book.set("Sheet1", r, 0, { formula: "=SAW.AREA(Z99)", value: "#VALUE!" });
    const { wrong, groups } = await list();
    expect(wrong).toBe(limits.reasons + 3);
    expect(
      groups.map(([sentence, places]) => [/section is empty|first 400 cells/.exec(sentence)?.[0], places.length]),
    ).toEqual([
      ["section is empty", limits.reasons],
      ["first 400 cells", 3],
    ]);
  });

  it("says where the sheet cannot tell what spills, and which sheets are hidden", async () => {
    fill();
    book.sheets.get("Other")!.hidden = true;
    const blind: Sheet = {
      ...sheet,
      block: async (name, from) => ({ ...(await sheet.block(name, from)), spills: undefined }),
    };
    const uses = await listUses(blind, () => undefined);
    expect([uses.unread, [...uses.hidden]]).toEqual([
      expect.stringMatching(/does not tell which formula spills/),
      ["Other"],
    ]);
  });

  it("fails plainly when a sheet is taken away meanwhile", async () => {
    book.refuse = { call: "used.load", code: "ItemNotFound" };
    await expect(list()).rejects.toThrow(refusals.gone("Sheet1"));
  });
});

describe("a cell is gone to", () => {
  it("on its own sheet", async () => {
    fill();
    await sheet.go({ sheet: "Other", row: 2, column: 0 });
    expect(book.selection).toMatchObject({ sheet: "Other", row: 2, column: 0 });
  });
  it("or in one sentence why not", async () => {
    await expect(sheet.go({ sheet: "None", row: 0, column: 0 })).rejects.toThrow(refusals.gone("None"));
  });
});

describe("the name of a copy", () => {
  it("says what it is, is free, and has 31 characters at most (Excel's limit)", () => {
    expect(valuesName("Quote", ["Quote"])).toBe("Quote values");
    expect(valuesName("Quote", ["quote VALUES", "Quote values 2"])).toBe("Quote values 3");
    const long = "a".repeat(31);
    const first = valuesName(long, [long]);
    expect([first.length, first.endsWith(" values")]).toEqual([31, true]);
    expect(valuesName(long, [long, first])).toMatch(/^a{22} values 2$/);
    expect(valuesName(`${"a".repeat(23)}\u{1F600}`, [])).toBe(`${"a".repeat(23)} values`);
  });
});

describe("a sheet copied as values", () => {
  beforeEach(() => {
    book.sheets.set("Quote", newSheet());
    const at = book.sheets.get("Quote")!;
    book.set("Quote", 1, 1, { formula: "size", value: "size", format: "@" });
    book.set("Quote", 2, 1, { formula: "=1+1", value: "=1+1", format: "@" });
    book.set("Quote", 2, 2, { formula: "=SAW.AREA(B3)", value: 38.5, format: "0.0" });
    book.set("Quote", 3, 2, { formula: "=SAW.AREA(B4)", value: "#VALUE!" });
    book.set("Quote", 3, 1, { formula: "3/4", value: "3/4", format: "@" });
    at.widths.set(1, 120);
    at.comments.push("dear");
    book.written.clear();
  });
  const copyOf = (name: string) =>
    [...book.sheets.get(name)!.cells].map(([k, { formula, value, format }]) => [k, formula, value, format]).sort();

  it("has its values, formats and widths in the same places, no formula, and nothing else", async () => {
    expect(await sheet.copyValues("Quote")).toEqual({ did: "copied", name: "Quote values", errors: 1, unseen: 0 });
    expect(copyOf("Quote values").filter(([, f]) => f !== "")).toEqual([
      ["1,1", "size", "size", "@"],
      ["2,1", "=1+1", "=1+1", "@"],
      ["2,2", 38.5, 38.5, "0.0"],
      ["3,1", "3/4", "3/4", "@"],
      ["3,2", "#VALUE!", "#VALUE!", undefined],
    ]);
    const made = book.sheets.get("Quote values")!;
    expect([made.widths.get(1), made.widths.get(2), made.comments, made.rules]).toEqual([120, 48, [], []]);
    expect([...book.sheets.keys()].at(-1)).toBe("Quote values");
  });

  it("is made without one write to the sheet itself", async () => {
    const before = structuredClone(book.sheets.get("Quote"));
    await sheet.copyValues("Quote");
    expect([...book.written]).toEqual(["Quote values"]);
    expect(book.sheets.get("Quote")).toEqual(before);
  });

  it("leaves hidden rows and columns out, and counts their cells", async () => {
    const at = book.sheets.get("Quote")!;
    at.hiddenRows.add(2);
    expect(await sheet.copyValues("Quote")).toMatchObject({ did: "copied", unseen: 2 });
    expect(
      copyOf("Quote values")
        .filter(([, f]) => f !== "")
        .map(([k, f]) => [k, f]),
    ).toEqual([
      ["1,1", "size"],
      ["2,1", "3/4"],
      ["2,2", "#VALUE!"],
    ]);
    at.hiddenColumns.add(1);
    expect(await sheet.copyValues("Quote")).toMatchObject({ name: "Quote values 2", unseen: 4 });
    expect(book.sheets.get("Quote values 2")!.widths.get(1)).toBe(48);
  });

  it("may be a sheet of one cell, and a hidden one", async () => {
    book.sheets.set("One", { ...newSheet(), hidden: true });
    book.set("One", 4, 4, { formula: "=SAW.VERSION()", value: "0.1.0" });
    expect(await sheet.copyValues("One")).toEqual({ did: "copied", name: "One values", errors: 0, unseen: 0 });
    expect(copyOf("One values").filter(([, f]) => f !== "")).toEqual([["4,4", "0.1.0", "0.1.0", undefined]]);
  });

  it("is refused plainly: protected structure, an empty sheet, all hidden, gone, an Excel that is too old", async () => {
    const names = [...book.sheets.keys(), "Empty"];
    book.sheets.set("Empty", newSheet());
    expect(await sheet.copyValues("Empty")).toEqual({
      did: "refused",
      why: refusals.notCopied("Empty", refusals.empty),
    });
    expect(await sheet.copyValues("None")).toEqual({
      did: "refused",
      why: refusals.notCopied("None", refusals.gone("None")),
    });
    for (const r of [1, 2, 3]) book.sheets.get("Quote")!.hiddenRows.add(r);
    expect(await sheet.copyValues("Quote")).toMatchObject({
      did: "refused",
      why: refusals.notCopied("Quote", refusals.empty),
    });
    book.sheets.get("Quote")!.hiddenRows.clear();
    book.structure = true;
    expect(await sheet.copyValues("Quote")).toEqual({
      did: "refused",
      why: refusals.notCopied("Quote", refusals.structure),
    });
    book.structure = false;
    book.api = 11;
    expect(await sheet.copyValues("Quote")).toEqual({ did: "refused", why: refusals.older });
    expect([...book.sheets.keys()]).toEqual(names);
    expect(book.written.size).toBe(0);
  });

  it.each([
    "worksheets.load",
    "used.load",
    "structure.load",
    "getColumnProperties",
    "special Visible",
    "worksheets.add",
    "copyFrom Values",
    "copyFrom Formats",
    "columnWidth",
    "clearAll",
    "special Formulas",
  ])("leaves nothing behind when %s is refused", async (call) => {
    const names = [...book.sheets.keys()];
    for (const [code, why] of [
      ["ItemAlreadyExists", refusals.clash],
      ["InvalidOperationInCellEditMode", refusals.editing],
      ["GeneralException", refusals.unknown("GeneralException")],
    ] as const) {
      book.refuse = { call, code };
      expect(await sheet.copyValues("Quote")).toEqual({ did: "refused", why: refusals.notCopied("Quote", why) });
      expect([...book.sheets.keys()]).toEqual(names);
    }
  });

  it("is taken away again if a formula came along", async () => {
    book.formulasStick = true;
    const names = [...book.sheets.keys()];
    expect(await sheet.copyValues("Quote")).toEqual({
      did: "refused",
      why: refusals.notCopied("Quote", refusals.stillFormula),
    });
    expect([...book.sheets.keys()]).toEqual(names);
  });

  it("says so when what is half-made cannot be taken away", async () => {
    const { delete: gone } = book.sheets;
    book.refuse = { call: "clearAll", code: "GeneralException" };
    Object.assign(book.sheets, {
      delete: () => {
        throw new Error("no");
      },
    });
    expect(await sheet.copyValues("Quote")).toEqual({ did: "refused", why: refusals.leftover("Quote values") });
    Object.assign(book.sheets, { delete: gone });
  });
});
