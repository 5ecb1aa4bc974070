// The tests that judge a planted fault: those of the core and of bind, without the long random runs.
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "test/{blade,cost,cutting,data,item,material,plan,records,section,shop,size,statistics,time,yield}/**/*.test.ts",
      "test/functions/bind/*.test.ts",
    ],
    exclude: ["test/cutting/stranger.test.ts", "test/item/readItemLaws.test.ts"],
    // In the first run each place counts how often it is passed: that takes its time.
    testTimeout: 300_000,
    testNamePattern:
      /^(?!.*(?:half a second|fuzzed strings|\d+ strings|2,000 random calls|100,000 different|of 10 logs|of next cuts lie|60 jobs|best of every plan|50 lines|neighbour of a UNS|reads back to its parts|every row of every table))/,
  },
});
