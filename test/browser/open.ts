import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { chromium, type Browser, type Frame, type Page } from "playwright-core";
import { wantBuilt } from "../../config/built.mjs";
import { serve } from "../../config/serve.mjs";

const places = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/opt/google/chrome/chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
];

/** The browser of this machine; undefined where there is none. */
export const browserPath = [process.env["CHROME_PATH"], ...places].find((p) => p !== undefined && existsSync(p));

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export interface Opened {
  readonly browser: Browser;
  readonly origin: string;
  readonly close: () => Promise<void>;
}

/** Serves dist/ on this machine and starts the browser. */
export async function openBrowser(): Promise<Opened> {
  wantBuilt("dist");
  const { server, port } = await serve(resolve("dist"), 3100);
  const browser = await chromium.launch({ executablePath: browserPath!, args: quiet, headless: true });
  return {
    browser,
    origin: `http://127.0.0.1:${port}`,
    close: async () => {
      await browser.close();
      server.close();
    },
  };
}

const types: Readonly<Record<string, string>> = {
  html: "text/html",
  js: "text/javascript",
  css: "text/css",
  json: "application/json",
  png: "image/png",
};

/** A file of dist/ as a host sends it, without its headers. */
export function distFile(path: string): { readonly contentType: string; readonly body: Buffer } | undefined {
  const file = `dist${path}`;
  if (!existsSync(file)) return undefined;
  return { contentType: types[path.slice(path.lastIndexOf(".") + 1)] ?? "text/plain", body: readFileSync(file) };
}

/** Everything that a page asked for, complained of, or was refused by its policy. */
export const watch = (page: Page) => {
  const seen = { requests: [] as string[], problems: [] as string[] };
  page.on("request", (r) => seen.requests.push(r.url()));
  page.on("console", (m) => {
    if (m.type() === "error" || m.type() === "warning") seen.problems.push(m.text());
  });
  page.on("pageerror", (e) => seen.problems.push(String(e)));
  return seen;
};

/** The try-it page, opened and calculated. */
export async function openTryit(): Promise<Opened & { readonly page: Page; readonly seen: ReturnType<typeof watch> }> {
  const opened = await openBrowser();
  const page = await opened.browser.newPage({ viewport: { width: 1500, height: 900 } });
  const seen = watch(page);
  await page.goto(`${opened.origin}/`);
  await page.waitForSelector('#status[data-ready="yes"]');
  return { ...opened, page, seen };
}

declare const axe: {
  run(context: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
};

/** What axe finds wrong in a page, or in a frame of it; the grid itself is its makers'. */
export async function axeFaults(frame: Page | Frame): Promise<string[]> {
  if (!(await frame.evaluate(() => "axe" in globalThis)))
    await frame.evaluate(readFileSync("node_modules/axe-core/axe.min.js", "utf8"));
  return frame.evaluate(async () => {
    const { violations } = await axe.run({ exclude: ["#grid", "#pane"] });
    return violations.map((v) => `${v.id}: ${v.nodes[0]?.html ?? ""}`);
  });
}
