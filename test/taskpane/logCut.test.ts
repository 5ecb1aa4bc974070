import { beforeEach, describe, expect, it } from "vitest";
import { logCut, logTable } from "../../taskpane/views/logCut";
import { excelSheet } from "../../taskpane/sheet/office";
import { refusals } from "../../taskpane/sheet/refusals";
import { logRow, type Sheet } from "../../taskpane/sheet/sheet";
import { FakeBook, installFake, newSheet } from "./fakeExcel";

/** "Log this cut", against a fake of the Excel calls it makes; what Excel itself does is in docs/acceptance.md. */

let book: FakeBook;
let sheet: Sheet;
const heads = [
  "date",
  "saw",
  "blade number",
  "blade",
  "section",
  "material",
  "pitch",
  "band speed",
  "minutes",
  "leave out",
  "note",
];
beforeEach(() => {
  book = new FakeBook();
  installFake(book);
  sheet = excelSheet();
  book.sheets.set("Cuts", newSheet());
  heads.forEach((h, c) => book.put("Cuts", 4, c, h));
  book.tables.set(logTable, { sheet: "Cuts", row: 4, column: 0, rows: 1, columns: heads.length });
  ["round 7", "17-4PH", "bi-metal", "'2/3", 95, 30].forEach((t, c) => book.put("Sheet1", 1, c, t));
  book.select({ row: 1, column: 6 });
});
const check = (formula: string): void => book.set("Sheet1", 1, 6, { formula, value: "Leave it as it is: …" });
const logged = (row = 5) => heads.map((_, c) => book.get("Cuts", row, c).value);
const day = new Date(2026, 8, 1);

describe("log this cut", () => {
  it("adds the cut of a CUTCHECK as a row, each value under its heading, the pitch as text", async () => {
    check("=SAW.CUTCHECK(A2,B2,C2,D2,E2,F2)");
    expect(await logCut(sheet, day)).toBe("Logged as a new row of Cuts. To take it back, delete that row.");
    expect(logged()).toEqual([46266, "", "", "bi-metal", "round 7", "17-4PH", "2/3", 95, 30, "", ""]);
    await logCut(sheet, day);
    expect(logged(6)).toEqual(logged());
    expect(book.sheets.get("Sheet1")!.cells.size).toBe(7);
  });
  it("finds the saw by its place among the arguments, and reads literals", async () => {
    book.put("Sheet1", 9, 0, "Units");
    book.put("Sheet1", 9, 1, "inch");
    book.put("Sheet1", 10, 0, "Saw");
    book.put("Sheet1", 10, 1, "large");
    const { slots } = await import("../../functions/bind/slots");
    const { catalogue } = await import("../../functions/catalogue");
    const names = slots(catalogue.find((e) => e.name === "CUTCHECK")!).map((s) => s.name);
    const args = names.map((n) => ({ settings: "A10:B11", saw: '"large"' })[n] ?? "");
    check(`=SAW.CUTCHECK("round 4","A36","bi-metal","3/4",270,1.2,${args.slice(6).join(",")})`);
    expect(await logCut(sheet, day)).toMatch(/^Logged/);
    expect(logged().slice(1, 9)).toEqual(["large", "", "bi-metal", "round 4", "A36", "3/4", 270, 1.2]);
  });
  it("logs nothing but one cut that CUTCHECK can judge", async () => {
    for (const [formula, says] of [
      ["=SAW.CUTRATE(A2,B2,C2)", refusals.noCheck],
      ["=LEN(SAW.CUTCHECK(A2,B2,C2,D2,E2,F2))", refusals.noCheck],
      ["=SAW.CUTCHECK(A2:A3,B2,C2,D2,E2,F2)", refusals.noCheck],
      ["=SAW.CUTCHECK(A2,B2,C2,D2,E2,SUM(F2))", refusals.noCheck],
      ['=SAW.CUTCHECK(A2,B2,C2,D2,E2,"30")', "Not logged: minutes is text, not a number"],
    ] as const) {
      check(formula);
      expect(await logCut(sheet, day), formula).toBe(says);
    }
    expect(book.tables.get(logTable)!.rows).toBe(1);
  });
  it("says what is missing: the table, a column, permission", async () => {
    check("=SAW.CUTCHECK(A2,B2,C2,D2,E2,F2)");
    expect(logRow(["section", "Minutes "], new Map())).toBe(
      'The table has no column "material", so nothing was written.',
    );
    book.refuse = { call: "rows.add", code: "AccessDenied" };
    expect(await logCut(sheet, day)).toBe(refusals.protected("Cuts"));
    book.refuse = undefined;
    book.tables.clear();
    expect(await logCut(sheet, day)).toBe(refusals.noTable("Cuts"));
  });
});
