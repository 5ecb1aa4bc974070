// A static server for dist/ on this machine only.
import { createReadStream, existsSync, readFileSync, statSync } from "node:fs";
import { createServer as createHttp } from "node:http";
import { createServer as createHttps } from "node:https";
import { extname, join, normalize, resolve, sep } from "node:path";
import { headers } from "./headers.mjs";

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

const answer = (root) => (request, response) => {
  const host = (request.headers.host ?? "").replace(/:\d+$/, "");
  if (host !== "127.0.0.1" && host !== "localhost") return response.writeHead(421).end("wrong host");
  if (request.method !== "GET" && request.method !== "HEAD") return response.writeHead(405).end();
  if (request.url === "/") return response.writeHead(302, { Location: "/tryit/" }).end();
  const file = fileFor(root, request.url);
  if (file === undefined) return response.writeHead(404, { "Content-Type": "text/plain" }).end("not found");
  response.writeHead(200, {
    "Content-Type": types[extname(file)] ?? "application/octet-stream",
    "Cache-Control": "no-cache",
    ...headers(request.url),
  });
  return request.method === "HEAD" ? response.end() : createReadStream(file).pipe(response);
};

/** Serves `root` on 127.0.0.1 at `port` or the next free one; with a certificate, over https. */
export const serve = (root, port = 3000, tls = undefined) =>
  new Promise((done, fail) => {
    const make = (at) => {
      const server = tls === undefined ? createHttp(answer(root)) : createHttps(tls, answer(root));
      server.once("error", (error) => (error.code === "EADDRINUSE" && at < port + 50 ? make(at + 1) : fail(error)));
      server.listen(at, "127.0.0.1", () => done({ server, port: server.address().port }));
    };
    make(port);
  });

if (process.argv[1]?.endsWith("serve.mjs")) {
  const option = (name) => {
    const at = process.argv.indexOf(name);
    return at < 0 ? undefined : process.argv[at + 1];
  };
  const [cert, key] = [option("--cert"), option("--key")];
  if ((cert === undefined) !== (key === undefined)) {
    console.error("https needs both: npm start -- --cert file --key file");
    process.exit(1);
  }
  const tls = cert === undefined ? undefined : { cert: readFileSync(cert), key: readFileSync(key) };
  const { port } = await serve(resolve(join(import.meta.dirname, "..", "dist")), Number(option("--port") ?? 3000), tls);
  console.log(
    `\nKerfsheet: http${tls === undefined ? "" : "s"}://127.0.0.1:${port}/  (Ctrl+C ends it; nothing leaves this machine)`,
  );
}
