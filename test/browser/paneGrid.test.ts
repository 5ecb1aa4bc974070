import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { FrameLocator, Page } from "playwright-core";
import { hostileTexts } from "../taskpane/injection";
import { browserPath, openTryit } from "./open";

/** The pane beside a grid that calculates: what it writes is there, is calculated, stays text where it is text, and can be taken back. */

interface Cell {
  getRawValue(): unknown;
  getValue(): unknown;
  getFormula(): string;
  activate(): void;
}
interface GridSheetApi {
  getSheetName(): string;
  getRange(a: string | number, b?: number, c?: number, d?: number): Cell;
}
interface PaneSheet {
  write(order: object): Promise<{ did: string }>;
  undo(): Promise<{ did: string }>;
}
declare const window: {
  kerfsheetGrid: {
    getActiveWorkbook(): {
      getActiveSheet(): GridSheetApi;
      getSheets(): { getSheetName(): string }[];
      getDefinedNames(): { getName(): string }[];
    };
  };
  kerfsheetSheet: PaneSheet;
  document: Document;
};

describe.runIf(browserPath !== undefined)("the pane beside the grid", () => {
  let opened: Awaited<ReturnType<typeof openTryit>>;
  let page: Page;
  let pane: FrameLocator;
  let seen: typeof opened.seen;

  beforeAll(async () => {
    opened = await openTryit();
    ({ page, seen } = opened);
    pane = page.frameLocator("#pane");
  });
  afterAll(() => opened.close());

  const cell = (a1: string) =>
    page.evaluate((at) => {
      const c = window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at);
      return { value: c.getRawValue() ?? c.getValue(), formula: c.getFormula() };
    }, a1);
  /** Selects as a user's click does: the page listens to the pointer on the grid. */
  const select = async (a1: string) => {
    await page.evaluate((at) => {
      window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getRange(at).activate();
      window.document.getElementById("grid")!.dispatchEvent(new Event("pointerup"));
    }, a1);
    await page.waitForTimeout(80);
  };
  const main = () => pane.locator(".main >> visible=true").first();
  const said = () => pane.locator(".insert [role=status] >> visible=true").first().textContent();

  it("knows the sheet beside it, and where the user is", async () => {
    await select("Z40");
    await expect.poll(() => pane.locator("#target").textContent()).toMatch(/^Selected: .+!Z40, empty$/);
  });

  it("writes a grade's name and takes it back", async () => {
    await pane.locator("#grade").fill("S17400");
    await pane.locator("#grade").press("Enter");
    await main().click();
    await expect.poll(said).toMatch(/^Written into .+!Z40\. /);
    expect((await cell("Z40")).value).toMatch(/^17-4PH/);
    await pane.locator(".insert button >> text=Undo >> visible=true").first().click();
    await expect.poll(said).toMatch(/^Undone/);
    expect((await cell("Z40")).value ?? "").toBe("");
  });

  it("asks before it writes over something", async () => {
    await select("Z41");
    await main().click();
    await expect.poll(said).toMatch(/^Written/);
    await select("Z42");
    await select("Z41");
    await main().click();
    await expect.poll(() => pane.locator(".asked >> visible=true").textContent()).toMatch(/^Z41 holds 17-4PH/);
    await pane.locator("text=Keep it >> visible=true").click();
    expect(await pane.locator(".asked >> visible=true").count()).toBe(0);
  });

  it("writes a formula that the grid calculates, down a column", async () => {
    await select("AA50:AA52");
    await pane.locator("#what").selectOption("pitch");
    await main().click();
    await expect.poll(said).toMatch(/AA50:AA52/);
    expect((await cell("AA50")).formula).toMatch(/^=SAW\.PITCH\(/);
    await expect.poll(async () => (await cell("AA51")).value).toMatch(/^\d+(\.\d+)?\/\d+$|^\d+$/);
  });

  it("inserts the shop block under a name", async () => {
    await pane.locator("#tab-shop").click();
    await select("AA60");
    await main().click();
    await expect.poll(said).toMatch(/named Shop/);
    expect([(await cell("AA60")).value, (await cell("AB60")).value]).toEqual(["Units", "inch"]);
    expect(
      await page.evaluate(() =>
        window.kerfsheetGrid
          .getActiveWorkbook()
          .getDefinedNames()
          .map((n) => n.getName())
          .some((n) => n.startsWith("Shop")),
      ),
    ).toBe(true);
  });

  it("keeps each of 50 hostile texts as text", async () => {
    const sheet = /^Selected: (.+)![A-Z]+\d+/.exec((await pane.locator("#target").textContent())!)![1]!;
    const done = await page.evaluate(
      ([name, texts]) =>
        window.kerfsheetSheet.write({
          at: { sheet: name, row: 110, column: 26 },
          cells: (texts as string[]).map((text) => [{ text }]),
          overwrite: false,
        }),
      [sheet, hostileTexts] as const,
    );
    expect(done).toEqual({ did: "written" });
    await page.waitForTimeout(300);
    for (const [i, text] of hostileTexts.entries())
      expect(await cell(`AA${111 + i}`), text).toEqual({ value: text, formula: "" });
  });

  it("draws the size in the selected cell", async () => {
    await pane.locator("#tab-section").click();
    await select("AA55");
    const sheet = /^Selected: (.+)![A-Z]+\d+/.exec((await pane.locator("#target").textContent())!)![1]!;
    await page.evaluate(
      (name) =>
        window.kerfsheetSheet.write({
          at: { sheet: name, row: 54, column: 26 },
          cells: [[{ text: "W12x50" }]],
          overwrite: true,
        }),
      sheet,
    );
    await select("AA56");
    await select("AA55");
    await pane.locator("text=Draw the selected cell: W12x50").click();
    expect(await pane.locator(".picture").getAttribute("aria-label")).toMatch(/W12X50/);
  });

  it("says why the selected cell holds an error", async () => {
    await page.evaluate(
      (name) =>
        window.kerfsheetSheet.write({
          at: { sheet: name, row: 100, column: 26 },
          cells: [[{ text: "roud 7" }, { formula: "=SAW.AREA(AA101)" }]],
          overwrite: true,
        }),
      await page.evaluate(() => window.kerfsheetGrid.getActiveWorkbook().getActiveSheet().getSheetName()),
    );
    await page.waitForTimeout(400);
    await select("AB101");
    await expect.poll(() => pane.locator("#target").textContent()).toMatch(/AB101, #VALUE!: .*did you mean "round"/);
  });

  it("lists the cells of all sheets that use it, those in error by their row, and goes to a cell of another sheet", async () => {
    await page.evaluate(() =>
      window.kerfsheetSheet.write({
        at: { sheet: "Purchase", row: 6, column: 1 },
        cells: [[{ text: "€385,00" }]],
        overwrite: true,
      }),
    );
    await page.waitForTimeout(1000);
    await pane.locator("#tab-workbook").click();
    await pane.locator("#panel-workbook .main").first().click();
    await expect
      .poll(() => pane.locator("#panel-workbook [role=status]").first().textContent(), { timeout: 20_000 })
      .toMatch(/^\d+ cells use Kerfsheet, \d+ in error\.$/);
    expect(await pane.locator("#panel-workbook .problem").textContent()).toMatch(/only the first was looked at/);
    const here = (await pane.locator("#target").textContent())!;
    const places = pane.locator("#panel-workbook .recents button");
    const other = (await places.allTextContents()).find((p) => !here.includes(p.split("!")[0]!))!;
    expect(other).toMatch(/^.+![A-Z]+\d+ and \d+ more$/);
    await pane.locator("#panel-workbook .recents button", { hasText: other }).first().click();
    await expect.poll(() => pane.locator("#target").textContent()).toContain(`Selected: ${other.split(" ")[0]!}, #`);
  });

  it("says that copying a sheet works in Excel only", async () => {
    await pane.locator("text=Choose sheets").click();
    await pane.locator("#sheet-0").check();
    await pane.locator("text=Copy as values").click();
    await expect.poll(() => pane.locator(".sheets ~ ul li").textContent()).toMatch(/works in Excel only/);
  });

  it("asks nothing of any other machine, and breaks no policy", () => {
    expect([...new Set(seen.requests.map((r) => new URL(r).origin))]).toEqual([opened.origin]);
    expect(seen.problems).toEqual([]);
  });
});
