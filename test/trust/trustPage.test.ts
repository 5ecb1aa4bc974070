import { expect, it } from "vitest";
import { trustPage } from "./trustPage";

const report = {
  command: "npm run laws",
  date: "2026-01-02",
  node: "v20",
  cpu: "2 × x",
  minutes: 1.5,
  rows: [
    { path: "a law", measured: 0, unit: "of 10", bar: "0", met: true },
    { path: "another", measured: 3, unit: "of 10", bar: "0", met: false },
  ],
};

it("prints each bar beside its figure, what is not met, and what was not run", () => {
  const page = trustPage({ laws: report }, undefined, {}, undefined);
  expect(page).toContain("| a law | 0 of 10 | 0 | met |");
  expect(page).toContain("| another | 3 of 10 | 0 | **not met** |");
  expect(page.match(/Not run since the last change of this page: not met\./g)).toHaveLength(7);
});

it("lists each fault that no test noticed, with its reason", () => {
  const place = { start: { line: 1, column: 1 }, end: { line: 1, column: 6 } };
  const files = {
    "src/a.ts": {
      source: "a < b;",
      mutants: [
        { status: "Survived", mutatorName: "x", replacement: "a > b", location: place },
        { status: "Killed", mutatorName: "x", replacement: "true", location: place },
        { status: "Ignored", mutatorName: "x", replacement: "false", location: place },
      ],
    },
  };
  const page = trustPage({}, { files }, { "src/a.ts: a < b -> a > b": "equal" }, undefined);
  expect(page).toContain("All of these rooms: 2 faults, 1 noticed: 50 %. The bar is **not met**.");
  expect(page).toContain("| src/a.ts:1 | `a < b` | `a > b` | equal |");
});

it("says of a sample how far it may be from the whole: 93 of 100 noticed is 93 % give or take 2 √(0.93 × 0.07 / 100) = 5.1 %", () => {
  const place = { start: { line: 1, column: 1 }, end: { line: 1, column: 2 } };
  const mutant = (status: string) => ({ status, mutatorName: "x", replacement: "b", location: place });
  const many = (n: number, status: string) => Array.from({ length: n }, () => mutant(status));
  const page = (killed: number, survived: number): string =>
    trustPage(
      {},
      {
        config: { mutate: Array.from({ length: 100 }, (_, i) => `src/a.ts:${i}:0-${i}:5`) },
        files: {
          "src/a.ts": {
            source: "a",
            mutants: [...many(killed, "Killed"), ...many(survived, "Survived")],
          },
        },
      },
      {},
      undefined,
    );
  expect(page(93, 7)).toContain(
    "A random sample of 100 of the smallest places (`SAMPLE=100 npm run mutate`): 100 faults, 93 noticed: 93 %, so that of all such places 87.9 to 98.1 % are; whether the bar is met, the sample does **not** show.",
  );
  expect(page(98, 2)).toContain("so that of all such places 95.2 to 100 % are; the bar is met.");
  expect(page(80, 20)).toContain("72 to 88 % are; the bar is **not met**.");
});
