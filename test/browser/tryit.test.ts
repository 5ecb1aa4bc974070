import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { call } from "../../functions/bind";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/cell";
import { Memo } from "../../functions/memo";
import { demoBook } from "../../taskpane/tryit/demoBook";
import { browserPath, openBrowser, watch, type Opened } from "./open";

/** The try-it page in a real browser: what a person sees who has no Excel. */

if (browserPath === undefined) console.log("No Chromium or Chrome found: the browser tests are skipped.");

interface GridCell { v?: unknown; f?: string }
declare const window: { kerfsheetGrid: { getActiveWorkbook(): { getActiveSheet(): { getRange(a: number | string, b?: number): { getRawValue(): unknown; getValue(): unknown; getFormula(): string; setValue(v: unknown): void; getCellData(): (GridCell & { custom?: { sentence?: string } }) | null; activate(): void } } }; undo(): Promise<boolean> } };

describe.runIf(browserPath !== undefined)("the try-it page", () => {
  let opened: Opened;
  let page: Page;
  let seen: ReturnType<typeof watch>;

  beforeAll(async () => {
    opened = await openBrowser();
    page = await opened.browser.newPage({ viewport: { width: 1500, height: 900 } });
    seen = watch(page);
    await page.goto(`${opened.origin}/`);
    await page.waitForSelector('#status[data-ready="yes"]');
  });
  afterAll(() => opened.close());

  const value = (a1: string) => page.evaluate((at) => { const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at); return cell.getRawValue() ?? cell.getValue(); }, a1); // spilled cells have no raw value
  const sentence = (a1: string) => page.evaluate((at) => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).getCellData()?.custom?.sentence, a1);
  const enter = async (a1: string, content: string | number) => {
    await page.evaluate(([at, what]) => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at as string).setValue(typeof what === "string" && what.startsWith("=") ? { f: what } : what), [a1, content] as const);
    await page.waitForTimeout(400);
  };

  it("asks nothing of any other machine, and breaks no policy", () => {
    expect([...new Set(seen.requests.map((r) => new URL(r).origin))]).toEqual([opened.origin]);
    expect(seen.problems).toEqual([]);
  });

  it("says that its data is invented", async () => {
    expect(await value("A1")).toMatch(/invented data/);
  });

  it("shows on every sheet what the core gives for the same cells", async () => {
    const sheet = demoBook[0]!;
    let compared = 0;
    const valueAt = new Map<string, Cell>();
    const read = async (a1: string): Promise<Cell> => {
      const key = a1.replace(/\$/g, "");
      if (!valueAt.has(key)) valueAt.set(key, ((await value(key)) ?? null) as Cell);
      return valueAt.get(key)!;
    };
    const toRange = async (text: string): Promise<Range | null> => {
      if (text === "") return null;
      if (text.startsWith('"')) return [[text.slice(1, -1)]];
      const inner = /^IF\((\$?[A-Z]+\$?\d+)="([^"]*)",([^,]+),([^,]+)\)$/.exec(text);
      if (inner !== null) return [[await read((await read(inner[1]!)) === inner[2] ? inner[3]! : inner[4]!)]];
      const [from, to = from] = text.replace(/\$/g, "").split(":") as [string, string?];
      const [c0, r0, c1, r1] = [from.charCodeAt(0), Number(from.slice(1)), to!.charCodeAt(0), Number(to!.slice(1))];
      const rows: Cell[][] = [];
      for (let r = r0; r <= r1; r += 1) {
        const row: Cell[] = [];
        for (let c = c0; c <= c1; c += 1) row.push(await read(`${String.fromCharCode(c)}${r}`));
        rows.push(row);
      }
      return rows;
    };
    const split = (text: string): string[] => {
      const parts = [""];
      let depth = 0;
      for (const ch of text) {
        if (ch === "(") depth += 1;
        if (ch === ")") depth -= 1;
        if (ch === "," && depth === 0) parts.push("");
        else parts[parts.length - 1] += ch;
      }
      return parts;
    };
    for (const [r, row] of sheet.rows.entries()) {
      for (const [c, cell] of row.cells.entries()) {
        if (typeof cell !== "string" || !cell.startsWith("=")) continue;
        const at = `${String.fromCharCode(65 + c)}${r + 1}`;
        const shown = await read(at);
        const match = /^=SAW\.([A-Z]+)\((.*)\)$/.exec(cell);
        if (match === null) {
          expect(typeof shown, at).toBe("number");
          continue;
        }
        const args = await Promise.all(split(match[2]!).map(toRange));
        const [[expected]] = call(catalogue.find((e) => e.name === match[1])!, args, new Memo()) as [[Cell]];
        expect(expected, `${at} ${cell}`).not.toBeInstanceOf(CellError);
        if (typeof expected === "number") expect(shown as number, `${at} ${cell}`).toBeCloseTo(expected, 9);
        else expect(shown, `${at} ${cell}`).toBe(expected);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(60);
  });

  it("gives 18 minutes for the 7 in round at 2.14 in²/min (common practice), typed into an empty cell", async () => {
    await enter("K5", '=SAW.CUTTIME("round 7", 2.14)');
    expect(Number(await value("K5"))).toBeCloseTo(17.98, 2);
  });

  it("keeps the text 3/4 as text, through a function and through a formula", async () => {
    await enter("K6", '=SAW.PITCH("round 4","D2","bi-metal")');
    await enter("K7", '=K6&""');
    await enter("K8", '=SAW.TEETH("round 4",K6)');
    expect(await value("K6")).toBe("3/4");
    expect(await value("K7")).toBe("3/4");
    expect(Number(await value("K8"))).toBeCloseTo(11, 1);
  });

  it.each([
    ["blank", '=SAW.AREA(Z99)', /section is empty or 0/],
    ["text for a number", '=SAW.CUTTIME("round 7","fast")', /rate is text, not a number/],
    ["a date serial", "=SAW.AREA(45720)", /date/],
    ["a bare number", "=SAW.AREA(7)", /only a number/],
    ["an unknown word", '=SAW.AREA("roud 7")', /did you mean "round"/],
  ])("explains a wrong input in one sentence: %s", async (_, formula, says) => {
    await enter("K9", formula);
    expect(await sentence("K9")).toMatch(says);
  });

  it("spills a range, one result a row, and says nothing once a cell has recovered", async () => {
    await enter("M5", "=SAW.AREA(A5:A19)");
    expect(Number(await value("M5"))).toBeCloseTo(38.4845, 3);
    expect(Number(await value("M11"))).toBeCloseTo(6, 9);
    await enter("K9", '=SAW.AREA("round 1")');
    expect(Number(await value("K9"))).toBeCloseTo(Math.PI / 4, 9);
  });

  it("takes a whole column, heading and blanks and all: each row stands for itself, the empty end is dropped", async () => {
    await enter("O1", "=SAW.AREA(A:A)");
    expect(Number(await value("O5"))).toBeCloseTo(38.4845, 3);
    expect(String(await value("O1"))).toBe("#VALUE!");
    expect(await value("O3")).toBe("");
    expect((await value("O60")) ?? "").toBe("");
  });

  it("follows a changed input, and undo brings the old result back", async () => {
    const before = Number(await value("G5"));
    await enter("A5", "round 3");
    expect(Number(await value("G5"))).toBeLessThan(before);
    await page.evaluate(() => window.kerfsheetGrid.undo());
    await page.waitForTimeout(400);
    expect(Number(await value("G5"))).toBeCloseTo(before, 9);
  });

  it("shows the pane beside the grid, with every function", async () => {
    const pane = page.frameLocator("#pane");
    await expect.poll(() => pane.locator("h3").count()).toBe(catalogue.length);
    expect(await pane.locator("h1").textContent()).toBe("Kerfsheet");
  });
});

describe("without a browser", () => {
  it("is a failure under CI", () => {
    if (process.env["CI"] === "true") expect(browserPath, "CI must have Chromium: see .ci/run").toBeDefined();
  });
});
