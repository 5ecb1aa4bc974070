import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { BrowserContext, Page } from "playwright-core";
import { readBook } from "../../functions/workbook/readBook";
import { openParts } from "../../functions/workbook/openParts";
import { folder, recalc } from "../functions/workbook/fixture";
import { cellsOf, hands, ready } from "./hands";
import { axeFaults, browserPath, openBrowser, watch, type Opened } from "./open";

/**
 * Nothing is lost: the page's own workbook and any other is saved, drafted, offered on return, and asked about before it
 * goes. One visit, told in order: each test begins where the one before it ended, since a new visit takes seconds.
 */

const patient = { timeout: 20_000 };

describe.runIf(browserPath !== undefined)("work on the try-it page", () => {
  let opened: Opened;
  let context: BrowserContext;
  let page: Page;
  let seen: ReturnType<typeof watch>;
  /** What the browser asked before it left the page. */
  const asked: string[] = [];
  const dir = folder();
  const { text, value, select, type, paste, download } = hands(() => page, dir);

  const visit = async (spoil?: () => void): Promise<void> => {
    context = await opened.browser.newContext({ viewport: { width: 1500, height: 900 } });
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    page = await context.newPage();
    seen = watch(page);
    page.on("dialog", (d) => {
      asked.push(d.type());
      void d.accept();
    });
    if (spoil !== undefined) await page.addInitScript(spoil);
    await page.goto(`${opened.origin}/`);
    await ready(page);
  };
  const reload = async (): Promise<void> => {
    await page.reload();
    await ready(page);
  };
  beforeAll(async () => {
    opened = await openBrowser();
    await visit();
  });
  afterAll(() => opened.close());

  const unsaved = (): Promise<string | null> => text("#unsaved");
  const drafted = (): Promise<void> => expect.poll(unsaved, patient).toMatch(/draft is kept/);

  it("nothing is unsaved before anything was typed, and values are sent without a formula or another sheet", async () => {
    await page.click("#send");
    const file = await download(() => page.click("#ask-go"));
    const book = readBook(openParts(readFileSync(file)));
    expect(book.sheets.map((s) => s.name)).toEqual(["Estimate"]);
    expect(book.sheets[0]!.cells.filter((c) => c.formula !== undefined)).toEqual([]);
    expect(cellsOf(readFileSync(file)).get("Estimate!G5")?.value).toBeCloseTo(Number(await value("G5")), 9);
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

  it("says so where the browser's storage is full, works on, and keeps the draft when there is room", async () => {
    await page.evaluate(() => {
      Object.assign(window, { put: Object.getOwnPropertyDescriptor(IDBObjectStore.prototype, "put") });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    });
    await type("E5", "55");
    await expect.poll(unsaved, patient).toMatch(/its storage is full/);
    await page.evaluate(() => {
      Object.defineProperty(IDBObjectStore.prototype, "put", (window as never as { put: PropertyDescriptor }).put);
    });
    await type("E5", "77");
    await drafted();
  });

  it("asks before it is left with unsaved work, offers the draft on return, and gives back what was typed", async () => {
    await reload();
    expect(asked.splice(0)).toEqual(["beforeunload"]);
    await expect.poll(() => text("#drafts"), patient).toMatch(/kerfsheet\.xlsx/);
    expect(await value("E5")).toBe(30);
    for (const colorScheme of ["dark", "light"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await axeFaults(page)).toEqual([]);
    }
    await page.click("text=Open the draft");
    await expect.poll(() => value("E5"), patient).toBe(77);
    await expect.poll(() => text("#drafts"), patient).toBe("");
    await drafted();
  });

  it("asks before another file takes the place of unsaved work; staying, saving and leaving do what they say", async () => {
    await page.setInputFiles("#file", "docs/samples/process.xlsx");
    await page.click("#ask-stay");
    expect(await value("E5")).toBe(77);
    await page.setInputFiles("#file", "docs/samples/process.xlsx");
    const file = await download(() => page.click("#ask-save"));
    expect(cellsOf(readFileSync(file)).get("Estimate!E5")?.value).toBe(77);
    await expect.poll(() => text("#book")).toMatch(/^process\.xlsx/);
    await type("A1", "mine");
    await page.setInputFiles("#file", "docs/samples/estimate.xlsx");
    await page.click("#ask-leave");
    await expect.poll(() => text("#book")).toMatch(/^estimate\.xlsx/);
  });

  it("without unsaved work nothing is asked; of the drafts only what was not saved is left, until it is thrown away", async () => {
    await reload();
    expect(asked).toEqual([]);
    await expect.poll(() => text("#drafts"), patient).toMatch(/process\.xlsx/);
    expect(await text("#drafts")).not.toMatch(/kerfsheet\.xlsx/);
    await page.click("text=Throw it away");
    await expect.poll(() => text("#drafts"), patient).toBe("");
    expect(seen.problems).toEqual([]);
  });

  it("opens a .csv file as values: 2/3 stays text, a text that begins with = is no formula", async () => {
    const file = join(dir, "lines.csv");
    writeFileSync(file, '\uFEFFsize,pitch,pieces\r\n"flat 6"" x 1""",2/3,12\r\nround 7,=1+1,007\r\n');
    await page.setInputFiles("#file", file);
    await expect.poll(() => text("#book")).toMatch(/^lines\.xlsx: 1 sheet, 0 formulas/);
    expect(await text("#status")).toBe("no formula to calculate");
    expect(await Promise.all(["A2", "B2", "C2", "B3", "C3"].map(value))).toEqual([
      'flat 6" x 1"',
      "2/3",
      12,
      "=1+1",
      "007",
    ]);
    await type("D2", '=SAW.CUTTIME("round 7",2.14)');
    await expect.poll(() => value("D2")).toBeCloseTo(17.98, 2);
    await expect.poll(() => text("#status")).toBe("");
    // A cell that is emptied by hand is empty, and no empty text.
    await type("D3", "=C2*2");
    await expect.poll(() => value("D3")).toBe(24);
    await select("C2");
    await page.keyboard.press("F2");
    for (let i = 0; i < 3; i += 1) await page.keyboard.press("Backspace");
    await page.keyboard.press("Enter");
    await expect.poll(() => value("D3")).toBe(0);
    const saved = await download(() => page.click("#save"));
    expect(cellsOf(readFileSync(saved)).get("Lines!B2")?.value).toBe("2/3");
    expect(recalc(saved).stdout).toMatch(/ 0 differ /);
  });

  const forty = Array.from({ length: 40 }, (_, i) => [`round ${2 + (i % 6)}`, "1-1/2", i + 1] as const);

  it.each([
    ["tabs", "\t", /40 rows, 3 columns, parted at tabs/],
    ["commas", ",", /40 rows, 3 columns, parted at commas/],
  ] as const)("pastes 40 lines of a mail parted by %s", async (_, sign, says) => {
    await paste("H1", forty.map((l) => l.join(sign)).join("\r\n"));
    expect(await text("#book")).toMatch(says);
    expect(await Promise.all(["H40", "I40", "J40"].map(value))).toEqual(["round 5", "1-1/2", 40]);
  });

  it("pastes descriptions that hold commas as one column, inch marks and all", async () => {
    await paste("M1", 'RND 3-1/2" DIA, 4140, 6" LG\n"HEB 200" S355 x 1500 mm\nflat 6x1, 1018');
    expect(await text("#book")).toMatch(/3 rows, one column/);
    expect(await value("M1")).toBe('RND 3-1/2" DIA, 4140, 6" LG');
    expect(await value("M2")).toBe('"HEB 200" S355 x 1500 mm');
  });

  it("says so where the browser's storage is refused, and works on", async () => {
    await context.close();
    await visit(() => {
      Object.defineProperty(window, "indexedDB", {
        get: () => {
          throw new DOMException("no", "SecurityError");
        },
      });
    });
    await type("E5", "55");
    await expect.poll(unsaved, patient).toMatch(/lets this page store nothing/);
    const file = await download(() => page.click("#save"));
    expect(cellsOf(readFileSync(file)).get("Estimate!E5")?.value).toBe(55);
    expect(seen.problems).toEqual([]);
  });
});
