import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { browserPath, openBrowser, type Opened } from "./open";
import { choose, find, openPane, press, replaceText, states, tabTo, type Seen } from "./paneHelp";

/** The pane in a real browser, as Excel loads it: accessibility, policy, keyboard, and its talk with (a fake of) Excel. */

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
declare const axe: {
  run: (
    root: Document,
    options: object,
  ) => Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
};

const looks = [
  { colorScheme: "light", forcedColors: "none" },
  { colorScheme: "dark", forcedColors: "none" },
  { colorScheme: "light", forcedColors: "active" },
] as const;
const rules = {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  resultTypes: ["violations"],
};

/** What colours and widths may change; the words and the order of a page are the same in all looks. */
const ofLooks = {
  runOnly: { type: "rule", values: ["color-contrast", "link-in-text-block", "target-size"] },
  resultTypes: ["violations"],
};

/** Faults that axe finds: of all kinds in one look, of colours and sizes in every look at both widths; and anything that sticks out of the page. */
async function faults(page: Page): Promise<string[]> {
  await page.evaluate(axeSource);
  const found: string[] = [];
  for (const look of looks) {
    await page.emulateMedia(look);
    for (const width of [320, 350]) {
      await page.setViewportSize({ width, height: 720 });
      const kinds = look === looks[0] && width === 320 ? rules : ofLooks;
      const { violations } = await page.evaluate((options) => axe.run(document, options), kinds);
      found.push(
        ...violations.map(
          (v) =>
            `${look.colorScheme} ${look.forcedColors} ${width}: ${v.id} ${v.nodes[0]?.html ?? ""} ${v.nodes[0]?.failureSummary ?? ""}`,
        ),
      );
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (over > 0) found.push(`${width}: ${over} px wider than the page`);
    }
  }
  return found;
}

/** Everything clickable is at least 24 px high and wide, or stands in a sentence. */
const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("button, input, select, summary")]
      .filter(
        (e) =>
          e.offsetParent !== null &&
          (e as HTMLInputElement).type !== "radio" &&
          (e.getBoundingClientRect().height < 24 || e.getBoundingClientRect().width < 24),
      )
      .map((e) => e.outerHTML.slice(0, 80)),
  );

describe.runIf(browserPath !== undefined)("the pane", () => {
  let opened: Opened;
  beforeAll(async () => {
    opened = await openBrowser();
  });
  afterAll(() => opened.close());

  const own = (seen: Seen): string[] =>
    [...new Set(seen.requests.map((r) => new URL(r).origin))].filter((o) => o !== opened.origin);

  describe.each(Object.entries(states))("state: %s", (name, go) => {
    it("has no fault at 320 and 350 px, light, dark and in forced colours; targets are 24 px; breaks no policy; fits with the text twice as large", async () => {
      const { page, seen } = await openPane(opened.browser, opened.origin, "missing");
      await go(page);
      expect(seen.violations).toEqual([]);
      expect(seen.errors).toEqual([]);
      expect(own(seen)).toEqual(["https://appsforoffice.microsoft.com"]);
      expect(await faults(page), name).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      await page.setViewportSize({ width: 320, height: 720 });
      await page.evaluate(() => {
        document.documentElement.style.fontSize = "200%";
      });
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBeLessThanOrEqual(0);
      await page.close();
    });
  });

  it("is checked by a net that catches: a picture without words is a fault", async () => {
    const { page } = await openPane(opened.browser, opened.origin, "missing");
    await page.evaluate(() => {
      document.body.append(document.createElement("img"));
    });
    expect((await faults(page)).some((f) => f.includes("image-alt"))).toBe(true);
    await page.close();
  });

  it("the help page has no fault, breaks no policy, opens at the function and prints without its list", async () => {
    const page = await opened.browser.newPage({ viewport: { width: 320, height: 720 } });
    const problems: string[] = [];
    page.on("console", (m) => {
      if (m.type() === "error") problems.push(m.text());
    });
    await page.goto(`${opened.origin}/help.html#BREAKEVEN`);
    expect(
      Math.abs(await page.evaluate(() => document.getElementById("BREAKEVEN")!.getBoundingClientRect().top)),
    ).toBeLessThan(5);
    await page.evaluate(axeSource);
    for (const look of looks) {
      await page.emulateMedia(look);
      expect(
        (
          await page.evaluate((options) => axe.run(document, options), look === looks[0] ? rules : ofLooks)
        ).violations.map((v) => `${v.id} ${v.nodes[0]?.html ?? ""}`),
      ).toEqual([]);
    }
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBeLessThanOrEqual(0);
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("nav").isVisible()).toBe(false);
    expect(problems.filter((p) => !p.includes("favicon") && !p.includes("404"))).toEqual([]);
    await page.close();
  });

  it("keeps the top right 34 × 32 px free", async () => {
    const { page } = await openPane(opened.browser, opened.origin, "missing");
    const there = await page.evaluate(() =>
      [320, 335, 349].flatMap((x) => [2, 16, 31].map((y) => document.elementFromPoint(x, y)?.tagName)),
    );
    expect(there.every((t) => t === "HEADER" || t === "BODY" || t === "HTML" || t === "H1")).toBe(true);
    const right = await page.evaluate(() => {
      const range = document.createRange();
      range.selectNodeContents(document.querySelector("h1")!);
      return range.getBoundingClientRect().right;
    });
    expect(right).toBeLessThan(350 - 34);
    await page.close();
  });

  it("shows itself and finds grades while Excel never answers, with the reason beside the button that waits", async () => {
    const { page, seen } = await openPane(opened.browser, opened.origin, "never ready");
    await find(page, "304");
    expect(await page.textContent("h2 >> visible=true")).toContain("304");
    expect(await page.textContent("#target")).toMatch(/Waiting for Excel/);
    expect(await page.locator(".main >> visible=true").isDisabled()).toBe(true);
    expect(seen.errors).toEqual([]);
    await page.close();
  });

  it("says that office.js is missing, and that looking up still works", async () => {
    const { page } = await openPane(opened.browser, opened.origin, "missing");
    expect(await page.textContent("#target")).toMatch(/office\.js.*did not load.*looking things up works/);
    await page.close();
  });

  it("says that it is not in Excel, with the real office.js; only the two faults of office.js itself are seen", async () => {
    const { page, seen } = await openPane(opened.browser, opened.origin, "real");
    await expect.poll(() => page.textContent("#target"), { timeout: 10_000 }).toMatch(/outside Excel/);
    const known = [/^style-src(-attr)? inline/, /^frame-src https:\/\/telemetryservice\.firstpartyapps\.oaspapps\.com/];
    expect(seen.violations.filter((v) => !known.some((k) => k.test(v)))).toEqual([]);
    await page.close();
  });

  it("says that a part did not load, and loads it the next time", async () => {
    const { page, seen } = await openPane(opened.browser, opened.origin, "missing");
    await page.route("**/more.js", (route) => route.abort());
    await page.locator("#tab-workbook").click();
    await expect.poll(() => page.textContent("#panel-workbook")).toMatch(/did not load/);
    expect(await page.locator("#tab-material").isEnabled()).toBe(true);
    await page.unroute("**/more.js");
    await page.locator("#tab-material").click();
    await page.locator("#tab-workbook").click();
    await expect.poll(() => page.locator("#panel-workbook h2").textContent()).toBe("Workbook");
    expect(seen.violations).toEqual([]);
    await page.close();
  });

  it("lets office.js load its own parts and nothing else become code", async () => {
    const { page } = await openPane(opened.browser, opened.origin, "fake");
    const refused = await page.evaluate(() =>
      [
        "https://appsforoffice.microsoft.com.example/x.js",
        "http://appsforoffice.microsoft.com/x.js",
        "//appsforoffice.microsoft.com/x.js",
        "x.js",
        "data:text/javascript,1",
        "https://appsforoffice.microsoft.com/lib/x.js",
      ].map((address) => {
        try {
          document.createElement("script").src = address;
          return false;
        } catch {
          return true;
        }
      }),
    );
    expect(refused).toEqual([true, true, true, true, true, false]);
    expect(
      await page.evaluate(() => {
        try {
          document.body[("inner" + "HTML") as "innerHTML"] = "<b>x</b>";
          return false;
        } catch {
          return true;
        }
      }),
    ).toBe(true);
    await page.close();
  });

  describe("in Excel (a fake)", () => {
    let page: Page;
    let seen: Seen;
    beforeAll(async () => {
      ({ page, seen } = await openPane(opened.browser, opened.origin, "fake"));
      await page.evaluate(() => {
        for (const [c, text] of ["size", "material", "blade", "pieces"].entries()) fakeBook.put("Sheet1", 3, c, text);
        for (let r = 4; r < 10; r += 1)
          for (const [c, text] of ["round 7", "17-4PH", "bi-metal"].entries()) fakeBook.put("Sheet1", r, c, text);
        for (let r = 4; r < 10; r += 1) fakeBook.put("Sheet1", r, 3, r);
        fakeBook.select({ row: 6, column: 4 });
      });
    });
    afterAll(() => page.close());

    const formula = (row: number, column: number) =>
      page.evaluate(([r, c]) => fakeBook.get("Sheet1", r!, c!).formula, [row, column]);
    const select = (change: Parameters<FakeSelect>[0]) =>
      page.evaluate((to) => {
        fakeBook.select(to);
      }, change);
    type FakeSelect = typeof fakeBook.select;
    const button = () => page.locator("[role=tabpanel]:not([hidden]) .main >> visible=true").first();
    const said = () =>
      page.locator("[role=tabpanel]:not([hidden]) .insert [role=status] >> visible=true").first().textContent();

    it("shows the target, writes the name as text, keeps the focus, says so and takes it back", async () => {
      await find(page, "17-4PH");
      await expect.poll(() => button().textContent()).toBe("Insert into Sheet1!E7");
      expect(await page.textContent("#target")).toBe("Selected: Sheet1!E7, empty");
      await tabTo(page, ".main");
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^Written into Sheet1!E7\. /);
      expect(await formula(6, 4)).toMatch(/^17-4PH/);
      expect(await page.evaluate(() => document.activeElement?.className)).toBe("main");
      await press(page, "Tab", "Enter");
      await expect.poll(said).toMatch(/^Undone/);
      expect(await formula(6, 4)).toBe("");
    });

    it("writes a ready formula for the row, and down a column", async () => {
      await choose(page, "#what", "rate");
      expect(await page.locator(".sample >> visible=true").first().textContent()).toBe("=SAW.CUTRATE(A7,B7,C7)");
      await select({ row: 4, rows: 6 });
      await expect.poll(() => button().textContent()).toBe("Insert into Sheet1!E5:E10");
      await tabTo(page, ".main");
      await press(page, "Space");
      await expect.poll(said).toMatch(/^Written into Sheet1!E5:E10/);
      expect(await formula(4, 4)).toBe("=SAW.CUTRATE(A5,B5,C5)");
      expect(await formula(9, 4)).toBe("=SAW.CUTRATE(A10,B10,C10)");
    });

    it("asks before it writes over something; Escape keeps it", async () => {
      await select({ row: 6, rows: 1 });
      await tabTo(page, ".main");
      await press(page, "Enter");
      await expect
        .poll(() => page.locator(".asked >> visible=true").textContent())
        .toMatch(/^E7 holds =SAW\.CUTRATE\(A7,B7,C7\)/);
      expect(await faults(page)).toEqual([]);
      await tabTo(page, ".asked button");
      await press(page, "Escape");
      expect(await page.locator(".asked >> visible=true").count()).toBe(0);
      expect(await page.evaluate(() => document.activeElement?.className)).toBe("main");
      await choose(page, "#what", "density");
      await tabTo(page, ".main");
      await press(page, "Enter");
      await expect.poll(() => page.locator(".asked >> visible=true").count()).toBe(1);
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^Written/);
      expect(await formula(6, 4)).toBeCloseTo(0.282, 3);
    });

    it("answers plainly: several areas, a protected sheet, a cell that is being edited", async () => {
      await select({ areas: 2, column: 5 });
      await expect.poll(() => button().textContent()).toBe("Insert");
      await tabTo(page, ".main");
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^Several areas are selected/);
      await select({ areas: 1, column: 6 });
      await page.evaluate(() => {
        fakeBook.sheets.get("Sheet1")!.protected = true;
      });
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^Sheet1 is protected/);
      await page.evaluate(() => {
        fakeBook.sheets.get("Sheet1")!.protected = false;
        fakeBook.refuse = { call: "range.formulas", code: "InvalidOperationInCellEditMode" };
      });
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^A cell is being edited/);
      await page.evaluate(() => {
        fakeBook.refuse = { call: "getSelectedRanges", code: "InvalidSelection" };
        fakeBook.select({ column: 7 });
      });
      await expect.poll(() => page.textContent("#target")).toMatch(/^No cell is selected/);
      await page.evaluate(() => {
        fakeBook.refuse = undefined;
        fakeBook.select({ column: 4, row: 20 });
      });
    });

    it("inserts an example of a function, and the function for the row", async () => {
      await tabTo(page, "#tab-material");
      await press(page, "ArrowRight", "ArrowRight");
      await tabTo(page, "#ask");
      await page.keyboard.type("which pitch");
      await tabTo(page, ".list .name");
      await press(page, "Enter");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("SAW.PITCH");
      await select({ row: 5, column: 5 });
      await expect.poll(() => button().textContent()).toBe("Insert into Sheet1!F6");
      await tabTo(page, ".main");
      await press(page, "Enter");
      await expect.poll(said).toMatch(/^Written/);
      expect(await formula(5, 5)).toBe("=SAW.PITCH(A6,B6,C6)");
      await select({ row: 40, column: 0 });
      await tabTo(page, "#panel-functions .insert ~ .insert .main");
      await press(page, "Enter");
      await expect.poll(() => formula(40, 0)).toMatch(/^=SAW\.PITCH\("round 7"/);
      expect(await page.getAttribute("#panel-functions a", "href")).toBe("help.html#PITCH");
      await tabTo(page, ".back");
      await press(page, "Enter");
      expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("PITCH");
    });

    it("shows the working of the selected row here and inserts it, and the causes in the order of the selected CUTCHECK", async () => {
      await replaceText(page, "#ask", "CUTRATE");
      await tabTo(page, ".list .name");
      await press(page, "Enter");
      await select({ row: 5, column: 5 });
      await tabTo(page, "#show-working");
      await press(page, "Enter");
      await expect
        .poll(() => page.locator('table[aria-label="Working"]').textContent())
        .toMatch(/band speed wanted.*vw = vg × s × h × c × a/);
      await select({ row: 50, column: 0 });
      await tabTo(page, "#show-working ~ .insert .main");
      await press(page, "Enter");
      await expect.poll(() => formula(50, 0)).toMatch(/^=SAW\.WORKING\("CUTRATE","round 7"/);
      await tabTo(page, ".back");
      await press(page, "Enter");
      await replaceText(page, "#ask", "CUTCHECK");
      await tabTo(page, ".list .name");
      await press(page, "Enter");
      await tabTo(page, "#show-trouble");
      await press(page, "Enter");
      await choose(page, "#symptom", "dull too soon");
      await expect.poll(() => page.locator("#panel-functions ol").textContent()).toMatch(/reason:/);
      await page.evaluate(() => {
        fakeBook.put("Sheet1", 51, 0, '=SAW.CUTCHECK("round 4","304","bi-metal","3/4",200,2.9)');
        fakeBook.select({ row: 51, column: 0 });
      });
      await expect
        .poll(() => page.locator("#panel-functions ol li").first().textContent())
        .toMatch(/1\.6\d times the speed wanted.*Slow the band to/);
      await tabTo(page, ".back");
      await press(page, "Enter");
      await replaceText(page, "#ask", "which pitch");
    });

    it("offers Undo only where the last write was", async () => {
      await select({ row: 45, column: 0 });
      const [first, second] = [
        page.locator("#panel-functions .insert").nth(0),
        page.locator("#panel-functions .insert").nth(1),
      ];
      await page.locator("#ask").fill("which pitch");
      await page.locator(".list .name").first().press("Enter");
      await first.locator(".main").press("Enter");
      await expect.poll(() => first.getByText("Undo").count()).toBe(1);
      await second.locator(".main").press("Enter");
      await second.getByText("Write over it").press("Enter");
      await expect.poll(() => second.getByText("Undo").count()).toBe(1);
      expect(await first.getByText("Undo").count()).toBe(0);
      await page.locator(".back").press("Enter");
    });

    it("inserts the shop block as a named range, metric when metric is chosen, and formulas then use its name", async () => {
      await tabTo(page, "#units-inch");
      await press(page, "ArrowRight");
      await tabTo(page, "#tab-functions");
      await press(page, "ArrowRight");
      await select({ row: 60, column: 0 });
      await tabTo(page, "#panel-shop .main");
      await press(page, "Enter");
      await expect.poll(said).toMatch(/named Shop\./);
      expect([await formula(60, 0), await formula(60, 1), await formula(61, 0)]).toEqual([
        "Units",
        "metric",
        "Hourly cost",
      ]);
      expect(await page.evaluate(() => [...fakeBook.names])).toEqual([
        ["Shop", expect.stringMatching(/^='Sheet1'!\$A\$61:\$C\$\d+$/)],
      ]);
      await tabTo(page, "#tab-shop");
      await press(page, "Home");
      await choose(page, "#what", "rate");
      await select({ row: 5, column: 8 });
      await expect
        .poll(() => page.locator(".sample >> visible=true").first().textContent())
        .toBe('=SAW.CUTRATE(A6,B6,C6,,Shop,,"metric")');
    });

    it("draws the size of the selected cell", async () => {
      await page.evaluate(() => {
        fakeBook.put("Sheet1", 80, 0, "'tube 100x10");
        fakeBook.select({ row: 80, column: 0 });
      });
      await tabTo(page, "#tab-material");
      await press(page, "ArrowRight");
      await expect
        .poll(() => page.locator("#panel-section button").textContent())
        .toBe("Draw the selected cell: tube 100x10");
      await tabTo(page, "#panel-section button");
      await press(page, "Enter");
      expect(await page.getAttribute(".picture", "aria-label")).toMatch(/tube 100 mm x 10 mm/);
      expect(await page.textContent("#panel-section table")).toMatch(/100 mm/);
    });

    it("keeps a hostile size inside the formula's quotes, and every text a text", async () => {
      await tabTo(page, "#tab-section");
      await press(page, "Home");
      await replaceText(page, "#card-size", '7"&HYPERLINK("x")&"');
      await page.evaluate(() => {
        fakeBook.select({ row: 90, column: 12 });
      });
      await expect
        .poll(() => page.locator(".sample >> visible=true").first().textContent())
        .toMatch(/^=SAW\.CUTRATE\("7""&HYPERLINK\(""x""\)&""",/);
    });

    it("lists the cells that use it and those in error, with nothing read unasked, and goes to one", async () => {
      await page.evaluate(() => {
        fakeBook.refuse = undefined;
        for (let r = 0; r < 30; r += 1)
          fakeBook.set("Sheet1", 100 + r, 4, { formula: '=SAW.AREA("roud 7")', value: "#VALUE!" });
        fakeBook.set("Sheet1", 130, 4, { formula: "=ROUND(SAW.AREA(A5),1)", value: "#NAME?" });
        fakeBook.select({ row: 0, column: 12 });
      });
      await tabTo(page, "[role=tab][tabindex='0']");
      await press(page, "End");
      await page.waitForSelector("#panel-workbook h2");
      const before = await page.evaluate(() => fakeBook.syncs);
      await page.waitForTimeout(100);
      expect(await page.evaluate(() => fakeBook.syncs)).toBe(before);
      await tabTo(page, "#panel-workbook .main");
      await press(page, "Enter");
      const status = page.locator("#panel-workbook [role=status]").first();
      await expect.poll(() => status.textContent()).toMatch(/^\d+ cells use Kerfsheet, 31 in error\.$/);
      expect(await page.locator("#panel-workbook .list li").first().textContent()).toMatch(
        /^30 cells: .*did you mean "round".*and 10 more cells$/,
      );
      expect(await page.textContent("#panel-workbook table")).toMatch(/SAW\.AREA3[12] cells/);
      expect(await faults(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
      await tabTo(page, "#panel-workbook .recents button");
      await press(page, "Enter");
      await expect
        .poll(() => page.textContent("#target"))
        .toMatch(/^Selected: Sheet1!E101, #VALUE!: .*did you mean "round"/);
    });

    it("copies the sheets that are ticked, as values, and says what was made and what not", async () => {
      await page.evaluate(() => {
        fakeBook.sheets.set("Costs", { ...fakeBook.sheets.get("Sheet1")!, cells: new Map(), hidden: true });
      });
      await page.locator("#panel-workbook button >> text=Choose sheets").focus();
      await press(page, "Enter");
      await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe("sheet-0");
      expect(await page.locator(".sheets label").allTextContents()).toEqual(["Sheet1", "Costs (hidden)"]);
      const copy = page.locator("#panel-workbook button >> text=Copy as values");
      const status = page.locator("#panel-workbook .sheets ~ [role=status]");
      await copy.focus();
      await press(page, "Enter");
      await expect.poll(() => status.textContent()).toMatch(/^No sheet is chosen/);
      await page.locator("#sheet-0").focus();
      await press(page, "Space", "Tab", "Space");
      await page.evaluate(() => {
        fakeBook.written.clear();
      });
      await copy.focus();
      await press(page, "Enter");
      await expect.poll(() => status.textContent()).toBe("1 sheet made.");
      expect(await page.textContent(".sheets ~ .quiet")).toMatch(
        /^Not carried over: .*This workbook still holds all its other sheets/,
      );
      expect(await page.locator(".sheets ~ ul li").allTextContents()).toEqual([
        "Sheet1 is copied to Sheet1 values. Cells of it in error: 31.",
        expect.stringMatching(/^Costs was not copied, .*No cell of it shows anything/),
      ]);
      expect(await page.evaluate(() => [[...fakeBook.sheets.keys()], [...fakeBook.written]])).toEqual([
        ["Sheet1", "Costs", "Sheet1 values"],
        ["Sheet1 values"],
      ]);
      expect(await faults(page)).toEqual([]);
      expect(await smallTargets(page)).toEqual([]);
    });

    it("has broken no policy, asked no other machine and thrown nothing in all of this", () => {
      expect(seen.violations).toEqual([]);
      expect(seen.errors).toEqual([]);
      expect(own(seen)).toEqual(["https://appsforoffice.microsoft.com"]);
    });
  });
});

describe("the built pane", () => {
  it("makes no HTML from text and evaluates nothing", () => {
    for (const file of ["pane.js", "more.js", "core.js", "trusted.js", "functions.js"])
      expect(readFileSync(`dist/${file}`, "utf8"), file).not.toMatch(
        /\.innerHTML|\.outerHTML|insertAdjacentHTML|document\.write|\beval\(|\bnew Function\b|localStorage|sessionStorage|document\.cookie|indexedDB/,
      );
  });
});
