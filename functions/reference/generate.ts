import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { catalogue } from "../catalogue";
import { coveragePage } from "./coveragePage";
import { helpPage } from "./helpPage";
import { metadata } from "./metadata";
import { withSteps } from "./methodSteps";
import { readingPage } from "./readingPage";
import { referencePage } from "./reference";
import { sourcesPage } from "./sourcesPage";

/** Writes what is made from the catalogue and the data; with --check, fails on a file that is stale instead. */

const origin = "https://localhost:3000";
const root = process.cwd();

const digest = (): string => {
  const folder = join(root, "src/data");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((f) => f.endsWith(".ts") && f !== "version.ts")
    .sort();
  const hash = createHash("sha256");
  for (const file of files) hash.update(file).update(readFileSync(join(folder, file)));
  return hash.digest("hex").slice(0, 8);
};

const versionFile = (): string => {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { version: string };
  return `/** Made by generate from package.json and the data tables; do not edit. */\nexport const addInVersion = "${version}";\nexport const dataVersion = "${digest()}";\n`;
};

const made: Readonly<Record<string, () => string>> = {
  "src/data/version.ts": versionFile,
  "functions/functions.json": () => `${JSON.stringify(metadata(catalogue, origin), null, 2)}\n`,
  "docs/functions.md": () => referencePage(catalogue),
  "taskpane/help.html": () => helpPage(catalogue),
  "docs/sources.md": sourcesPage,
  "docs/method.md": () => withSteps(readFileSync(join(root, "docs/method.md"), "utf8"), catalogue),
  "docs/reading.md": readingPage,
  "docs/coverage.md": coveragePage,
};

const check = process.argv.includes("--check");
const stale: string[] = [];
for (const [file, make] of Object.entries(made)) {
  const path = join(root, file);
  const text = make();
  if (existsSync(path) && readFileSync(path, "utf8") === text) continue;
  stale.push(file);
  if (check) continue;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
  console.log(`wrote ${file}`);
}
if (check && stale.length > 0) {
  console.error(`stale: ${stale.join(", ")}. Run npm run generate and commit what it writes.`);
  process.exitCode = 1;
}
