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
const origin = `http://127.0.0.1:${port}`;
const shoot = async (page, name) => {
  await page.screenshot({ path: `${out}/${name}.png`, fullPage: page.viewportSize().width <= 800 });
  console.log(`wrote ${out}/${name}.png`);
};
const sheets = ["Estimate", "Mix", "Purchase", "Curves", "Claims", "Day", "Card", "Contact", "Records"];
for (const colorScheme of ["light", "dark"]) {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme });
  await page.goto(`${origin}/`);
  await page.waitForSelector('#status[data-ready="yes"]');
  await page.frameLocator("#pane").locator("h1").first().waitFor();
  for (const [width, shown] of [
    [1440, sheets],
    [800, ["Estimate", "Curves"]],
    [350, ["Estimate", "Curves"]],
  ]) {
    await page.setViewportSize({ width, height: 900 });
    for (const name of shown) {
      await page.evaluate((n) => {
        const book = window.kerfsheetGrid.getActiveWorkbook();
        book.setActiveSheet(book.getSheetByName(n));
      }, name);
      await page.keyboard.press("Shift");
      await page.waitForTimeout(2500);
      await page.waitForFunction(() => {
        const charts = document.getElementById("charts");
        return charts.hidden || charts.children.length > 0;
      });
      await shoot(page, `page-${name.toLowerCase()}-${width}-${colorScheme}`);
    }
  }
  for (const [name, path, width] of [
    ["pane", "/tryit/pane.html", 350],
    ["help", "/help.html", 1440],
    ["help", "/help.html", 350],
  ]) {
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`${origin}${path}`);
    await page.waitForTimeout(1000);
    await page.screenshot({ path: `${out}/${name}-${width}-${colorScheme}.png` });
    console.log(`wrote ${out}/${name}-${width}-${colorScheme}.png`);
  }
  await page.close();
}
await browser.close();
server.close();
