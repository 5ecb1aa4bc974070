import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { folder } from "../functions/workbook/fixture";
import { cellsOf, hands, ready } from "./hands";
import { browserPath, openBrowser, watch, type Opened } from "./open";

/**
 * Three days at the page, one after the other, as a person has them, each ending with a saved file that recalc (the engine
 * without a page) finds right; the estimator's by the keyboard alone. Invented data.
 */

declare const window: { print: () => void };

describe.runIf(browserPath !== undefined)("a day at the page", () => {
  let opened: Opened;
  let page: Page;
  let seen: ReturnType<typeof watch>;
  const dir = folder();
  const { text, value, type, paste, show, go, walk, enter, putDown, press, download, saved } = hands(() => page, dir);

  beforeAll(async () => {
    opened = await openBrowser();
    const context = await opened.browser.newContext({ viewport: { width: 1440, height: 900 } });
    await context.grantPermissions(["clipboard-read", "clipboard-write"]);
    page = await context.newPage();
    seen = watch(page);
    await page.goto(`${opened.origin}/`);
    await ready(page);
  });
  afterAll(() => opened.close());

  it("the buyer: a bad cell spoils its own offer and is named, an offer is renamed and made dearer; table, curves and names follow", async () => {
    await show("Purchase");
    await type("B7", "€640,00");
    await expect
      .poll(() => value("A12"), { timeout: 20_000 })
      .toBe("3 ranked; not ranked: price of offer Q, carbide is text, €640,00: write 640");
    expect(Number(await value("C15"))).toBeCloseTo(0.1821, 4);
    await type("B7", "640");
    await type("A6", "north mill, carbide");
    await type("B6", "480");
    await expect.poll(() => value("A12"), { timeout: 20_000 }).toBe("5 ranked");
    await expect.poll(() => value("A24")).toMatch(/^north mill, carbide against in use, bi-metal/);
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
    const grades = builtInMaterials()
      .slice(0, 60)
      .map((m) => m.name);
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
    await expect.poll(() => text("#printed")).toMatch(/round 5/);
    expect(await text("#printed")).not.toMatch(/#N\/A|#VALUE/);
    const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g)?.length).toBe(1);
    const cells = await saved();
    const groups = grades.map((_, i) => cells.get(`Cuts!W${i + 2}`)!.value);
    expect(groups.every((g) => typeof g === "string" && !g.startsWith("#"))).toBe(true);
    expect(cells.get("Cuts!X2")!.value).toMatch(/[a-z]{3}/);
    expect(cells.get("Card!B4")!.value).toBe("round 5");
  });

  it("the estimator, by the keyboard alone: 40 lines out of a mail, a misspelt one mended, priced, saved, sent as values", async () => {
    const file = join(dir, "order.csv");
    writeFileSync(file, "size,material,length,wanted,pieces\n");
    const [chooser] = await Promise.all([page.waitForEvent("filechooser"), press("Open a workbook…")]);
    await chooser.setFiles(file);
    await expect.poll(() => text("#book")).toMatch(/^order\.xlsx/);
    const sizes = ["round 3", "round 4-1/2", "flat 6x1", "square 3", "tube 6x0.5"];
    const lines = Array.from({ length: 40 }, (_, i) =>
      [i === 11 ? "roud 7" : sizes[i % 5], ["1018", "4140", "A36", "304"][i % 4], 6 + (i % 3), "bi-metal", 5 + i].join(
        "\t",
      ),
    );
    await go("grid");
    await walk("A2");
    await putDown(lines.join("\n"));
    const shop = '{"Units","inch";"Hourly cost",72;"Bi-metal price",180;"Bi-metal life",9000;"Stock length","20 ft"}';
    for (const [at, formula] of [
      ["F2", `=SAW.QUOTE(A2:A41,D2:D41,E2:E41,${shop},B2:B41,C2:C41,,"price line")`],
      ["G2", '=COUNT(F2:F41)&" priced, "&(COUNTA(A2:A41)-COUNT(F2:F41))&" refused"'],
      ["H2", '=SUMIF(F2:F41,">0")'],
    ] as const) {
      await walk(at);
      await enter(formula);
    }
    await expect.poll(() => value("G2"), { timeout: 20_000 }).toBe("39 priced, 1 refused");
    const before = Number(await value("H2"));
    await walk("F13");
    await expect.poll(() => text("#explain")).toMatch(/^F13 is #N\/A: .*unknown word "roud"/);
    await walk("A13");
    await enter("round 7");
    await expect.poll(() => value("G2"), { timeout: 20_000 }).toBe("40 priced, 0 refused");
    const total = Number(await value("H2"));
    expect(total).toBeGreaterThan(before);
    const cells = await saved();
    const prices = Array.from({ length: 40 }, (_, i) => Number(cells.get(`Lines!F${i + 2}`)!.value));
    expect(prices.reduce((a, b) => a + b, 0)).toBeCloseTo(total, 6);
    const values = await download(async () => {
      await press("Send as values…");
      await page.waitForSelector("#ask-go");
      await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
    });
    const sent = cellsOf(readFileSync(values));
    expect(sent.get("Lines!H2")!.value).toBeCloseTo(total, 9);
    expect([...sent.values()].filter((c) => c.formula !== undefined)).toEqual([]);
    expect(seen.problems).toEqual([]);
  });
});
