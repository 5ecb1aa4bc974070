import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { frames, headers, panePolicy } from "../../config/headers.mjs";
import { hostFiles } from "../../config/hostFiles.mjs";
import { hostProblems } from "../../config/hostProblems.mjs";
import { fileFor } from "../../config/serve.mjs";

/** A right host and wrong ones on this machine, asked as a deployed address is. */

const root = mkdtempSync(join(tmpdir(), "kerfsheet-host-"));
const types: Readonly<Record<string, string>> = {
  html: "text/html; charset=utf-8",
  js: "text/javascript",
  json: "application/json",
  css: "text/css",
  png: "image/png",
};
const names = [
  "taskpane.html",
  "help.html",
  "support.html",
  "privacy.html",
  "functions.js",
  "core.js",
  "pane.js",
  "more.js",
  "trusted.js",
  "pane.css",
];
const icons = ["16", "32", "64", "80"].map((size) => `assets/icon-${size}.png`);

beforeAll(() => {
  for (const name of [...names, ...icons]) {
    mkdirSync(dirname(join(root, name)), { recursive: true });
    writeFileSync(join(root, name), "x");
  }
});
afterAll(() => rmSync(root, { recursive: true, force: true }));

type Sent = Record<string, string>;
type Change = (path: string, sent: Sent) => { readonly status?: number; readonly sent: Sent };

/** Serves the folder with our headers, changed; says what is wrong with it. */
async function problemsOn(change: Change, builtFor?: string): Promise<readonly string[]> {
  const server: Server = createServer((request, response) => {
    const path = request.url ?? "";
    const list = path === "/functions.json";
    const file = fileFor(root, path);
    const type = types[path.split(".").at(-1) ?? ""] ?? "text/plain";
    const { status, sent } = change(path, { "Content-Type": type, ...headers(path) });
    const { port } = server.address() as AddressInfo;
    const body = list
      ? JSON.stringify({ functions: [{ helpUrl: `${builtFor ?? `http://127.0.0.1:${port}`}/help.html#X` }] })
      : "x";
    response.writeHead(status ?? (list || file !== undefined ? 200 : 404), sent).end(body);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  try {
    return await hostProblems(`http://127.0.0.1:${(server.address() as AddressInfo).port}`);
  } finally {
    server.close();
  }
}

const without = (sent: Sent, name: string): Sent =>
  Object.fromEntries(Object.entries(sent).filter(([n]) => n !== name));

describe("a host", () => {
  it("that sends our headers has nothing to mend", async () => {
    expect(await problemsOn((_, sent) => ({ sent }))).toEqual([]);
  });

  const wrong: readonly (readonly [what: string, change: Change, says: RegExp])[] = [
    [
      "without leave for other origins",
      (_, sent) => ({ sent: without(sent, "Access-Control-Allow-Origin") }),
      /\/functions\.json lacks Access-Control-Allow-Origin/,
    ],
    [
      "with an older list of frames",
      (_, sent) => ({
        sent: { ...sent, "Content-Security-Policy": panePolicy.replace(" https://*.cloud.microsoft", "") },
      }),
      /\/taskpane\.html may not be framed by https:\/\/\*\.cloud\.microsoft/,
    ],
    ["with X-Frame-Options", (_, sent) => ({ sent: { ...sent, "X-Frame-Options": "SAMEORIGIN" } }), /X-Frame-Options/],
    [
      "that gives scripts as plain text",
      (path, sent) => ({ sent: path.endsWith(".js") ? { ...sent, "Content-Type": "text/plain" } : sent }),
      /\/functions\.js comes as text\/plain/,
    ],
    [
      "without one of the files",
      (path, sent) => (path === "/core.js" ? { status: 404, sent } : { sent }),
      /\/core\.js answers 404/,
    ],
    [
      "whose policy keeps office.js out",
      (_, sent) => ({
        sent: { ...sent, "Content-Security-Policy": panePolicy.replace(" https://appsforoffice.microsoft.com", "") },
      }),
      /does not allow scripts of https:\/\/appsforoffice/,
    ],
    [
      "that sends the pane on",
      (path, sent) => (path === "/taskpane.html" ? { status: 302, sent: { ...sent, Location: "/login" } } : { sent }),
      /is sent on to \/login/,
    ],
    [
      "without a policy",
      (_, sent) => ({ sent: without(sent, "Content-Security-Policy") }),
      /sends no Content-Security-Policy/,
    ],
  ];
  it.each(wrong)("%s is told what to mend", async (_, change, says) => {
    expect((await problemsOn(change)).join("\n")).toMatch(says);
  });

  it("that holds a build for another address is told so", async () => {
    expect((await problemsOn((_, sent) => ({ sent }), "https://localhost:3000")).join("\n")).toMatch(
      /was built for another address \(https:\/\/localhost:3000\)/,
    );
  });

  it("that does not answer is told so", async () => {
    expect((await hostProblems("http://127.0.0.1:9")).every((problem) => /cannot be asked/.test(problem))).toBe(true);
  });
});

describe("the files for usual servers", () => {
  const written = hostFiles();

  it("carry every header, and every frame with its reason", () => {
    for (const text of Object.values(written)) {
      for (const [frame] of frames) expect(text.replace(/&quot;|\\"/g, '"')).toContain(frame);
      expect(text).toContain("Access-Control-Allow-Origin");
      expect(text).toContain("nosniff");
    }
    for (const [, reason] of frames) expect(reason.length).toBeGreaterThan(10);
  });

  it("are sound JSON and XML", () => {
    expect(JSON.parse(written["staticwebapp.config.json"]).globalHeaders["Content-Security-Policy"]).toBe(panePolicy);
    expect(written["web.config"].match(/<add name="[^"]+" value="[^"]*" \/>/g)).toHaveLength(4);
  });
});
