// Whether what was built was made from the sources as they stand: a digest of them is kept beside it.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const stamp = (what) => `build/${what}.stamp`;
const first = { dist: "dist/functions.js", programs: "build/recalc.cjs" };
const programs = ["src", "functions", "webpack.config.cjs", "package-lock.json"];
const sources = {
  dist: [...programs, "taskpane", "docs/samples", "docs/privacy.md", "docs/support.md", "LICENSE", "config"],
  programs,
};

const digest = (what) => {
  const hash = createHash("sha256");
  const add = (file) => {
    if (!existsSync(file)) return;
    if (statSync(file).isDirectory()) for (const name of readdirSync(file).sort()) add(join(file, name));
    else if (what === "dist" || !file.endsWith(".json")) hash.update(file).update(readFileSync(file));
  };
  for (const source of sources[what]) add(source);
  return hash.digest("hex");
};

/** Keeps the digest of what dist/, or the programs in build/, were just made from. */
export const markBuilt = (what) => {
  mkdirSync("build", { recursive: true });
  writeFileSync(stamp(what), digest(what));
};

export const isBuilt = (what) =>
  existsSync(first[what]) && existsSync(stamp(what)) && readFileSync(stamp(what), "utf8") === digest(what);

/** For tests that use what was built: says what to do where it is older than the sources. */
export const wantBuilt = (what) => {
  if (!isBuilt(what))
    throw new Error(
      what === "dist"
        ? "dist/ is older than the sources: npm run build makes it anew, npm test does so itself"
        : "the programs in build/ are older than the sources: npm run generate makes them anew, npm test does so itself",
    );
};

if (process.argv[1]?.endsWith("built.mjs")) markBuilt(process.argv[2]);
