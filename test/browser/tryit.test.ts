import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { catalogue } from "../../functions/catalogue";
import { exampleResult } from "../../functions/reference/describe";
import { CellError } from "../../functions/kinds/cell";
import { demoBook } from "../../functions/workbook/samples/books";
import { evaluate } from "./evaluate";
import { enterCell } from "./enter";
import { browserPath, openTryit } from "./open";
import { expectShown } from "./shown";

/** The try-it page in a real browser: what a person sees who has no Excel. */

if (browserPath === undefined) console.log("No Chromium or Chrome found: the browser tests are skipped.");

interface GridCell {
  v?: unknown;
  f?: string;
}
interface GridSheet {
  getRange(
    a: number | string,
    b?: number,
  ): {
    getRawValue(): unknown;
    getValue(): unknown;
    getFormula(): string;
    setValue(v: unknown): void;
    getCellData(): (GridCell & { custom?: { sentence?: string } }) | null;
    activate(): void;
  };
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): { getActiveSheet(): GridSheet; getSheetByName(name: string): GridSheet | null };
    undo(): Promise<boolean>;
  };
};

describe.runIf(browserPath !== undefined)("the try-it page", () => {
  let opened: Awaited<ReturnType<typeof openTryit>>;
  let page: Page;
  let seen: typeof opened.seen;

  beforeAll(async () => {
    opened = await openTryit();
    ({ page, seen } = opened);
  });
  afterAll(() => opened.close());

  const value = (a1: string) =>
    page.evaluate((at) => {
      const cell = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at);
      return cell.getRawValue() ?? cell.getValue();
    }, a1); // spilled cells have no raw value
  const sentence = (a1: string) =>
    page.evaluate(
      (at) => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).getCellData()?.custom?.sentence,
      a1,
    );
  const enter = (a1: string, content: string | number) =>
    enterCell(page, undefined, a1, typeof content === "string" && content.startsWith("=") ? { f: content } : content);

  it("asks nothing of any other machine, and breaks no policy", () => {
    expect([...new Set(seen.requests.map((r) => new URL(r).origin))]).toEqual([opened.origin]);
    expect(seen.problems).toEqual([]);
  });

  it("says that its data is invented", async () => {
    expect(await value("A1")).toMatch(/invented data/);
  });

  it("shows on every sheet what the core gives for the same cells: no error, no number that no test computes", async () => {
    let compared = 0;
    for (const [name, cells] of evaluate(demoBook)) {
      const shown = await page.evaluate(
        ([sheet, addresses]) =>
          addresses.map((at) => {
            const cell = window.kerfsheetGrid.getActiveWorkbook().getSheetByName(sheet)!.getRange(at);
            return cell.getRawValue() ?? cell.getValue();
          }),
        [name, [...cells.keys()]] as const,
      );
      [...cells].forEach(([at, expected], i) => {
        expectShown(shown[i], expected, `${name}!${at}`);
        compared += 1;
      });
      const errors = [...cells].filter(([, c]) => c instanceof CellError).map(([at]) => `${name}!${at}`);
      expect(errors).toEqual([]);
    }
    expect(compared).toBeGreaterThan(500);
  });

  it.each([
    ['SAW.TEETH("round 7", "2/3")', 'SAW.TEETH("round 7", "2/3")'],
    ['SAW.TEETH("round 7", "3/4")', 'SAW.TEETH("round 7", "3/4")'],
    ['SAW.AREA("1-1/2")', 'SAW.AREA("1-1/2")'],
  ])("keeps a text in quotes a text, which is no date: %s", async (typed, formula) => {
    await enter("S5", `=${typed}`);
    const [[expected]] = exampleResult(catalogue, formula) as [[number | CellError]];
    const got = await value("S5");
    if (expected instanceof CellError) expect(got).toBe(expected.code);
    else expect(Number(got)).toBeCloseTo(expected, 9);
  });

  it("gives 18 minutes for the 7 in round at 2.14 in²/min (common practice), typed into an empty cell", async () => {
    await enter("S5", '=SAW.CUTTIME("round 7", 2.14)');
    expect(Number(await value("S5"))).toBeCloseTo(17.98, 2);
  });

  it("keeps the text 3/4 as text, through a function and through a formula", async () => {
    await enter("S6", '=SAW.PITCH("round 4","D2","bi-metal")');
    await enter("S7", '=S6&""');
    await enter("S8", '=SAW.TEETH("round 4",S6)');
    expect(await value("S6")).toBe("3/4");
    expect(await value("S7")).toBe("3/4");
    expect(Number(await value("S8"))).toBeCloseTo(11, 1);
  });

  it.each([
    ["blank", "=SAW.AREA(Z99)", /section is empty/],
    ["text for a number", '=SAW.CUTTIME("round 7","fast")', /rate is text, not a number/],
    ["a date serial", "=SAW.AREA(45720)", /date/],
    ["a bare number", "=SAW.AREA(7)", /only a number/],
    ["an unknown word", '=SAW.AREA("roud 7")', /did you mean "round"/],
  ])("explains a wrong input in one sentence: %s", async (_, formula, says) => {
    await enter("S9", formula);
    await expect.poll(() => sentence("S9"), { timeout: 15_000 }).toMatch(says);
  });

  it("spills a range, one result a row, and says nothing once a cell has recovered", async () => {
    await enter("U5", "=SAW.AREA(A5:A19)");
    expect(Number(await value("U6"))).toBeCloseTo(38.4845, 2);
    expect(Number(await value("U11"))).toBeCloseTo(9, 9);
    await enter("S9", '=SAW.AREA("round 1")');
    expect(Number(await value("S9"))).toBeCloseTo(Math.PI / 4, 9);
  });

  it("explains an error in a cell that a formula beside it fills", async () => {
    await enter("Y5", '=SAW.AREA({"round 7";"roud 7"})');
    await page.evaluate(() => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange("Y6").activate();
      document.dispatchEvent(new KeyboardEvent("keyup"));
    });
    await expect.poll(() => page.textContent("#explain")).toMatch(/^Y6 is #VALUE!: .*did you mean "round"\?/);
  });

  it("takes a whole column, heading and blanks and all: each row stands for itself, the empty end is dropped", async () => {
    await enter("W1", "=SAW.AREA(A:A)");
    expect(Number(await value("W6"))).toBeCloseTo(38.4845, 2);
    expect(String(await value("W1"))).toBe("#VALUE!");
    expect(await value("W3")).toBe("");
    expect((await value("W60")) ?? "").toBe("");
  });

  it("follows a changed input, and undo brings the old result back", async () => {
    const before = Number(await value("H5"));
    await enter("A5", "flat 6x1/2");
    expect(Number(await value("H5"))).toBeLessThan(before);
    await page.evaluate(() => window.kerfsheetGrid.undo());
    await expect.poll(async () => Number(await value("H5")), { timeout: 10_000 }).toBeCloseTo(before, 9);
  });

  it("shows the pane beside the grid", async () => {
    expect(await page.frameLocator("#pane").locator("h1").first().textContent()).toBe("Kerfsheet");
  });
});

describe("without a browser", () => {
  it("is a failure under CI", () => {
    if (process.env["CI"] === "true") expect(browserPath, "CI must have Chromium: see .ci/run").toBeDefined();
  });
});
