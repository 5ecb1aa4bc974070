// The two commands, start and test, and the steps they share. Node built-ins only: it runs before anything is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
process.chdir(root);

const major = Number(process.versions.node.split(".")[0]);
if (major < 20) {
  console.error(`Kerfsheet needs Node 20 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

const bin = (name) => join(root, "node_modules", ...name.split("/"));

/** Runs one step with this very Node; ends the command when it fails. */
const step = (title, args, env = {}) => {
  console.log(`\n> ${title}`);
  const { status } = spawnSync(process.execPath, args, { stdio: "inherit", env: { ...process.env, ...env } });
  if (status !== 0) {
    console.error(`\nfailed: ${title}`);
    process.exit(status ?? 1);
  }
};

/** Installs what the lockfile names when it has changed since the last time, and never runs a package's own scripts. */
const install = () => {
  const lock = createHash("sha256").update(readFileSync("package-lock.json")).digest("hex");
  const stamp = join("node_modules", ".kerfsheet-lock");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  const npm = process.env.npm_execpath;
  if (npm === undefined) {
    console.error("Run this through npm: npm start, or npm test.");
    process.exit(1);
  }
  step("npm ci", [npm, "ci", "--ignore-scripts", "--include=dev"]);
  writeFileSync(stamp, lock);
};

const webpack = (...names) => [bin("webpack/bin/webpack.js"), ...names.flatMap((n) => ["--config-name", n])];
const build = () => {
  mkdirSync("dist", { recursive: true });
  step("build", webpack("functions", "pane", "tryit"));
  step("sizes", ["config/sizes.mjs"]);
};
const generate = (...flags) => {
  step("build generate", webpack("node"));
  step(`generate ${flags.join(" ")}`.trim(), ["build/generate.cjs", ...flags]);
};

const tasks = {
  start(args) {
    install();
    build();
    step("serve", ["config/serve.mjs", ...args]);
  },
  test() {
    install();
    step("types", [bin("typescript/bin/tsc"), "-b"]);
    step("format", [bin("prettier/bin/prettier.cjs"), "--check", "--cache", "--log-level=warn", "."]);
    step("lint", [bin("eslint/bin/eslint.js"), "--cache", "--cache-location", ".cache/eslint", "."]);
    step("dependency rules", [
      bin("dependency-cruiser/bin/dependency-cruise.mjs"),
      "--config",
      ".dependency-cruiser.cjs",
      "src",
      "functions",
      "taskpane",
      "test",
    ]);
    generate("--check");
    build();
    step("tests", [bin("vitest/vitest.mjs"), "run"]);
  },
  build(args) {
    install();
    build();
    if (args.length > 0) step("origin", ["config/origin.mjs", ...args]);
  },
  bench(args) {
    install();
    for (const file of readdirSync("test/bench").filter(
      (f) => f.endsWith(".bench.ts") && (args.length === 0 || args.some((a) => f.includes(a))),
    )) {
      mkdirSync("build", { recursive: true });
      step(`bundle ${file}`, [
        "node_modules/esbuild/bin/esbuild",
        "--bundle",
        "--platform=node",
        "--format=esm",
        "--log-level=warning",
        "--outfile=build/bench.mjs",
        join("test/bench", file),
      ]);
      step(file, ["build/bench.mjs"]);
    }
  },
  generate(args) {
    install();
    generate(...args);
  },
  samples(args) {
    install();
    step("build samples", webpack("node"));
    step(`samples ${args.join(" ")}`.trim(), ["build/samples.cjs", ...args]);
  },
  recalc(args) {
    install();
    // Quiet: what it prints is the result.
    const { status } = spawnSync(process.execPath, webpack("node"), { stdio: ["ignore", "ignore", "inherit"] });
    process.exitCode =
      status === 0
        ? spawnSync(process.execPath, ["build/recalc.cjs", ...args], { stdio: "inherit", env: process.env }).status
        : status;
  },
};

const [task, ...rest] = process.argv.slice(2);
if (tasks[task] === undefined) {
  console.error(`unknown task ${task}; one of ${Object.keys(tasks).join(", ")}`);
  process.exit(1);
}
tasks[task](rest);
