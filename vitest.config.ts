import { defineConfig } from "vitest/config";

const core = "blade,cost,cutting,data,house,item,material,plan,records,section,shop,size,statistics,time,yield";
const rooms = [
  `test/{${core},docs,trust,functions/{bind,catalogue,formula,kinds,shop}}/**/*.test.ts`,
  "test/config/pack*.test.ts",
];

/** Browsers, programs and pages take tens of seconds on a machine that does other work too. */
const patience = { testTimeout: 120_000, hookTimeout: 120_000 };

export default defineConfig({
  test: {
    // The browser tests share one machine with the others: two workers are what two cores carry.
    maxWorkers: 2,
    // npm run coverage: the core by its own tests.
    coverage: {
      include: ["src/**/*.ts"],
      reporter: ["text-summary", "json", "json-summary"],
      reportsDirectory: "reports/coverage",
    },
    projects: [
      {
        test: {
          name: "rooms",
          include: rooms,
          pool: "threads",
          // The core holds no state, so one worker loads it once for all its files.
          isolate: false,
          ...patience,
        },
      },
      {
        test: {
          name: "faces",
          include: ["test/**/*.test.ts"],
          exclude: rooms,
          pool: "forks",
          ...patience,
        },
      },
    ],
  },
});
