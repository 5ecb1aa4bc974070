// The tests that judge a planted fault: those of the core and of bind, without the long random runs.
import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "test/{blade,cost,cutting,data,item,material,plan,records,section,shop,size,statistics,time,yield}/**/*.test.ts",
      "test/functions/bind/*.test.ts",
    ],
    exclude: ["test/cutting/stranger.test.ts", "test/item/readItemLaws.test.ts"],
    testTimeout: 60_000,
  },
});
