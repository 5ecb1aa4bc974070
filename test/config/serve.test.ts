import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { get, type IncomingMessage } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileFor, serve } from "../../config/serve.mjs";

const base = mkdtempSync(join(tmpdir(), "kerfsheet-serve-"));
const root = join(base, "dist");
let first: Awaited<ReturnType<typeof serve>>;
let second: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(root, "tryit"), { recursive: true });
  writeFileSync(join(root, "tryit/index.html"), "<p>page</p>");
  writeFileSync(join(root, "functions.json"), "{}");
  writeFileSync(join(base, "secret.txt"), "secret");
  first = await serve(root, 3400);
  second = await serve(root, 3400);
});
afterAll(() => {
  first.server.close();
  second.server.close();
  rmSync(base, { recursive: true, force: true });
});

const ask = (path: string, headers: Record<string, string> = {}, port = first.port) =>
  new Promise<{ status: number; headers: IncomingMessage["headers"]; body: string }>((done, fail) => {
    get({ host: "127.0.0.1", port, path, headers }, (r) => {
      let body = "";
      r.on("data", (part: Buffer) => (body += part.toString()));
      r.on("end", () => done({ status: r.statusCode ?? 0, headers: r.headers, body }));
    }).on("error", fail);
  });

describe("the server", () => {
  it("takes the next free port, on this machine only", () => {
    expect(second.port).toBeGreaterThan(first.port);
    expect((first.server.address() as { address: string }).address).toBe("127.0.0.1");
  });

  it("gives a page with its policy, and JSON with leave for any origin", async () => {
    const page = await ask("/tryit/");
    expect([page.status, page.body]).toEqual([200, "<p>page</p>"]);
    expect(page.headers["content-security-policy"]).toMatch(/default-src 'none'/);
    expect((await ask("/functions.json")).headers["access-control-allow-origin"]).toBe("*");
    expect((await ask("/")).headers.location).toBe("/tryit/");
  });

  it("chooses the policy by the file that is sent, and sends one with what is not there", async () => {
    const policy = async (path: string) => (await ask(path)).headers["content-security-policy"];
    const page = await policy("/tryit/index.html");
    expect(page).toContain("img-src 'self' data:");
    expect([await policy("/./tryit/"), await policy("/tryit/%69ndex.html")]).toEqual([page, page]);
    expect((await ask("/nowhere")).status).toBe(404);
    expect(await policy("/nowhere")).toMatch(/default-src 'none'/);
  });

  it("packs text as it is asked to (RFC 9110, 12.5.3), and not where it is not", async () => {
    for (const [accept, expected] of [
      ["gzip, deflate, br", "br"],
      ["gzip", "gzip"],
      ["br;q=0, gzip", "gzip"],
      ["identity", undefined],
    ] as const)
      expect((await ask("/functions.json", { "accept-encoding": accept })).headers["content-encoding"]).toBe(expected);
    expect((await ask("/functions.json")).body).toBe("{}");
  });

  it("sends a file again only when it has changed (RFC 9110, 13.1.2), and never the old one", async () => {
    const file = join(root, "tryit/page.js");
    const packed = { "accept-encoding": "br" };
    writeFileSync(file, "1;");
    const sent = await ask("/tryit/page.js", packed);
    const again = (etag: string | undefined) =>
      ask("/tryit/page.js", { ...packed, "if-none-match": etag ?? "" }).then((r) => r.status);
    expect(sent.status).toBe(200);
    expect(await again(sent.headers.etag)).toBe(304);
    writeFileSync(file, "second;");
    expect(await again(sent.headers.etag)).toBe(200);
    expect((await ask("/tryit/page.js")).body).toBe("second;");
    expect((await ask("/tryit/page.js", packed)).headers.etag).not.toBe(sent.headers.etag);
  });

  it("gives nothing above its folder", async () => {
    for (const path of [
      "/../secret.txt",
      "/%2e%2e/secret.txt",
      "/tryit/../../secret.txt",
      "/..%2fsecret.txt",
      "/%00",
      "/%zz",
      "/nothing",
    ])
      expect((await ask(path)).status, path).toBe(404);
    expect(fileFor(root, "/../secret.txt")).toBeUndefined();
  });

  it("answers no other host name than this machine's", async () => {
    expect((await ask("/functions.json", { Host: "evil.example" })).status).toBe(421);
  });

  it("says that the page is being built, and gives it when it is", async () => {
    const state = { ready: false };
    const { server, port } = await serve(root, 3400, undefined, state);
    try {
      const waiting = await ask("/tryit/", {}, port);
      expect([waiting.status, waiting.headers["retry-after"]]).toEqual([503, "2"]);
      expect(waiting.body).toMatch(/http-equiv="refresh" content="2"/);
      expect(waiting.body).toMatch(/is being built/);
      state.ready = true;
      expect((await ask("/tryit/", {}, port)).body).toBe("<p>page</p>");
    } finally {
      server.close();
    }
  });
});
