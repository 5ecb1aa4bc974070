import type { Page } from "playwright-core";

interface Api {
  getActiveWorkbook(): { getActiveSheet(): Sheet; getSheetByName(name: string): Sheet };
  getFormula(): { calculationResultApplied(tell: () => void): { dispose(): void } };
}
interface Sheet {
  getRange(a: string): { setValue(v: unknown): void };
}
declare const window: { kerfsheetGrid: Api };

/** Puts a content into a cell of a sheet, or of the one in sight, and waits until what follows is calculated. */
export async function enterCell(page: Page, sheet: string | undefined, a1: string, content: unknown): Promise<void> {
  await page.evaluate(
    async ([name, at, what]) => {
      const api = window.kerfsheetGrid;
      const book = api.getActiveWorkbook();
      const applied = new Promise<void>((done) => {
        const told = api.getFormula().calculationResultApplied(() => {
          told.dispose();
          done();
        });
      });
      (name === "" ? book.getActiveSheet() : book.getSheetByName(name)).getRange(at).setValue(what);
      // What nothing depends on is not calculated.
      await Promise.race([applied, new Promise((done) => setTimeout(done, 2000))]);
    },
    [sheet ?? "", a1, content] as const,
  );
  // A spill that shrank is calculated once more.
  await page.waitForTimeout(150);
}
