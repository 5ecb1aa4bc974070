// Faults planted one by one in the core and in bind; a test has to notice each. Never part of `npm test`: all of it, 22,592
// places at 1.3 s each on two cores, takes eight hours. Some files: npm run mutate -- --mutate src/cost/cutCost.ts. Some
// places of all files, drawn at random: SAMPLE=250 SEED=1 npm run mutate.
import { drawn } from "./mutateSample.mjs";

const sample = Number(process.env.SAMPLE ?? 0);

/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  testRunner: "vitest",
  plugins: ["@stryker-mutator/vitest-runner"],
  vitest: { configFile: "config/mutate.vitest.mjs" },
  // Tables are checked against their sources cell by cell, and texts of constants are no behaviour.
  mutate:
    sample > 0
      ? await drawn(["src", "functions/bind"], sample, process.env.SEED ?? "1")
      : ["src/**/*.ts", "!src/data/*.ts", "functions/bind/*.ts"],
  ignorePatterns: ["dist", "build", "reports", ".cache"],
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  concurrency: 2,
  // A slow machine is no noticed fault.
  timeoutMS: 20_000,
  timeoutFactor: 4,
  // With every place counted, the first run takes minutes.
  dryRunTimeoutMinutes: 30,
  tempDirName: ".cache/stryker",
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, reportMutants: false },
  jsonReporter: { fileName: "reports/mutate.json" },
  allowConsoleColors: false,
};
