import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { BrowserContext, Page } from "playwright-core";
import { addressOf } from "../../functions/formula/cellAddress";
import { openParts } from "../../functions/workbook/openParts";
import { readBook } from "../../functions/workbook/readBook";
import { folder, recalc } from "../functions/workbook/fixture";
import { browserPath, openBrowser, watch, type Opened } from "./open";

/** Nothing is lost: the page's own workbook and any other is saved, drafted, offered on return, and asked about before it goes. */

const cellsOf = (bytes: Uint8Array) =>
  new Map(
    readBook(openParts(bytes)).sheets.flatMap((s) =>
      s.cells.map((c) => [`${s.name}!${addressOf(c.row, c.column)}`, c] as const),
    ),
  );

describe.runIf(browserPath !== undefined && process.env["LONG"] !== undefined)("work on the try-it page", () => {
  let opened: Opened;
  let context: BrowserContext;
  let page: Page;
  let seen: ReturnType<typeof watch>;
  const dir = folder();

  const goTo = async (spoil?: () => void): Promise<void> => {
    page = await context.newPage();
    seen = watch(page);
    if (spoil !== undefined) await page.addInitScript(spoil);
    await page.goto(`${opened.origin}/`);
    await page.waitForSelector('#status[data-ready="yes"]');
  };
  const fresh = async (spoil?: () => void): Promise<void> => {
    await context?.close();
    context = await opened.browser.newContext({ viewport: { width: 1500, height: 900 } });
    await goTo(spoil);
  };
  beforeAll(async () => {
    opened = await openBrowser();
    await fresh();
  });
  afterAll(() => opened.close());

  /** As a person does: a click into the grid, the cell, its text. */
  const type = async (a1: string, text: string): Promise<void> => {
    await page.mouse.click(700, 600);
    await page.evaluate((at) => {
      const grid = (window as never as { kerfsheetGrid: never }).kerfsheetGrid as {
        getActiveWorkbook(): { getActiveSheet(): { getRange(a: string): { activate(): void } } };
      };
      grid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  };
  const value = (a1: string): Promise<unknown> =>
    page.evaluate((at) => {
      const grid = (window as never as { kerfsheetGrid: never }).kerfsheetGrid as {
        getActiveWorkbook(): { getActiveSheet(): { getRange(a: string): { getRawValue(): unknown } } };
      };
      return grid.getActiveWorkbook().getActiveSheet().getRange(at).getRawValue();
    }, a1);
  const download = async (act: () => Promise<unknown>): Promise<string> => {
    const [got] = await Promise.all([page.waitForEvent("download"), act()]);
    const path = join(dir, `${Math.floor(performance.now())}.xlsx`);
    await got.saveAs(path);
    return path;
  };
  const unsaved = (): Promise<string | null> => page.textContent("#unsaved");
  const drafted = (): Promise<void> => expect.poll(unsaved, { timeout: 20_000 }).toMatch(/draft is kept/);

  it("nothing is unsaved before anything was typed", async () => {
    await page.waitForTimeout(2500);
    expect(await unsaved()).toBe("");
  });

  it("saves the page's own workbook, and recalc finds every value right", async () => {
    await type("E5", "31");
    expect(await unsaved()).toMatch(/Not saved/);
    const file = await download(() => page.click("#save"));
    expect(await unsaved()).toBe("");
    const cells = cellsOf(readFileSync(file));
    expect(cells.get("Estimate!E5")?.value).toBe(31);
    expect(cells.get("Estimate!G5")?.value).toBeGreaterThan(0);
    const run = recalc(file);
    expect(run.stdout).toMatch(/ 0 differ /);
    expect(run.status).toBe(0);
  });

  it("offers a draft after a reload, and gives back what was typed", async () => {
    await type("E5", "77");
    await drafted();
    await page.reload();
    await page.waitForSelector('#status[data-ready="yes"]');
    await expect.poll(() => page.textContent("#drafts"), { timeout: 20_000 }).toMatch(/kerfsheet\.xlsx/);
    expect(await value("E5")).toBe(30);
    await page.click("text=Open the draft");
    await expect.poll(() => value("E5"), { timeout: 20_000 }).toBe(77);
    await expect.poll(() => page.textContent("#drafts"), { timeout: 20_000 }).toBe("");
    await drafted();
    const file = await download(() => page.click("#save"));
    expect(cellsOf(readFileSync(file)).get("Estimate!E5")?.value).toBe(77);
    expect(recalc(file).stdout).toMatch(/ 0 differ /);
    await page.reload();
    await page.waitForSelector('#status[data-ready="yes"]');
    await page.waitForTimeout(500);
    expect(await page.textContent("#drafts")).toBe("");
  });

  it("asks before another file takes the place of unsaved work; staying, leaving and saving do what they say", async () => {
    await type("E5", "41");
    await page.setInputFiles("#file", "docs/samples/process.xlsx");
    await page.click("#ask-stay");
    expect(await value("E5")).toBe(41);
    await page.setInputFiles("#file", "docs/samples/process.xlsx");
    const file = await download(() => page.click("#ask-save"));
    expect(cellsOf(readFileSync(file)).get("Estimate!E5")?.value).toBe(41);
    await expect.poll(() => page.textContent("#book")).toMatch(/^process\.xlsx/);
    await type("A1", "mine");
    await page.setInputFiles("#file", "docs/samples/estimate.xlsx");
    await page.click("#ask-leave");
    await expect.poll(() => page.textContent("#book")).toMatch(/^estimate\.xlsx/);
    await page.reload();
    await page.waitForSelector('#status[data-ready="yes"]');
    await expect.poll(() => page.textContent("#drafts"), { timeout: 20_000 }).toMatch(/process\.xlsx/);
    await page.click("text=Throw it away");
    await expect.poll(() => page.textContent("#drafts"), { timeout: 20_000 }).toBe("");
  });

  it("asks before the page is left with unsaved work, and not without", async () => {
    const asked: string[] = [];
    page.on("dialog", (d) => {
      asked.push(d.type());
      void d.accept();
    });
    await page.reload();
    expect(asked).toEqual([]);
    await page.waitForSelector('#status[data-ready="yes"]');
    await type("E5", "12");
    await page.reload();
    expect(asked).toEqual(["beforeunload"]);
  });

  it.each([
    [
      "full",
      /its storage is full/,
      () => {
        IDBObjectStore.prototype.put = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
      },
    ],
    [
      "refused",
      /lets this page store nothing/,
      () => {
        Object.defineProperty(window, "indexedDB", {
          get: () => {
            throw new DOMException("no", "SecurityError");
          },
        });
      },
    ],
  ] as const)("says so where the browser's storage is %s, and works on", async (_, says, spoil) => {
    await fresh(spoil);
    await type("E5", "55");
    await expect.poll(unsaved, { timeout: 20_000 }).toMatch(says);
    const file = await download(() => page.click("#save"));
    expect(cellsOf(readFileSync(file)).get("Estimate!E5")?.value).toBe(55);
    expect(seen.problems).toEqual([]);
  });

  it("opens a .csv file as values: 2/3 stays text, a text that begins with = is no formula", async () => {
    await fresh();
    const file = join(dir, "lines.csv");
    writeFileSync(file, '\uFEFFsize,pitch,pieces\r\n"flat 6"" x 1""",2/3,12\r\nround 7,=1+1,007\r\n');
    await page.setInputFiles("#file", file);
    await expect.poll(() => page.textContent("#book")).toMatch(/^lines\.xlsx: 1 sheet, 0 formulas/);
    expect(await page.textContent("#status")).toBe("no formula to calculate");
    expect(await Promise.all(["A2", "B2", "C2", "B3", "C3"].map(value))).toEqual([
      'flat 6" x 1"',
      "2/3",
      12,
      "=1+1",
      "007",
    ]);
    await type("D2", '=SAW.CUTTIME("round 7",2.14)');
    await expect.poll(() => value("D2")).toBeCloseTo(17.98, 2);
    const saved = await download(() => page.click("#save"));
    expect(cellsOf(readFileSync(saved)).get("Lines!B2")?.value).toBe("2/3");
    expect(recalc(saved).stdout).toMatch(/ 0 differ /);
  });

  const pasted = async (a1: string, text: string): Promise<void> => {
    await page.evaluate((at) => {
      const grid = (window as never as { kerfsheetGrid: never }).kerfsheetGrid as {
        getActiveWorkbook(): { getActiveSheet(): { getRange(a: string): { activate(): void } } };
      };
      grid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
    await page.evaluate((lines) => navigator.clipboard.writeText(lines), text);
    await page.keyboard.press("Control+V");
    await expect.poll(() => page.textContent("#book")).toMatch(/Pasted at/);
  };
  const forty = Array.from({ length: 40 }, (_, i) => [`round ${2 + (i % 6)}`, "1-1/2", i + 1] as const);

  it.each([
    ["tabs", "\t", /40 rows, 3 columns, parted at tabs/],
    ["commas", ",", /40 rows, 3 columns, parted at commas/],
  ] as const)("pastes 40 lines of a mail parted by %s", async (_, sign, says) => {
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    await pasted("H1", forty.map((l) => l.join(sign)).join("\r\n"));
    expect(await page.textContent("#book")).toMatch(says);
    expect(await Promise.all(["H40", "I40", "J40"].map(value))).toEqual(["round 5", "1-1/2", 40]);
  });

  it("pastes descriptions that hold commas as one column, inch marks and all", async () => {
    await page.evaluate(() => (document.getElementById("book")!.textContent = ""));
    await pasted("M1", 'RND 3-1/2" DIA, 4140, 6" LG\n"HEB 200" S355 x 1500 mm\nflat 6x1, 1018');
    expect(await page.textContent("#book")).toMatch(/3 rows, one column/);
    expect(await value("M1")).toBe('RND 3-1/2" DIA, 4140, 6" LG');
    expect(await value("M2")).toBe('"HEB 200" S355 x 1500 mm');
  });

  it("sends the chosen sheet as values: no formula, no other sheet", async () => {
    await fresh();
    await page.click("#send");
    const file = await download(() => page.click("#ask-go"));
    const book = readBook(openParts(readFileSync(file)));
    expect(book.sheets.map((s) => s.name)).toEqual(["Estimate"]);
    expect(book.sheets[0]!.cells.filter((c) => c.formula !== undefined)).toEqual([]);
    expect(cellsOf(readFileSync(file)).get("Estimate!G5")?.value).toBeCloseTo(Number(await value("G5")), 9);
    expect(seen.problems).toEqual([]);
  });

  it("prints the card on one page, and a long sheet as wide as one", async () => {
    await page.evaluate(() => {
      const grid = (window as never as { kerfsheetGrid: never }).kerfsheetGrid as {
        getActiveWorkbook(): { getSheetByName(n: string): unknown; setActiveSheet(s: unknown): void };
      };
      const book = grid.getActiveWorkbook();
      book.setActiveSheet(book.getSheetByName("Card"));
      window.print = () => undefined;
    });
    await page.click("#print");
    await expect.poll(() => page.textContent("#printed")).toMatch(/band speed/);
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true, path: join(dir, "card.pdf") });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length).toBe(1);
    expect(await page.textContent("#printed")).not.toMatch(/#N\/A|#VALUE/);
  });
});
