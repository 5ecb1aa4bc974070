import { readFileSync } from "node:fs";
import { buildSync } from "esbuild";
import type { Browser, Page } from "playwright-core";
import type { FakeBook } from "../taskpane/fakeExcel";

/** How the pane under test stands: with a fake of Excel, with the real office.js outside Excel, with office.js blocked. */
export type Office = "fake" | "real" | "missing" | "never ready";

const address = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const fake = buildSync({
  entryPoints: ["test/taskpane/fakePage.ts"],
  bundle: true,
  write: false,
  format: "iife",
  target: "es2020",
}).outputFiles[0]!.text;
const scripts: Readonly<Record<Exclude<Office, "missing">, () => string>> = {
  fake: () => fake,
  "never ready": () =>
    "globalThis.CustomFunctions = { associate() {} }; globalThis.Office = { HostType: { Excel: 'Excel' }, onReady: () => new Promise(() => {}) };",
  real: () => readFileSync("node_modules/@microsoft/office-js/dist/office.js", "utf8"),
};

export interface Seen {
  /** What the policy refused: directive and address or sample. */
  readonly violations: string[];
  readonly errors: string[];
  readonly requests: string[];
}

declare global {
  var fakeBook: FakeBook;
  var hostileTexts: readonly string[];
  var sawViolation: (text: string) => void;
}

/** The pane as Excel loads it. */
export async function openPane(
  browser: Browser,
  origin: string,
  office: Office,
): Promise<{ readonly page: Page; readonly seen: Seen }> {
  const page = await browser.newPage({ viewport: { width: 350, height: 720 } });
  const seen: Seen = { violations: [], errors: [], requests: [] };
  await page.exposeFunction("sawViolation", (text: string) => seen.violations.push(text));
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (e) => {
      globalThis.sawViolation(`${e.effectiveDirective} ${e.blockedURI} ${e.sample}`.trim());
    });
  });
  page.on("request", (r) => seen.requests.push(r.url()));
  // Without office.js the functions cannot be registered, and functions.js says so: that one is expected.
  page.on("pageerror", (e) => seen.errors.push(String(e)));
  await page.route(/^https:/, (route) => {
    const url = route.request().url();
    if (office === "missing") return route.abort();
    if (url === address) return route.fulfill({ contentType: "text/javascript", body: scripts[office]() });
    const part = /^https:\/\/appsforoffice\.microsoft\.com\/lib\/1\/hosted\/([\w.\-/]+\.js)$/.exec(url)?.[1];
    if (part === undefined) return route.abort();
    try {
      return route.fulfill({
        contentType: "text/javascript",
        body: readFileSync(`node_modules/@microsoft/office-js/dist/${part}`, "utf8"),
      });
    } catch {
      return route.abort();
    }
  });
  await page.goto(`${origin}/taskpane.html`);
  await page.waitForSelector("#tab-shop");
  return { page, seen };
}

/** A step to a state of the pane, with the keyboard only. */
export type Steps = (page: Page) => Promise<void>;

const type = (page: Page, text: string): Promise<void> => page.keyboard.type(text);
export const press = async (page: Page, ...keys: readonly string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};

/** Tabs on until the element has the focus; fails after 60 stops. */
export async function tabTo(page: Page, selector: string): Promise<void> {
  for (let i = 0; i < 60; i += 1) {
    if (await page.evaluate((s) => document.activeElement?.matches(s) === true, selector)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`the Tab key does not reach ${selector}`);
}

/** Chooses in a drop-down with the arrow keys. */
export async function choose(page: Page, selector: string, value: string): Promise<void> {
  await tabTo(page, selector);
  await page.keyboard.press("Home");
  for (let i = 0; i < 40; i += 1) {
    if ((await page.locator(selector).inputValue()) === value) return;
    await page.keyboard.press("ArrowDown");
  }
  throw new Error(`the arrow keys do not reach ${value}`);
}

export const find = async (page: Page, grade: string): Promise<void> => {
  await tabTo(page, "#grade");
  await type(page, grade);
  await press(page, "ArrowDown", "Enter");
};

export const openTab = async (page: Page, steps: number): Promise<void> => {
  await tabTo(page, "#tab-material");
  for (let i = 0; i < steps; i += 1) await press(page, "ArrowRight");
  await page.waitForSelector("[role=tabpanel]:not([hidden]) h2"); // some tabs are loaded when they are first shown
};

export const replaceText = async (page: Page, selector: string, text: string): Promise<void> => {
  await tabTo(page, selector);
  await press(page, "ControlOrMeta+a", "Delete");
  await type(page, text);
};

/** Every state that the pane can be in without a sheet, reached as a user of the keyboard does. */
export const states: Readonly<Record<string, Steps>> = {
  "first run": () => Promise.resolve(),
  list: async (page) => {
    await tabTo(page, "#grade");
    await type(page, "17-4");
    await press(page, "ArrowDown", "ArrowDown");
  },
  "no match": async (page) => {
    await tabTo(page, "#grade");
    await type(page, "1.4302");
  },
  card: async (page) => {
    await find(page, "S17400");
  },
  "card with hazards, all open": async (page) => {
    await find(page, "C17200");
    await page.evaluate(() => {
      for (const d of document.querySelectorAll("details")) d.open = true;
    });
  },
  error: async (page) => {
    await find(page, "304");
    await replaceText(page, "#card-size", "roud 7");
  },
  section: async (page) => {
    await openTab(page, 1);
    await replaceText(page, "#size", "W12x50");
    await tabTo(page, "#pitch");
    await type(page, "5/8");
  },
  "area alone": async (page) => {
    await openTab(page, 1);
    await replaceText(page, "#size", "area 38.5");
  },
  functions: async (page) => {
    await openTab(page, 2);
    await tabTo(page, "#ask");
    await type(page, "how long");
  },
  "no function": async (page) => {
    await openTab(page, 2);
    await tabTo(page, "#ask");
    await type(page, "xyzzy");
  },
  "one function": async (page) => {
    await openTab(page, 2);
    await tabTo(page, "#ask");
    await type(page, "what limits the cut");
    await tabTo(page, ".list .name");
    await press(page, "Enter");
  },
  working: async (page) => {
    await openTab(page, 2);
    await tabTo(page, "#ask");
    await type(page, "CUTRATE");
    await tabTo(page, ".list .name");
    await press(page, "Enter");
    await tabTo(page, "#show-working");
    await press(page, "Enter");
    await page.waitForSelector('table[aria-label="Working"]');
  },
  trouble: async (page) => {
    await openTab(page, 2);
    await tabTo(page, "#ask");
    await type(page, "CUTCHECK");
    await tabTo(page, ".list .name");
    await press(page, "Enter");
    await tabTo(page, "#show-trouble");
    await press(page, "Enter");
    await page.waitForSelector("#symptom");
  },
  shop: async (page) => {
    await openTab(page, 3);
    await tabTo(page, "#panel-shop summary");
    await press(page, "Enter");
  },
  workbook: async (page) => {
    await openTab(page, 4);
  },
};
