// npm run licences: every installed package's licence, from npm's own bill of materials, against those that ask for nothing
// but their text. Whatever else there is stands here by name, with what it is and where it is used.
import { spawnSync } from "node:child_process";

const permissive = new Set([
  "MIT",
  "Apache-2.0",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Unlicense",
]);

/** Packages whose licence is another, or not said in package.json: what it is, and why it may stay. */
const looked = {
  "axe-core": "MPL-2.0: run by the tests, unchanged",
  lightningcss: "MPL-2.0: run by the tests' bundler, unchanged",
  "lightningcss-linux-x64-gnu": "MPL-2.0: as lightningcss",
  "caniuse-lite": "CC-BY-4.0: data read by the build",
  "@ironcalc/wasm": "MIT/Apache-2.0, written the old way: run by the tests",
  "@microsoft/office-js":
    "Microsoft's own terms, not permissive: types and the runtime that the tests drive; Excel loads its own copy",
  "@univerjs/telemetry": "Apache-2.0 by its LICENSE: in the try-it page",
};

const { stdout, status, stderr } = spawnSync("npm", ["sbom", "--sbom-format", "cyclonedx"], {
  encoding: "utf8",
  maxBuffer: 1e9,
  shell: process.platform === "win32",
});
if (status !== 0) {
  console.error(stderr);
  process.exit(1);
}
const { components } = JSON.parse(stdout);
const said = ({ licenses = [] }) =>
  licenses.map((l) => l.license?.id ?? l.license?.name ?? l.expression).join(" and ") || "not said";
const isFine = (words) =>
  words.split(/ (?:and|AND) /).every((one) =>
    one
      .replace(/[()]/g, "")
      .split(/ OR /)
      .some((id) => permissive.has(id)),
  );
const nameOf = ({ group, name, purl }) =>
  decodeURIComponent((purl ?? "").replace(/^pkg:npm\//, "").replace(/@[^@]*$/, "")) ||
  [group, name].filter(Boolean).join("/");

const counts = new Map();
const wrong = [];
for (const component of components) {
  const words = said(component);
  counts.set(words, (counts.get(words) ?? 0) + 1);
  if (!isFine(words) && !(nameOf(component) in looked)) wrong.push(`${nameOf(component)}: ${words}`);
}
for (const [words, count] of [...counts].sort(([, a], [, b]) => b - a))
  console.log(`${String(count).padStart(4)}  ${words}`);
for (const [name, why] of Object.entries(looked)) console.log(`      ${name}: ${why}`);
for (const line of wrong) console.error(`not permissive: ${line}`);
console.log(
  `${wrong.length === 0 ? "met    " : "NOT MET"}  licences: ${components.length} packages, ${wrong.length} neither permissive nor named above`,
);
if (wrong.length > 0) process.exit(1);
