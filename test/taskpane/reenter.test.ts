import { beforeEach, describe, expect, it } from "vitest";
import { excelSheet } from "../../taskpane/sheet/office";
import type { Sheet } from "../../taskpane/sheet/sheet";
import { typedFormula } from "../../taskpane/sheet/typedFormula";
import { listUses } from "../../taskpane/views/listUses";
import { reenterAll } from "../../taskpane/views/reenterView";
import { FakeBook, installFake, newSheet } from "./fakeExcel";

/** Cells stuck at #NAME? (forms quoted from Excel-saved files in public threads), typed again through a fake of Excel's calls. */

let book: FakeBook;
let sheet: Sheet;
beforeEach(() => {
  book = new FakeBook();
  installFake(book);
  sheet = excelSheet();
});

const going = { say: () => undefined, stopped: () => false };

describe("a formula as it is typed", () => {
  it.each([
    ["=SAW.AREA(A1)", "=SAW.AREA(A1)"],
    ["=_xldudf_SAW_AREA(A1)", "=SAW.AREA(A1)"],
    ["=[2]!_xldudf_SAW_AREA(A1)", "=SAW.AREA(A1)"],
    ["='C:\\add ins\\kerf.xlam'!_xldudf_SAW_CUTRATE(A1,B1,C1)", "=SAW.CUTRATE(A1,B1,C1)"],
    ["=ROUND(_xldudf_SAW_MASS(A1,B1,'Sheet 2'!C1),2)", "=ROUND(SAW.MASS(A1,B1,'Sheet 2'!C1),2)"],
    ['=IF(A1="_xldudf_SAW_AREA(",1,2)', '=IF(A1="_xldudf_SAW_AREA(",1,2)'],
  ])("%s", (kept, typed) => {
    expect(typedFormula(kept)).toBe(typed);
  });
});

describe("stuck cells", () => {
  const stick = (name: string, rows: number): void => {
    for (let r = 0; r < rows; r += 1)
      book.set(name, r, 0, { formula: r % 2 === 0 ? "=SAW.AREA(B1)" : "=[2]!_xldudf_SAW_AREA(B1)", value: "#NAME?" });
  };

  it("are found by sheet, and only those of our functions", async () => {
    stick("Sheet1", 3);
    book.set("Sheet1", 4, 0, { formula: "=OTHER.THING(B1)", value: "#NAME?" });
    book.set("Sheet1", 5, 0, { formula: "=SAW.AREA(B9)", value: "#VALUE!" });
    const { stuck } = await listUses(sheet, () => undefined);
    expect([...stuck]).toEqual([["Sheet1", [0, 1, 2].map((row) => ({ row, column: 0, formula: "=SAW.AREA(B1)" }))]]);
  });

  it("are typed again, thousands of them with progress", async () => {
    stick("Sheet1", 1200);
    const { stuck } = await listUses(sheet, () => undefined);
    const said: string[] = [];
    expect(await reenterAll(sheet, stuck, { say: (t) => said.push(t), stopped: () => false })).toBe(
      "1,200 cells re-entered.",
    );
    expect(said).toEqual([1, 501, 1001].map((n) => `Re-entering Sheet1, cell ${n.toLocaleString("en-US")} of 1,200 …`));
    expect(book.get("Sheet1", 1, 0).formula).toBe("=SAW.AREA(B1)");
  });

  it("of a protected sheet are left as they are, and the sheet is named", async () => {
    book.sheets.set("Locked", newSheet());
    stick("Sheet1", 1);
    stick("Locked", 2);
    const { stuck } = await listUses(sheet, () => undefined);
    book.sheets.get("Locked")!.protected = true;
    expect(await reenterAll(sheet, stuck, going)).toMatch(
      /^1 cell re-entered\. Locked was skipped: Locked is protected/,
    );
    expect(book.get("Locked", 1, 0).formula).toBe("=[2]!_xldudf_SAW_AREA(B1)");
  });

  it("stop when the person says so", async () => {
    stick("Sheet1", 1200);
    const { stuck } = await listUses(sheet, () => undefined);
    let asked = 0;
    const told = await reenterAll(sheet, stuck, { say: () => undefined, stopped: () => (asked += 1) > 1 });
    expect(told).toBe("500 cells re-entered. Stopped; the others are as they were.");
  });
});
