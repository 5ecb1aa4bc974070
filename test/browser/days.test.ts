import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { BrowserContext, Page } from "playwright-core";
import { addressOf } from "../../functions/formula/cellAddress";
import { openParts } from "../../functions/workbook/openParts";
import { readBook } from "../../functions/workbook/readBook";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { folder, recalc } from "../functions/workbook/fixture";
import { browserPath, openBrowser, watch, type Opened } from "./open";

/**
 * Three days at the page, by mouse and keyboard as a person has them, each ending with a saved file that recalc (the engine
 * without a page) finds right. Invented data.
 */

interface Cells {
  getRange(a: string): { activate(): void; getRawValue(): unknown; getValue(): unknown };
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): {
      getActiveSheet(): Cells;
      getSheetByName(name: string): Cells;
      setActiveSheet(s: Cells): void;
    };
  };
  print: () => void;
};

const cellsOf = (bytes: Uint8Array) =>
  new Map(
    readBook(openParts(bytes)).sheets.flatMap((s) =>
      s.cells.map((c) => [`${s.name}!${addressOf(c.row, c.column)}`, c] as const),
    ),
  );

describe.runIf(browserPath !== undefined && process.env["LONG"] !== undefined)("a day at the page", () => {
  let opened: Opened;
  let context: BrowserContext;
  let page: Page;
  let seen: ReturnType<typeof watch>;
  const dir = folder();

  beforeAll(async () => {
    opened = await openBrowser();
  });
  beforeEach(async () => {
    await context?.close();
    context = await opened.browser.newContext({ viewport: { width: 1440, height: 900 } });
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    page = await context.newPage();
    seen = watch(page);
    await page.goto(`${opened.origin}/`);
    await page.waitForSelector('#status[data-ready="yes"]');
  });
  afterAll(() => opened.close());

  /** F6 to the grid, the cell, its text. */
  const type = async (a1: string, text: string): Promise<void> => {
    await page.focus("#open");
    await page.keyboard.press("F6");
    await page.evaluate((at) => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
    await page.keyboard.type(text, { delay: 1 });
    await page.keyboard.press("Enter");
    await page.waitForTimeout(300);
  };
  const paste = async (a1: string, text: string): Promise<void> => {
    await page.focus("#open");
    await page.keyboard.press("F6");
    await page.evaluate((at) => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
    await page.evaluate((lines) => navigator.clipboard.writeText(lines), text);
    await page.keyboard.press("Control+V");
    await expect.poll(() => page.textContent("#book")).toMatch(/Pasted at/);
  };
  const show = async (name: string): Promise<void> => {
    await page.evaluate((n) => {
      const book = window.kerfsheetGrid.getActiveWorkbook();
      book.setActiveSheet(book.getSheetByName(n));
    }, name);
    await page.keyboard.press("Shift");
  };
  const value = (a1: string): Promise<unknown> =>
    page.evaluate((at) => {
      const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at);
      return cell.getRawValue() ?? cell.getValue();
    }, a1);
  /** To a button of the bar by keys alone. */
  const press = async (label: string): Promise<void> => {
    for (let i = 0; i < 5 && (await page.evaluate(() => document.activeElement?.id)) !== "open"; i += 1)
      await page.keyboard.press("F6");
    for (let i = 0; i < 6 && (await page.evaluate(() => document.activeElement?.textContent)) !== label; i += 1)
      await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
  };
  const download = async (act: () => Promise<unknown>): Promise<string> => {
    const [got] = await Promise.all([page.waitForEvent("download"), act()]);
    const path = join(dir, `${Math.floor(performance.now())}.xlsx`);
    await got.saveAs(path);
    return path;
  };
  const saved = async (): Promise<ReturnType<typeof cellsOf>> => {
    const file = await download(() => press("Save"));
    const run = recalc(file);
    expect(run.stdout).toMatch(/ 0 differ /);
    expect(run.status).toBe(0);
    expect(seen.problems).toEqual([]);
    return cellsOf(readFileSync(file));
  };

  it("the estimator: 40 lines out of a mail, one of them misspelt, priced, saved, and sent as values", async () => {
    const file = join(dir, "order.csv");
    writeFileSync(file, "size,material,length,wanted,pieces\n");
    await page.setInputFiles("#file", file);
    await expect.poll(() => page.textContent("#book")).toMatch(/^order\.xlsx/);
    const sizes = ["round 3", "round 4-1/2", "flat 6x1", "square 3", "tube 6x0.5"];
    const lines = Array.from({ length: 40 }, (_, i) =>
      [i === 11 ? "roud 7" : sizes[i % 5], ["1018", "4140", "A36", "304"][i % 4], 6 + (i % 3), "bi-metal", 5 + i].join(
        "\t",
      ),
    );
    await paste("A2", lines.join("\n"));
    const shop = '{"Units","inch";"Hourly cost",72;"Bi-metal price",180;"Bi-metal life",9000;"Stock length","20 ft"}';
    await type("F2", `=SAW.QUOTE(A2:A41,D2:D41,E2:E41,${shop},B2:B41,C2:C41,,"price line")`);
    await type("G2", '=COUNT(F2:F41)&" priced, "&(COUNTA(A2:A41)-COUNT(F2:F41))&" refused"');
    await type("H2", '=SUMIF(F2:F41,">0")');
    await expect.poll(() => value("G2"), { timeout: 20_000 }).toBe("39 priced, 1 refused");
    const total = Number(await value("H2"));
    const cells = await saved();
    const prices = Array.from({ length: 40 }, (_, i) => cells.get(`Lines!F${i + 2}`)!.value);
    expect(prices[11]).toMatch(/^#(VALUE!|N\/A)$/);
    expect(prices.filter((p): p is number => typeof p === "number").reduce((a, b) => a + b, 0)).toBeCloseTo(total, 6);
    const values = await download(async () => {
      await press("Send as values…");
      await page.waitForSelector("#ask-go");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
    });
    const sent = cellsOf(readFileSync(values));
    expect(sent.get("Lines!H2")!.value).toBeCloseTo(total, 9);
    expect([...sent.values()].filter((c) => c.formula !== undefined)).toEqual([]);
  });

  it("the buyer: an offer renamed and made dearer; table, curves and names follow", async () => {
    await show("Purchase");
    await type("A6", "north mill, carbide");
    await type("B6", "480");
    await show("Curves");
    await expect.poll(() => value("C5"), { timeout: 20_000 }).toBe("north mill, carbide");
    await expect
      .poll(() => page.locator("#charts .legend >> nth=0 >> li").allTextContents(), { timeout: 20_000 })
      .toContain("north mill, carbide");
    // By hand: 60 a saw hour, 10 in²/min, 7000 in², 12 minutes a change.
    expect(Number(await value("C13"))).toBeCloseTo(60 / (60 * 10) + (480 + (60 * 12) / 60) / 7000, 9);
    const cells = await saved();
    expect(cells.get("Purchase!A6")!.value).toBe("north mill, carbide");
    expect(cells.get("Curves!C5")!.value).toBe("north mill, carbide");
  });

  it("the engineer: 60 materials looked up, the card of a job printed on one page, a timed cut judged", async () => {
    await show("Cuts");
    const grades = builtInMaterials().slice(0, 60).map((m) => m.name);
    await paste("U2", grades.map((g) => `${g}\tx`).join("\n"));
    await type("W2", '=SAW.MATERIAL(U2:U61,"group")');
    await type("X2", '=SAW.CUTCHECK("round 7","17-4PH","bi-metal","2/3",95,30)');
    await expect.poll(async () => String((await value("W61")) ?? ""), { timeout: 20_000 }).not.toBe("");
    await show("Card");
    await type("B4", "round 5");
    await expect.poll(() => value("B4")).toBe("round 5");
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await press("Print this sheet");
    await expect.poll(() => page.textContent("#printed")).toMatch(/round 5/);
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length).toBe(1);
    const cells = await saved();
    const groups = grades.map((_, i) => cells.get(`Cuts!W${i + 2}`)!.value);
    expect(groups.every((g) => typeof g === "string" && !g.startsWith("#"))).toBe(true);
    expect(cells.get("Cuts!X2")!.value).toMatch(/[a-z]{3}/);
    expect(cells.get("Card!B4")!.value).toBe("round 5");
  });
});
