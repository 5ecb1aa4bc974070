import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Page } from "playwright-core";
import { addressOf, areaOf } from "../../functions/formula/cellAddress";
import type { BookCell } from "../../functions/workbook/book";
import { openParts } from "../../functions/workbook/openParts";
import { readBook } from "../../functions/workbook/readBook";
import { recalc } from "../functions/workbook/fixture";

/** What a person does at the try-it page, and what is seen there, for the tests that work a day at it. */

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
};

/** The cells of a saved file by sheet and address. */
export const cellsOf = (bytes: Uint8Array): ReadonlyMap<string, BookCell> =>
  new Map(
    readBook(openParts(bytes)).sheets.flatMap((s) =>
      s.cells.map((c) => [`${s.name}!${addressOf(c.row, c.column)}`, c] as const),
    ),
  );

/** Waits until the page has calculated. */
export const ready = async (page: Page): Promise<void> => {
  await page.waitForSelector('#status[data-ready="yes"]', { state: "attached" });
};

/** The hands of a person at the page; files go into `dir`. */
export function hands(page: () => Page, dir: string) {
  const text = (id: string): Promise<string | null> => page().textContent(id);
  const select = (a1: string): Promise<void> =>
    page().evaluate((at) => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
  const value = (a1: string): Promise<unknown> =>
    page().evaluate((at) => {
      const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at);
      return cell.getRawValue() ?? cell.getValue();
    }, a1);
  /** F6 until the keyboard is where it should be. */
  const go = async (where: "bar" | "grid"): Promise<void> => {
    const at = (): Promise<string> =>
      page().evaluate(() => {
        const e = document.activeElement!;
        return e.closest(".files") ? "bar" : e.id === "pane" || e.closest("#charts") ? "other" : "grid";
      });
    if (where === "grid" && (await at()) === "grid") await page().keyboard.press("Shift+F6");
    for (let i = 0; i < 6; i += 1) {
      await page().keyboard.press("F6");
      if ((await at()) === where) return;
    }
    throw new Error(`F6 never came to the ${where}`);
  };
  /** By the arrow keys, as the strip says where one is. */
  const walk = async (a1: string): Promise<void> => {
    await page().keyboard.press("Shift");
    const placed = async (): Promise<{ top: number; left: number } | undefined> =>
      areaOf(/^[A-Z]+\d+/.exec((await text("#explain")) ?? "")?.[0] ?? "");
    await expect.poll(placed).toBeDefined();
    const [from, to] = [(await placed())!, areaOf(a1)!];
    const press = async (key: string, times: number): Promise<void> => {
      for (let i = 0; i < times; i += 1) await page().keyboard.press(key);
    };
    await press(to.top > from.top ? "ArrowDown" : "ArrowUp", Math.abs(to.top - from.top));
    await press(to.left > from.left ? "ArrowRight" : "ArrowLeft", Math.abs(to.left - from.left));
    await expect.poll(placed).toMatchObject({ top: to.top, left: to.left });
  };
  const enter = async (what: string): Promise<void> => {
    await page().keyboard.type(what, { delay: 1 });
    await page().keyboard.press("Enter");
    await page().waitForTimeout(200);
  };
  const putDown = async (lines: string): Promise<void> => {
    await page().evaluate((all) => {
      document.getElementById("book")!.textContent = "";
      return navigator.clipboard.writeText(all);
    }, lines);
    await page().keyboard.press("Control+V");
    await expect.poll(() => text("#book")).toMatch(/Pasted at/);
  };
  const download = async (act: () => Promise<unknown>): Promise<string> => {
    const [got] = await Promise.all([page().waitForEvent("download"), act()]);
    const path = join(dir, `${Math.floor(performance.now())}.xlsx`);
    await got.saveAs(path);
    return path;
  };
  /** To a button of the bar by keys alone, and on it. */
  const press = async (label: string): Promise<void> => {
    await go("bar");
    for (let i = 0; i < 6 && (await page().evaluate(() => document.activeElement?.textContent)) !== label; i += 1)
      await page().keyboard.press("Tab");
    await page().keyboard.press("Enter");
  };
  return {
    text,
    value,
    select,
    go,
    walk,
    enter,
    putDown,
    press,
    download,
    /** Into a cell of the sheet in sight. */
    type: async (a1: string, what: string): Promise<void> => {
      await go("grid");
      await select(a1);
      await enter(what);
    },
    paste: async (a1: string, lines: string): Promise<void> => {
      await go("grid");
      await select(a1);
      await putDown(lines);
    },
    show: async (name: string): Promise<void> => {
      await page().evaluate((n) => {
        const book = window.kerfsheetGrid.getActiveWorkbook();
        book.setActiveSheet(book.getSheetByName(n));
        // What a click on the sheet's name tells the page, wherever the keyboard is.
        document.dispatchEvent(new KeyboardEvent("keyup"));
      }, name);
    },
    /** Saves by keys; recalc finds every value of the file right. */
    saved: async (): Promise<ReadonlyMap<string, BookCell>> => {
      const file = await download(() => press("Save"));
      const run = recalc(file);
      expect(run.stdout).toMatch(/ 0 differ /);
      expect(run.status).toBe(0);
      return cellsOf(readFileSync(file));
    },
  };
}
