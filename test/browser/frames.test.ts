import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { frames } from "../../config/headers.mjs";
import { browserPath, openBrowser, type Opened } from "./open";

/** The pane's page under each window that may show it, and under one that may not: a top page of that name is made up here. */

const named = frames
  .map(([frame]) => frame)
  .filter((frame) => frame.startsWith("https://"))
  .map((frame) => frame.replace("*", "some-host"));

const host = "https://addins.example.com";

describe.skipIf(browserPath === undefined)("the pane in a frame", () => {
  let opened: Opened;
  beforeAll(async () => {
    opened = await openBrowser();
  });
  afterAll(async () => opened.close());

  /** Whether the pane, on an address of its own, shows its tabs inside a page of that origin. */
  const shows = async (top: string): Promise<boolean> => {
    const page = await opened.browser.newPage();
    try {
      const body = `<!doctype html><title>top</title><iframe src="${host}/taskpane.html"></iframe>`;
      await page.route(`${top}/**`, (route) => route.fulfill({ contentType: "text/html", body }));
      await page.route(`${host}/**`, async (route) => {
        const answer = await fetch(opened.origin + new URL(route.request().url()).pathname);
        const headers = Object.fromEntries(answer.headers);
        await route.fulfill({ status: answer.status, headers, body: Buffer.from(await answer.arrayBuffer()) });
      });
      await page.route("https://appsforoffice.microsoft.com/**", (route) =>
        route.fulfill({ contentType: "text/javascript", body: "" }),
      );
      await page.goto(`${top}/`, { waitUntil: "domcontentloaded" });
      const tab = page.frameLocator("iframe").getByRole("tab").first();
      return await tab.waitFor({ timeout: 4000 }).then(
        () => true,
        () => false,
      );
    } finally {
      await page.close();
    }
  };

  it.each(["https://excel.cloud.microsoft", "https://m365.cloud.microsoft", "https://onedrive.live.com", ...named])(
    "is shown by %s",
    async (top) => {
      expect(await shows(top)).toBe(true);
    },
  );

  it("is shown by no other site", async () => {
    expect(await shows("https://other.example")).toBe(false);
  });
});
