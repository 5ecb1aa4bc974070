import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import type { CellValue } from "../../functions/workbook/book";
import { addressOf } from "../../functions/formula/cellAddress";
import { openParts } from "../../functions/workbook/openParts";
import { packParts, patchBook } from "../../functions/workbook/patchBook";
import { readBook } from "../../functions/workbook/readBook";
import { bookParts, folder, recalc, zip } from "../functions/workbook/fixture";
import { enterCell } from "./enter";
import { browserPath, openTryit } from "./open";

/** One's own workbook in the try-it page: opened, edited, saved, opened again. */

interface Range {
  getRawValue(): unknown;
  getValue(): unknown;
  getFormula(): string;
  setValue(v: unknown): void;
  getCellData(): { custom?: { sentence?: string } } | null;
  activate(): void;
  clearContent(): void;
}
interface Sheet {
  getRange(a: string): Range;
  activate(): void;
  getSheetName(): string;
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): {
      getActiveSheet(): Sheet;
      getSheetByName(name: string): Sheet;
      getSheets(): Sheet[];
      save(): { sheets: unknown };
    };
    executeCommand(id: string, params?: unknown): Promise<boolean>;
  };
};

const values = (bytes: Uint8Array): Map<string, CellValue> =>
  new Map(
    readBook(openParts(bytes)).sheets.flatMap((s) =>
      s.cells.map((c) => [`${s.name}!${addressOf(c.row, c.column)}`, c.value] as const),
    ),
  );
const formulas = (bytes: Uint8Array): Map<string, string> =>
  new Map(
    readBook(openParts(bytes)).sheets.flatMap((s) =>
      s.cells
        .filter((c) => c.formula !== undefined)
        .map((c) => [`${s.name}!${addressOf(c.row, c.column)}`, c.formula!.text] as const),
    ),
  );

describe.runIf(browserPath !== undefined)("a workbook opened in the try-it page", () => {
  let opened: Awaited<ReturnType<typeof openTryit>>;
  let page: Page;
  const dir = folder();

  beforeAll(async () => {
    opened = await openTryit();
    ({ page } = opened);
  });
  afterAll(() => opened.close());

  const note = () => page.textContent("#book");
  const open = async (file: string) => {
    const unsaved = (await page.textContent("#unsaved")) !== "";
    await page.evaluate(() => {
      document.getElementById("book")!.textContent = "";
    });
    await page.setInputFiles("#file", file);
    if (unsaved) await page.click("#ask-leave");
    await page.waitForFunction(
      () =>
        !/^$|Reading/.test(document.getElementById("book")!.textContent!) &&
        document.getElementById("status")!.dataset["ready"] === "yes",
    );
  };
  const save = async (): Promise<Uint8Array> => {
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    const path = join(dir, `saved-${Math.floor(performance.now())}.xlsx`);
    await download.saveAs(path);
    return readFileSync(path);
  };
  const enter = (sheet: string, a1: string, content: unknown) => enterCell(page, sheet, a1, content);
  const value = (sheet: string, a1: string) =>
    page.evaluate(
      ([name, at]) => {
        const cell = window.kerfsheetGrid.getActiveWorkbook().getSheetByName(name!).getRange(at!);
        return cell.getRawValue() ?? cell.getValue();
      },
      [sheet, a1] as const,
    );

  it("opened and saved untouched, a sample has the same parts, byte for byte", async () => {
    await open("docs/samples/estimate.xlsx");
    expect(await note()).toMatch(/^estimate\.xlsx: 3 sheets, \d+ formulas\. Pictures are not shown here/);
    const [before, after] = [openParts(readFileSync("docs/samples/estimate.xlsx")), openParts(await save())];
    expect(await note()).toMatch(/0 cells changed/);
    for (const [path, part] of Object.entries(before)) expect(Buffer.compare(after[path]!, part), path).toBe(0);
  });

  it("one input changed: only its dependants change, and recalc finds nothing", async () => {
    const original = readFileSync("docs/samples/estimate.xlsx");
    const parts = openParts(original);
    const book = readBook(parts);
    const estimate = book.sheets.find((s) => s.name === "Estimate")!;
    const pieces = estimate.cells.find(
      (c) => c.column === 4 && typeof c.value === "number" && c.formula === undefined,
    )!;
    const at = addressOf(pieces.row, pieces.column);
    // What must follow, by the other way: the input put into the file, and the file recalculated.
    const byHand = join(dir, "by-hand.xlsx");
    writeFileSync(
      byHand,
      packParts(
        patchBook(
          parts,
          new Map([[estimate.part, [{ row: pieces.row, column: pieces.column, value: Number(pieces.value) + 7 }]]]),
        ),
      ),
    );
    const wanted = new Set(
      recalc(byHand)
        .stdout.split("\n")
        .filter((l) => l.includes("\t"))
        .map((l) => l.split("\t")[0]!),
    );
    await enter("Estimate", at, Number(pieces.value) + 7);
    const saved = await save();
    const [before, after] = [values(original), values(saved)];
    const changed = new Set([...after].filter(([cell, v]) => before.get(cell) !== v).map(([cell]) => cell));
    expect(changed).toEqual(new Set([`Estimate!${at}`, ...wanted]));
    expect(wanted.size).toBeGreaterThan(3);
    expect(formulas(saved)).toEqual(formulas(original));
    const file = join(dir, "edited.xlsx");
    writeFileSync(file, saved);
    expect(recalc(file).status).toBe(0);
  }, 120_000);

  it("a page loaded anew opens what was saved", async () => {
    await page.reload();
    await page.waitForSelector('#status[data-ready="yes"]');
    await open(join(dir, "edited.xlsx"));
    const saved = values(readFileSync(join(dir, "edited.xlsx")));
    for (const cell of ["F5", "G5", "H5"]) expect(await value("Estimate", cell)).toBe(saved.get(`Estimate!${cell}`));
  });

  it("an error is explained in the page and in the pane", async () => {
    await open("test/data/books/openpyxl.xlsx");
    expect(await value("Quote lines", "D6")).toBe("#VALUE!");
    await page.evaluate(() => {
      window.kerfsheetGrid.getActiveWorkbook().getSheetByName("Quote lines").getRange("D6").activate();
    });
    await page.keyboard.press("Shift");
    await expect.poll(() => page.textContent("#explain")).toMatch(/D6 is #VALUE!: .*did you mean "round"/);
    await expect
      .poll(() =>
        page
          .frames()
          .find((f) => f.url().endsWith("/pane.html"))!
          .textContent("body"),
      )
      .toMatch(/did you mean "round"/);
  });

  it("a shared formula's leader and a spill written over: the rest stands on its own", async () => {
    await open("test/data/books/exceljs.xlsx");
    await enter("Blätter", "D2", 40);
    const shared = await save();
    expect(formulas(shared).get("Blätter!D2")).toBeUndefined();
    expect([3, 4, 5].map((r) => formulas(shared).get(`Blätter!D${r}`))).toEqual(
      [3, 4, 5].map((r) => `SAW.AREA($A${r})`),
    );
    const file = join(dir, "shared.xlsx");
    writeFileSync(file, shared);
    expect(recalc(file).stdout).toMatch(/ 0 differ /);
    await open("test/data/books/xlsxwriter.xlsx");
    await enter("Cuts & costs", "F2", 1);
    const spilt = await save();
    expect(["F2", "F3", "F4"].map((c) => values(spilt).get(`Cuts & costs!${c}`) ?? null)).toEqual([1, null, null]);
    writeFileSync(file, spilt);
    expect(recalc(file).stdout).toMatch(/ 0 differ /);
  });

  it("a cell typed into a spill keeps its value, the spill says that its place is taken, and clears up", async () => {
    await open("test/data/books/xlsxwriter.xlsx");
    await enter("Cuts & costs", "F3", "mine");
    expect(await value("Cuts & costs", "F2")).toBe("#SPILL!");
    const blocked = await save();
    // The format has no #SPILL!: it is kept as #VALUE!, and the formula as one that fills no other cell.
    expect(["F2", "F3", "F4"].map((c) => values(blocked).get(`Cuts & costs!${c}`) ?? null)).toEqual([
      "#VALUE!",
      "mine",
      null,
    ]);
    const file = join(dir, "blocked.xlsx");
    writeFileSync(file, blocked);
    expect(recalc(file).stdout).toMatch(/ 0 differ /);
    await open(file);
    expect(await value("Cuts & costs", "F3")).toBe("mine");
    await page.evaluate(() => {
      window.kerfsheetGrid.getActiveWorkbook().getSheetByName("Cuts & costs").getRange("F3").clearContent();
    });
    await expect.poll(() => value("Cuts & costs", "F2")).toBeCloseTo(12.566, 3);
    expect(values(await save()).get("Cuts & costs!F3")).toBeCloseTo(9, 6);
  });

  it("a typed formula, one that fills cells, text that looks like a date, and an emptied cell are kept", async () => {
    await open("test/data/books/libreoffice.xlsx");
    await enter("Shop floor", "F1", { f: '=SAW.CUTTIME("round 7",2.14)' });
    await enter("Shop floor", "G1", { f: "=SAW.AREA(A1:A2)" });
    await enter("Shop floor", "H1", { f: '=SAW.PITCH("round 4","D2","bi-metal")' });
    await enter("Shop floor", "D2", { v: null, f: null });
    const saved = await save();
    const [v, f] = [values(saved), formulas(saved)];
    expect([f.get("Shop floor!F1"), f.get("Shop floor!G1"), v.get("Shop floor!H1"), v.get("Shop floor!D2")]).toEqual([
      'SAW.CUTTIME("round 7",2.14)',
      "SAW.AREA(A1:A2)",
      "3/4",
      undefined,
    ]);
    expect(v.get("Shop floor!G2")).toBeCloseTo(6, 9);
    const file = join(dir, "typed.xlsx");
    writeFileSync(file, saved);
    expect(recalc(file).stdout).toMatch(/ 0 differ /);
  });

  it("formulas that nobody knows here keep their value, and the page says which", async () => {
    const file = join(dir, "foreign.xlsx");
    writeFileSync(
      file,
      zip(
        bookParts({
          One: '<row r="1"><c r="A1"><f>_xldudf_OTHER_PRICE(3)</f><v>5</v></c><c r="B1"><f>A1*2</f><v>10</v></c></row>',
        }),
      ),
    );
    await open(file);
    expect(await note()).toMatch(/One cell keeps the last value: One!A1 calls OTHER_PRICE/);
    expect([await value("One", "A1"), await value("One", "B1")]).toEqual([5, 10]);
    expect(formulas(await save()).get("One!A1")).toBe("OTHER_PRICE(3)");
  });

  it("a file that is no workbook is refused in a sentence, and what is open stays", async () => {
    const file = join(dir, "prices.xlsx");
    writeFileSync(file, "size,price\n");
    await open(file);
    expect(await note()).toBe("prices.xlsx is not an .xlsx workbook.");
    expect(await value("One", "B1")).toBe(10);
  });

  it("rows, columns and sheets are not added, taken away or moved: each is refused before it happens", async () => {
    const before = await page.evaluate(() => JSON.stringify(window.kerfsheetGrid.getActiveWorkbook().save().sheets));
    const row = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 4, rangeType: 1 };
    const column = { startRow: 0, endRow: 4, startColumn: 0, endColumn: 0, rangeType: 2 };
    const to = { startRow: 3, endRow: 3, startColumn: 0, endColumn: 4, rangeType: 1 };
    for (const [id, params] of [
      ["insert-row", { range: row, direction: 0 }],
      ["insert-row-before", undefined],
      ["insert-row-after", undefined],
      ["insert-multi-rows-above", { value: 1 }],
      ["insert-multi-rows-after", { value: 1 }],
      ["insert-row-by-range", { range: row, direction: 0 }],
      ["insert-col", { range: column, direction: 2 }],
      ["insert-col-before", undefined],
      ["insert-col-after", undefined],
      ["insert-multi-cols-before", { value: 1 }],
      ["insert-multi-cols-right", { value: 1 }],
      ["insert-range-move-down", { range: row }],
      ["insert-range-move-right", { range: column }],
      ["delete-range-move-left", { range: row }],
      ["delete-range-move-up", { range: row }],
      ["remove-row", { range: row }],
      ["remove-col", { range: column }],
      ["remove-row-by-range", { range: row }],
      ["remove-col-by-range", { range: column }],
      ["move-rows", { fromRange: row, toRange: to }],
      ["move-range", { fromRange: row, toRange: to }],
      ["insert-sheet", undefined],
      ["remove-sheet", undefined],
      ["copy-sheet", undefined],
      ["set-worksheet-name", { name: "Mine" }],
    ] as const) {
      await page.evaluate(() => (document.getElementById("book")!.textContent = ""));
      await page.evaluate(
        ([name, given]) =>
          window.kerfsheetGrid.executeCommand(`sheet.command.${name as string}`, given).catch(() => undefined),
        [id, params] as const,
      );
      await expect.poll(note, { message: id }).toMatch(/here only cells are saved/);
    }
    expect(await page.evaluate(() => JSON.stringify(window.kerfsheetGrid.getActiveWorkbook().save().sheets))).toBe(
      before,
    );
    const saved = await save();
    expect([values(saved).get("One!A1"), values(saved).get("One!B1")]).toEqual([5, 10]);
  });

  it("a dropped file opens", async () => {
    const bytes = [...readFileSync("test/data/books/sheetjs.xlsx")];
    await page.evaluate((data) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(data)], "dropped.xlsx"));
      document
        .getElementById("grid")!
        .dispatchEvent(new DragEvent("drop", { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }, bytes);
    await expect.poll(note).toMatch(/^dropped\.xlsx: 1 sheet, 4 formulas/);
  });

  it("every sample can be downloaded by a link of the page; nothing was asked of another machine, and no policy broken", async () => {
    const files = readdirSync("docs/samples").filter((f) => f.endsWith(".xlsx"));
    const links = page.locator(".files a[download]");
    const linked = await links.evaluateAll((all) => all.map((a) => [a.textContent, (a as HTMLAnchorElement).href]));
    expect(linked.sort()).toEqual(
      files.sort().map((f) => [f.replace(".xlsx", ""), `${opened.origin}/tryit/samples/${f}`]),
    );
    for (const [, href] of linked) {
      const response = await page.request.get(href!);
      expect(Buffer.compare(await response.body(), readFileSync(`docs/samples/${href!.split("/").pop()!}`))).toBe(0);
    }
    expect([
      ...new Set(opened.seen.requests.filter((u) => !u.startsWith("blob:")).map((u) => new URL(u).origin)),
    ]).toEqual([opened.origin]);
    expect(opened.seen.problems).toEqual([]);
  });
});
