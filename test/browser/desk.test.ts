import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { openParts } from "../../functions/workbook/openParts";
import { hands } from "./hands";
import { axeFaults, browserPath, openTryit } from "./open";

/** The page as a place to work at: charts, digits, keys, sentences, looks. */

interface Range {
  getDisplayValues(): string[][];
  getCellData(): { s?: unknown } | null;
  getRow(): number;
  getColumn(): number;
  getRawValue(): unknown;
  getDisplayValue(): string;
  setValue(v: unknown): void;
  activate(): void;
}
interface Sheet {
  getSheetName(): string;
  getLastRow(): number;
  getLastColumn(): number;
  getMergeData(): Range[];
  getRowHeight(r: number): number;
  getRange(a: string | number, column?: number, rows?: number, columns?: number): Range;
  getColumnWidth(c: number): number;
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): {
      getActiveSheet(): Sheet;
      getSheetByName(name: string): Sheet;
      getSheets(): Sheet[];
      setActiveSheet(s: Sheet): void;
      insertSheet(): unknown;
    };
    executeCommand(id: string): Promise<boolean>;
    undo(): Promise<boolean>;
  };
};

describe.runIf(browserPath !== undefined)("the desk", () => {
  let opened: Awaited<ReturnType<typeof openTryit>>;
  let page: Page;
  beforeAll(async () => {
    opened = await openTryit();
    ({ page } = opened);
  });
  afterAll(() => opened.close());

  const { show, text } = hands(() => page, "");
  const set = (sheet: string, a1: string, v: unknown): Promise<void> =>
    page.evaluate(
      ([n, at, what]) =>
        window.kerfsheetGrid
          .getActiveWorkbook()
          .getSheetByName(n as string)
          .getRange(at as string)
          .setValue(what),
      [sheet, a1, v] as const,
    );
  const select = async (a1: string): Promise<void> => {
    await page.evaluate((at) => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
    }, a1);
    await page.keyboard.press("Shift");
  };
  const strip = (): Promise<string | null> => text("#explain");
  const focused = (): Promise<string> =>
    page.evaluate(() =>
      document.activeElement!.closest(".files")
        ? "bar"
        : document.activeElement!.closest("#charts")
          ? "charts"
          : document.activeElement!.id === "pane"
            ? "pane"
            : "grid",
    );
  const pictures = (): Promise<string[]> =>
    page.evaluate(() => [...document.querySelectorAll<HTMLCanvasElement>("#charts canvas")].map((c) => c.toDataURL()));

  it("draws the charts of the sheet in sight, with title, axes and names from its own parts, and no others", async () => {
    expect(await page.isVisible("#charts")).toBe(false);
    await show("Curves");
    await expect.poll(() => page.locator("#charts figure").count(), { timeout: 15_000 }).toBe(2);
    expect(await page.locator("#charts figcaption").allTextContents()).toEqual([
      "Where two lines cross, the cheapest offer changes",
      "Cost of one cut, and what it is made of",
    ]);
    expect(await page.locator("#charts figure >> nth=1 >> li").allTextContents()).toEqual([
      "cutting",
      "handling",
      "blade wear",
      "blade change",
    ]);
    expect(await page.locator("#charts .legend >> nth=0 >> li").allTextContents()).toEqual([
      "in use, bi-metal",
      "offer P, carbide",
      "offer Q, carbide",
      "offer R, bi-metal",
      "a saw hour now",
    ]);
    expect(await page.locator("#charts [role=img] >> nth=0").getAttribute("aria-label")).toMatch(
      /lines cross where two/,
    );
  });

  it("draws each chart of the samples under the title, with the axes and series that its part in the file names", async () => {
    for (const sample of ["purchase", "process", "records", "plans"]) {
      const parts = openParts(readFileSync(`docs/samples/${sample}.xlsx`));
      const charts = Object.entries(parts)
        .filter(([path]) => /charts\/chart\d/.test(path))
        .map(([, bytes]) => new TextDecoder().decode(bytes));
      for (const xml of charts) {
        const title = /<a:t>([^<]*)<\/a:t>/.exec(xml)![1]!;
        await show(/<c:f>'?([^'!<]+)'?!/.exec(xml)![1]!);
        const figure = page.locator("#charts figure", { hasText: title });
        await expect.poll(() => figure.count(), { timeout: 15_000 }).toBe(1);
        expect(await figure.locator("canvas").count()).toBe(1);
        expect(await figure.locator("[role=img]").getAttribute("aria-label")).toContain(title);
        expect(await figure.locator("li").count()).toBe(xml.split("<c:ser>").length - 1);
      }
    }
    await show("Curves");
    await expect.poll(() => page.locator("#charts figure").count(), { timeout: 15_000 }).toBe(2);
  });

  it("draws them anew when a cell on another sheet changes", async () => {
    const before = await pictures();
    await set("Purchase", "B5", 360);
    await expect.poll(async () => (await pictures())[0] !== before[0], { timeout: 15_000 }).toBe(true);
    expect((await pictures())[1]).not.toBe(before[1]);
    await set("Purchase", "B5", 180);
    await expect.poll(async () => (await pictures())[0] === before[0], { timeout: 15_000 }).toBe(true);
  });

  it("draws them in the dark too", async () => {
    const before = await pictures();
    await page.emulateMedia({ colorScheme: "dark" });
    await expect.poll(async () => (await pictures())[0] !== before[0], { timeout: 15_000 }).toBe(true);
    await page.emulateMedia({ colorScheme: "light" });
    await expect.poll(async () => (await pictures())[0] === before[0], { timeout: 15_000 }).toBe(true);
  });

  it("counts what is priced, says what is not, and the pane lists the refused line by its own text", async () => {
    const figures = (): Promise<unknown[]> =>
      page.evaluate(() => {
        const estimate = window.kerfsheetGrid.getActiveWorkbook().getSheetByName("Estimate");
        return ["G7", "B26", "B33"].map((at) => estimate.getRange(at).getRawValue());
      });
    const [, words, before] = await figures();
    expect(words).toBe("17 priced, 0 refused");
    const price = Number((await figures())[0]);
    await set("Estimate", "A7", "roud 7");
    await expect.poll(async () => (await figures())[1], { timeout: 10_000 }).toBe("16 priced, 1 refused");
    expect(Number((await figures())[2])).toBeCloseTo(Number(before) - price, 6);
    expect(
      await page.evaluate(() =>
        window.kerfsheetGrid.getActiveWorkbook().getSheetByName("Estimate").getRange("D24").getRawValue(),
      ),
    ).toMatch(/^row 7: roud 7: .*unknown word "roud"/);
    const pane = page.frameLocator("#pane");
    await pane.locator("#tab-workbook").click();
    await pane.locator("#panel-workbook .main").first().click();
    const rows = pane.locator("#panel-workbook .list .recents button");
    await expect
      .poll(() => rows.allTextContents(), { timeout: 15_000 })
      .toContainEqual(expect.stringMatching(/^Estimate!F7 and 12 more: roud 7$/));
    await set("Estimate", "A7", "round 7");
    await expect.poll(async () => (await figures())[1], { timeout: 10_000 }).toBe("17 priced, 0 refused");
  });

  it("says beside each line how it was read", async () => {
    const read = await page.evaluate(() => {
      const estimate = window.kerfsheetGrid.getActiveWorkbook().getSheetByName("Estimate");
      return estimate.getRange("F20").getRawValue();
    });
    expect(read).toMatch(/3\.5 in|3-1\/2/);
    expect(read).toMatch(/4140/);
  });

  it("F6 and Ctrl+F6 go from bar to grid to charts to pane and back; Shift+F6 the other way", async () => {
    await page.focus("#open");
    const way: string[] = [];
    for (const key of ["F6", "F6", "Control+F6", "F6", "Shift+F6", "Shift+F6"]) {
      await page.keyboard.press(key);
      way.push(await focused());
    }
    expect(way).toEqual(["grid", "charts", "pane", "bar", "pane", "charts"]);
    expect(await page.textContent(".bar")).toMatch(/F6/);
  });

  it("Tab in the bar and the pane never enters the grid", async () => {
    await show("Estimate");
    await expect.poll(() => page.isVisible("#charts")).toBe(false);
    for (const key of ["Tab", "Shift+Tab"]) {
      await page.focus("#open");
      const way = new Set<string>();
      for (let i = 0; i < 40; i += 1) {
        await page.keyboard.press(key);
        way.add(await focused());
        if (key === "Shift+Tab" && i > 2) break;
      }
      if (key === "Tab") expect(way).toEqual(new Set(["bar", "pane"]));
    }
  });

  it("shows a calculated number with four digits, and keeps all of it", async () => {
    await set("Estimate", "S1", { f: '=SAW.AREA("round 7")' });
    await set("Estimate", "S2", { f: "=S1*1000" });
    await expect
      .poll(() =>
        page.evaluate(() => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange("S2").getDisplayValue()),
      )
      .toBe("38485");
    const [shown, raw] = await page.evaluate(() => {
      const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange("S1");
      return [cell.getDisplayValue(), cell.getRawValue()] as const;
    });
    expect(shown).toBe("38.48");
    expect(raw).toBeCloseTo(Math.PI * 12.25, 12);
  });

  it("widens a column that is too narrow for its numbers", async () => {
    const width = (): Promise<number> =>
      page.evaluate(() => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getColumnWidth(10));
    const before = await width();
    await set("Estimate", "K30", { f: "=12345678901" });
    await expect.poll(width, { timeout: 10_000 }).toBeGreaterThan(before);
  });

  it("cuts nothing off: each number, heading and text of the sample sheets has room where its neighbour is filled", async () => {
    const cut = await page.evaluate(() => {
      const pen = document.createElement("canvas").getContext("2d")!;
      const wide = (words: string, bold: boolean, size: number): number => {
        pen.font = `${bold ? "bold " : ""}${size}pt system-ui, sans-serif`;
        return pen.measureText(words).width;
      };
      /** Lines of a text that wraps, by the same words that the grid parts it at. */
      const linesOf = (words: string, bold: boolean, size: number, room: number): number => {
        let [lines, at] = [1, 0];
        for (const word of words.split(/(?<=[ -])/)) {
          const width = wide(word, bold, size);
          if (at > 0 && at + width > room) [lines, at] = [lines + 1, 0];
          at += width;
        }
        return lines;
      };
      return window.kerfsheetGrid
        .getActiveWorkbook()
        .getSheets()
        .flatMap((sheet) => {
          const shown = sheet.getRange(0, 0, sheet.getLastRow() + 1, sheet.getLastColumn() + 2).getDisplayValues();
          const merged = sheet.getMergeData().map((m) => `${m.getRow()},${m.getColumn()}`);
          return shown.flatMap((line, r) =>
            line.flatMap((words, c) => {
              if (words === "" || merged.includes(`${r},${c}`)) return [];
              const style = (sheet.getRange(r, c).getCellData()?.s ?? {}) as { tb?: number; bl?: number; fs?: number };
              const [bold, size, has] = [style.bl === 1, style.fs ?? 11, sheet.getColumnWidth(c)];
              const place = `${sheet.getSheetName()}, row ${r + 1}, column ${c + 1}: ${words}`;
              if (style.tb === 3)
                return linesOf(words, bold, size, has) * 18 > sheet.getRowHeight(r) + 4 ? [place] : [];
              const isNumber = /^[-+\d.,%\s]+$/.test(words);
              return (isNumber || line[c + 1] !== "") && wide(words, bold, size) > has ? [place] : [];
            }),
          );
        });
    });
    // How a line was read may be longer than its column; the strip shows all of it.
    expect(cut.filter((place) => !/^Estimate, row (5|6|7|8|9|1\d|2[01]), column 6:/.test(place))).toEqual([]);
  });

  it("says what a selection comes to in the strip", async () => {
    await select("E5:E7");
    await expect.poll(strip).toMatch(/3 numbers, sum 54, mean 18, 12 to 30/);
  });

  it.each([
    ['=CUTTIME("round 7",2.14)', /written SAW\.CUTTIME/],
    ['=SAW.CUTIME("round 7",2.14)', /did you mean SAW\.CUTTIME/],
    ["=SUMM(E5:E7)", /did you mean SUM\?/],
  ])("says what is mistyped: %s", async (formula, says) => {
    await set("Estimate", "T9", { f: formula });
    await page.waitForTimeout(700);
    await select("T9");
    await expect.poll(strip).toMatch(says);
  });

  it("the grid's menu offers nothing that would spoil a grade or that no file can keep", async () => {
    await page.waitForTimeout(3000);
    await page.mouse.click(300, 400, { button: "right" });
    await expect.poll(() => page.textContent("body")).toMatch(/Paste Special/);
    const menu = await page.textContent("body");
    expect(menu).not.toMatch(/Text to Number|Protect/i);
    await page.keyboard.press("Escape");
  });

  it("under 800 px the pane goes below the grid", async () => {
    await page.setViewportSize({ width: 800, height: 900 });
    const [grid, pane] = await Promise.all(["#grid", "#pane"].map((s) => page.locator(s).boundingBox()));
    expect(pane!.y).toBeGreaterThanOrEqual(grid!.y + grid!.height);
    expect(pane!.width).toBeGreaterThan(700);
    await page.setViewportSize({ width: 1500, height: 900 });
  });

  it.each(["light", "dark"] as const)(
    "has no fault that axe finds in any state, nor the pane in it, %s",
    async (look) => {
      await page.emulateMedia({ colorScheme: look });
      const pane = page.frameLocator("#pane");
      const frame = page.frames().find((f) => f.url().endsWith("pane.html"))!;
      const found: string[] = [];
      const check = async (state: string): Promise<void> => {
        for (const [where, at] of [
          ["page", page],
          ["pane", frame],
        ] as const)
          found.push(...(await axeFaults(at)).map((fault) => `${state}, ${where}: ${fault}`));
      };
      await set("Estimate", "A7", "roud 7");
      await show("Estimate");
      await pane.locator("#tab-workbook").click();
      await pane.locator("#panel-workbook .main").first().click();
      await expect
        .poll(() => pane.locator("#panel-workbook .list .recents button").count(), { timeout: 15_000 })
        .toBeGreaterThan(0);
      await check("errors listed");
      for (const tab of ["material", "section", "functions", "shop"]) {
        await pane.locator(`#tab-${tab}`).click();
        await check(`tab ${tab}`);
      }
      await show("Curves");
      await expect.poll(() => page.locator("#charts figure").count(), { timeout: 15_000 }).toBe(2);
      await check("charts");
      for (const width of [800, 350]) {
        await page.setViewportSize({ width, height: 900 });
        await expect
          .poll(() => page.evaluate(() => document.getElementById("charts")!.scrollWidth), { timeout: 15_000 })
          .toBeLessThanOrEqual(width);
        await check(`${width} px`);
      }
      await page.setViewportSize({ width: 1500, height: 900 });
      await page.click("#send");
      await check("question which sheets");
      await page.click("#ask-no");
      await page.setInputFiles("#file", "docs/samples/process.xlsx");
      await page.waitForSelector("#ask-stay");
      await check("question before loss");
      await page.click("#ask-stay");
      await set("Estimate", "A7", "round 7");
      expect(found).toEqual([]);
    },
  );

  it("asks nothing of any other machine, breaks no policy, and is sent packed", async () => {
    expect([
      ...new Set(opened.seen.requests.filter((u) => !u.startsWith("blob:")).map((r) => new URL(r).origin)),
    ]).toEqual([opened.origin]);
    expect(opened.seen.problems).toEqual([]);
    const response = await page.request.get(`${opened.origin}/tryit/page.js`);
    expect(response.headers()["content-encoding"]).toMatch(/^(br|gzip)$/);
    expect(await response.text()).toBe(readFileSync("dist/tryit/page.js", "utf8"));
  });
});
