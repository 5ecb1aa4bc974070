import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["test/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    pool: "forks",
    // The browser tests share one machine with the others: two workers are what two cores carry.
    maxWorkers: 2,
  },
});
