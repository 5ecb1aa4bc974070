// The two commands, start and test, and the steps they share. Node built-ins only: it runs before anything is installed.
import { spawn, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { isBuilt, markBuilt } from "./built.mjs";
import { serveDist } from "./serve.mjs";
import { bin, lanes, step } from "./steps.mjs";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
process.chdir(root);

const major = Number(process.versions.node.split(".")[0]);
if (major < 20) {
  console.error(`Kerfsheet needs Node 20 or newer; this is ${process.versions.node}.`);
  process.exit(1);
}

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
const dist = webpack("functions", "pane", "tryit");
const build = () => {
  mkdirSync("dist", { recursive: true });
  step("build", dist);
  step("sizes", ["config/sizes.mjs"]);
  markBuilt("dist");
};
const programs = () => {
  if (!isBuilt("programs")) {
    step("build programs", webpack("node"));
    markBuilt("programs");
  }
};
const generate = (...flags) => {
  programs();
  step(`generate ${flags.join(" ")}`.trim(), ["build/generate.cjs", ...flags]);
  // A new digest of the data is a source itself: the pages that print it are made once more.
  if (!flags.includes("--check") && !isBuilt("programs")) generate();
};

/** Bundles a program of the tests for Node and runs it with what stands after "--". */
const program = (file, args) => {
  install();
  mkdirSync("build", { recursive: true });
  const out = join("build", "program.mjs");
  const flags = [
    "--bundle",
    "--platform=node",
    "--packages=external",
    "--format=esm",
    "--log-level=warning",
    `--outfile=${out}`,
  ];
  const bundle = spawnSync(process.execPath, [bin("esbuild/bin/esbuild"), ...flags, file], { stdio: "inherit" });
  if (bundle.status !== 0) process.exit(bundle.status ?? 1);
  process.exitCode = spawnSync(process.execPath, [out, ...args], { stdio: "inherit" }).status ?? 1;
};

const checks = [
  ["types", [bin("typescript/bin/tsc"), "-b"]],
  ["lint", [bin("eslint/bin/eslint.js"), "--cache", "--cache-location", ".cache/eslint", "."]],
  ["format", [bin("prettier/bin/prettier.cjs"), "--check", "--cache", "--log-level=warn", "."]],
  [
    "dependency rules",
    [
      bin("dependency-cruiser/bin/dependency-cruise.mjs"),
      "--config",
      ".dependency-cruiser.cjs",
      "src",
      "functions",
      "taskpane",
      "test",
    ],
  ],
];

/** Builds dist/ beside this process; the page is served meanwhile and loads itself when it is done. */
const buildBehind = (state) => {
  const child = spawn(process.execPath, dist, { stdio: ["ignore", "ignore", "inherit"] });
  child.on("close", (status) => {
    if (status !== 0) {
      console.error("\nfailed: build");
      process.exit(status ?? 1);
    }
    markBuilt("dist");
    state.ready = true;
    console.log("Ready.");
  });
};

const tasks = {
  async start(args) {
    install();
    mkdirSync("dist", { recursive: true });
    const state = { ready: isBuilt("dist") };
    await serveDist(args, state);
    if (state.ready) return;
    console.log("The grid is being built; a page opened now says so and loads itself when it is ready.");
    buildBehind(state);
  },
  async test() {
    install();
    mkdirSync("dist", { recursive: true });
    await lanes(checks, [
      ["build", dist],
      ["sizes", ["config/sizes.mjs"]],
      ["stamp of dist", ["config/built.mjs", "dist"]],
      ["build programs", webpack("node")],
      ["stamp of the programs", ["config/built.mjs", "programs"]],
      ["generate --check", ["build/generate.cjs", "--check"]],
    ]);
    step("tests", [bin("vitest/vitest.mjs"), "run"]);
  },
  build(args) {
    install();
    build();
    if (args.length > 0) step("origin", ["config/origin.mjs", ...args]);
  },
  bench(args) {
    for (const file of readdirSync("test/bench").filter(
      (f) => f.endsWith(".bench.ts") && (args.length === 0 || args.some((a) => f.includes(a))),
    ))
      program(join("test/bench", file), []);
  },
  fuzz: (args) => program("test/trust/fuzz.main.ts", args),
  laws: (args) => program("test/trust/laws.main.ts", args),
  hostile(args) {
    install();
    programs();
    program("test/trust/hostile.main.ts", args);
  },
  trust: (args) => program("test/trust/trustPage.main.ts", args),
  generate(args) {
    install();
    generate(...args);
  },
  samples(args) {
    install();
    programs();
    step(`samples ${args.join(" ")}`.trim(), ["build/samples.cjs", ...args]);
  },
  recalc(args) {
    install();
    // Quiet: what it prints is the result.
    if (!isBuilt("programs")) {
      const { status } = spawnSync(process.execPath, webpack("node"), { stdio: ["ignore", "ignore", "inherit"] });
      if (status !== 0) process.exit(status ?? 1);
      markBuilt("programs");
    }
    process.exitCode = spawnSync(process.execPath, ["build/recalc.cjs", ...args], { stdio: "inherit" }).status;
  },
};

const [task, ...rest] = process.argv.slice(2);
if (tasks[task] === undefined) {
  console.error(`unknown task ${task}; one of ${Object.keys(tasks).join(", ")}`);
  process.exit(1);
}
await tasks[task](rest);
