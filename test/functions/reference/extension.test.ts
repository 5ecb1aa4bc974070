import { existsSync, readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../../functions/catalogue";
import { words } from "../../../functions/kinds/words";
import { shopLabels } from "../../../functions/shop/labels";
import { extensionProblems, type Released } from "./extension";

/** From 1.0 on each release's functions.json is kept here, and every later one only adds (docs/decisions/0006-names.md). */
const kept = "test/data/released";
const released = existsSync(kept) ? readdirSync(kept).filter((file) => file.startsWith("functions-")) : [];
const read = (file: string): Released => JSON.parse(readFileSync(file, "utf8")) as Released;
const now = read("functions/functions.json");

type Functions = Released["functions"];
const with1 = (change: (first: Functions[number]) => Functions[number]): Released => ({
  functions: now.functions.map((f, i) => (i === 0 ? change(f) : f)),
});

/** Names of results and labels of the shop block, which cells keep as text. */
interface Names {
  readonly results: Readonly<Record<string, readonly string[]>>;
  readonly labels: readonly string[];
}

it("no name of a result and no label of the shop block of an earlier release is gone, and tables keep the order of their columns", () => {
  const files = readdirSync(kept).filter((file) => file.startsWith("names-"));
  expect(files.length).toBe(released.length);
  for (const file of files) {
    const { results, labels } = JSON.parse(readFileSync(`${kept}/${file}`, "utf8")) as Names;
    expect(shopLabels.map((l) => l.label)).toEqual(expect.arrayContaining([...labels]));
    for (const [name, before] of Object.entries(results)) {
      const { result } = catalogue.find((e) => e.name === name)!;
      const today = result.form === "cell" ? [] : Object.keys(result.columns).map(words);
      expect(today.slice(0, before.length), name).toEqual(before);
    }
  }
});

describe("functions.json only grows", () => {
  it(`${String(released.length)} earlier releases`, () => {
    const version = (JSON.parse(readFileSync("package.json", "utf8")) as { readonly version: string }).version;
    expect(released.length, version).toBeGreaterThan(0);
    for (const file of released) expect(extensionProblems(read(`${kept}/${file}`), now), file).toEqual([]);
  });

  it.each<readonly [string, Released, RegExp | undefined]>([
    ["a function more", { functions: [...now.functions, { id: "NEW", name: "NEW", parameters: [] }] }, undefined],
    [
      "an optional argument more",
      with1((f) => ({
        ...f,
        parameters: [...f.parameters, { name: "x", type: "any", dimensionality: "matrix", optional: true }],
      })),
      undefined,
    ],
    ["a function less", { functions: now.functions.slice(1) }, /is gone/],
    ["another name", with1((f) => ({ ...f, name: "OTHER" })), /is gone/],
    ["an argument less", with1((f) => ({ ...f, parameters: f.parameters.slice(0, -1) })), /has lost its argument/],
    [
      "two arguments changed round",
      with1((f) => ({ ...f, parameters: [...f.parameters].reverse() })),
      /name is another/,
    ],
    [
      "an optional one now wanted",
      with1((f) => ({
        ...f,
        parameters: f.parameters.map(({ name, type, dimensionality }) => ({ name, type, dimensionality })),
      })),
      /optional is another/,
    ],
    [
      "a new one that is wanted",
      with1((f) => ({ ...f, parameters: [...f.parameters, { name: "x", type: "any", dimensionality: "matrix" }] })),
      /wants a new argument/,
    ],
  ])("%s", (_, later, problem) => {
    const problems = extensionProblems(now, later);
    if (problem === undefined) expect(problems).toEqual([]);
    else expect(problems.join("; ")).toMatch(problem);
  });
});
