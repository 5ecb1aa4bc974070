// A static server for dist/ on this machine only.
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer as createHttp } from "node:http";
import { createServer as createHttps } from "node:https";
import { brotliCompress, constants, gzip } from "node:zlib";
import { extname, join, normalize, relative, resolve, sep } from "node:path";
import { always, headers } from "./headers.mjs";

const types = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".xml": "application/xml; charset=utf-8",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** The file in `root` that a request path names; undefined for anything above the root or not there. */
export const fileFor = (root, path) => {
  let decoded;
  try {
    decoded = decodeURIComponent(path.split("?")[0]);
  } catch {
    return undefined;
  }
  if (decoded.includes("\0")) return undefined;
  const file = resolve(root, normalize(`.${sep}${decoded.endsWith("/") ? `${decoded}index.html` : decoded}`));
  return file.startsWith(root + sep) && existsSync(file) && statSync(file).isFile() ? file : undefined;
};

const building = `<!doctype html>
<html lang="en"><head><meta charset="utf-8" /><meta http-equiv="refresh" content="2" /><title>Kerfsheet: building</title></head>
<body><p role="status">Kerfsheet is being built; this takes about a minute the first time. The page loads itself when it is ready.</p></body></html>`;

/** Text is packed as the browser takes it: quickly, since the first visit waits for it. */
const packings = [
  {
    name: "br",
    pack: (text, done) => brotliCompress(text, { params: { [constants.BROTLI_PARAM_QUALITY]: 4 } }, done),
  },
  { name: "gzip", pack: (text, done) => gzip(text, { level: 4 }, done) },
];
const packing = (request, end) => {
  if (![".html", ".js", ".css", ".json", ".svg", ".xml"].includes(end)) return undefined;
  const taken = String(request.headers["accept-encoding"] ?? "").split(/\s*,\s*/);
  return packings.find(({ name }) => taken.some((t) => t.split(";")[0] === name && !/;\s*q=0(\.0*)?$/.test(t)));
};

/** What is sent of a file and the mark of its state; packed once while the file stays the same. */
const keeper = () => {
  const kept = new Map();
  return (file, packed) => {
    const { mtimeMs, size } = statSync(file);
    const mark = `"${mtimeMs.toString(36)}-${size.toString(36)}${packed?.name ?? ""}"`;
    const key = `${packed?.name ?? ""} ${file}`;
    const found = kept.get(key);
    if (found?.mark === mark) return found;
    const body = new Promise((done, fail) => {
      const bytes = readFileSync(file);
      if (packed === undefined) done(bytes);
      else packed.pack(bytes, (error, small) => (error ? fail(error) : done(small)));
    });
    body.catch(() => kept.delete(key));
    kept.set(key, { mark, body });
    return { mark, body };
  };
};

const answer = (root, state, keep) => (request, response) => {
  const host = (request.headers.host ?? "").replace(/:\d+$/, "");
  if (host !== "127.0.0.1" && host !== "localhost") return response.writeHead(421).end("wrong host");
  if (request.method !== "GET" && request.method !== "HEAD") return response.writeHead(405).end();
  if (request.url === "/") return response.writeHead(302, { Location: "/tryit/" }).end();
  if (!state.ready) {
    const wait = {
      "Content-Type": types[".html"],
      "Retry-After": "2",
      "Cache-Control": "no-store",
      ...headers(request.url),
    };
    return response.writeHead(503, wait).end(request.method === "HEAD" ? undefined : building);
  }
  const file = fileFor(root, request.url);
  if (file === undefined) return response.writeHead(404, { "Content-Type": "text/plain", ...always }).end("not found");
  // By the file that is sent: /./tryit/ and /tryit/%69ndex.html are the same page.
  const path = `/${relative(root, file).split(sep).join("/")}`;
  const packed = packing(request, extname(file));
  const { mark, body } = keep(file, packed);
  const head = {
    "Content-Type": types[extname(file)] ?? "application/octet-stream",
    "Cache-Control": "no-cache",
    ETag: mark,
    Vary: "Accept-Encoding",
    ...(packed && { "Content-Encoding": packed.name }),
    ...headers(path),
  };
  if (request.headers["if-none-match"] === mark) return response.writeHead(304, head).end();
  if (request.method === "HEAD") return response.writeHead(200, head).end();
  body.then(
    (bytes) => response.writeHead(200, head).end(bytes),
    () => response.writeHead(500, always).end(),
  );
};

/** Serves `root` on 127.0.0.1 at `port` or the next free one; with a certificate, over https. Until `state.ready`, a page that waits. */
export const serve = (root, port = 3000, tls = undefined, state = { ready: true }) =>
  new Promise((done, fail) => {
    const keep = keeper();
    const reply = answer(root, state, keep);
    // The page's program is packed before it is asked for.
    const program = state.ready ? fileFor(root, "/tryit/page.js") : undefined;
    if (program !== undefined) keep(program, packings[0]);
    const make = (at) => {
      const server = tls === undefined ? createHttp(reply) : createHttps(tls, reply);
      server.once("error", (error) => (error.code === "EADDRINUSE" && at < port + 50 ? make(at + 1) : fail(error)));
      server.listen(at, "127.0.0.1", () => done({ server, port: server.address().port }));
    };
    make(port);
  });

/** Serves dist/ as the command line wants it, and prints the address. */
export const serveDist = async (args, state) => {
  const option = (name) => {
    const at = args.indexOf(name);
    return at < 0 ? undefined : args[at + 1];
  };
  const [cert, key] = [option("--cert"), option("--key")];
  if ((cert === undefined) !== (key === undefined)) {
    console.error("https needs both: npm start -- --cert file --key file");
    process.exit(1);
  }
  const tls = cert === undefined ? undefined : { cert: readFileSync(cert), key: readFileSync(key) };
  const root = resolve(join(import.meta.dirname, "..", "dist"));
  const { port } = await serve(root, Number(option("--port") ?? 3000), tls, state);
  const protocol = tls === undefined ? "http" : "https";
  console.log(`\nKerfsheet: ${protocol}://127.0.0.1:${port}/  (Ctrl+C ends it; nothing leaves this machine)`);
};
