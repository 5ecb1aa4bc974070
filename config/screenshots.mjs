// Pictures for a listing and for the docs, of the page as it stands: `npm run build` first. They are not kept in the repository.
import { existsSync, mkdirSync } from "node:fs";
import { resolve } from "node:path";
import { chromium } from "playwright-core";
import { wantBuilt } from "./built.mjs";
import { serve } from "./serve.mjs";

wantBuilt("dist");
const out = "build/screenshots";
mkdirSync(out, { recursive: true });
const places = [process.env.CHROME_PATH, "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const executablePath = places.find((place) => place !== undefined && existsSync(place));
if (executablePath === undefined) throw new Error("no browser found: name it in CHROME_PATH");
const { server, port } = await serve(resolve("dist"), 3200);
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
const shots = [
  ["page", "/", 1366, 768],
  ["page-narrow", "/", 800, 900],
  ["pane", "/tryit/pane.html", 350, 900],
  ["help", "/help.html", 1366, 768],
];
for (const scheme of ["light", "dark"])
  for (const [name, path, width, height] of shots) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme: scheme });
    await page.goto(`http://127.0.0.1:${port}${path}`);
    if (path === "/") await page.waitForSelector('#status[data-ready="yes"]');
    else await page.waitForTimeout(1000);
    await page.screenshot({ path: `${out}/${name}-${scheme}.png` });
    console.log(`wrote ${out}/${name}-${scheme}.png`);
    await page.close();
  }
await browser.close();
server.close();
