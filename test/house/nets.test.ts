import { execFileSync, spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

/** A violation of every rule of every net, planted in a copy of the tree, and seen to be caught by name. */

let copy = "";
const bin = (path: string): string => resolve("node_modules", path);

beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "kerfsheet-nets-"));
  for (const part of [
    "src",
    "functions",
    "taskpane",
    "config",
    "tsconfig.base.json",
    "eslint.config.js",
    ".dependency-cruiser.cjs",
    ".prettierrc.json",
    ".prettierignore",
    "package.json",
  ])
    cpSync(part, join(copy, part), { recursive: true });
  // What npm test has checked already: only what is planted is checked anew.
  if (existsSync(".cache/types")) cpSync(".cache/types", join(copy, ".cache/types"), { recursive: true });
  mkdirSync(join(copy, "test"));
  symlinkSync(resolve("node_modules"), join(copy, "node_modules"));
});
afterAll(() => rmSync(copy, { recursive: true, force: true }));

const planted: string[] = [];
const plant = (file: string, text: string): void => {
  mkdirSync(dirname(join(copy, file)), { recursive: true });
  writeFileSync(join(copy, file), text);
  planted.push(file);
};
const clear = (): void => {
  for (const file of planted.splice(0)) rmSync(join(copy, file));
};
const run = (args: readonly string[]): string => {
  const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: copy, encoding: "utf8", maxBuffer: 1e8 });
  return stdout + stderr;
};

describe("the type checker", () => {
  const cases: readonly (readonly [what: string, folder: string, text: string, says: RegExp])[] = [
    ["src knows no DOM", "src", "export const w = document.title;", /Cannot find name 'document'/],
    ["src knows no Node", "src", "export const p = process.argv;", /Cannot find name 'process'/],
    [
      "src knows no Office",
      "src",
      "export const e = CustomFunctions.Error;",
      /Cannot find (name|namespace) 'CustomFunctions'/,
    ],
    [
      "an unchecked index may be undefined",
      "src",
      "export const f = (a: readonly number[]): number => a[0];",
      /undefined/,
    ],
    ["nothing is implicitly any", "functions", "export const f = (a) => a;", /implicitly has an 'any' type/],
    ["functions know no Office pane", "functions", "export const o = Office.context;", /Cannot find name 'Office'/],
    ["the pane knows no Node", "taskpane", "export const p = process.argv;", /Cannot find name 'process'/],
  ];
  it("catches a violation of each, in the folder that must not hold it", () => {
    cases.forEach(([, folder, text], i) => plant(`${folder}/zz${i}.ts`, text));
    const said = run([bin("typescript/bin/tsc"), "-b", ...new Set(cases.map(([, folder]) => folder))]).split("\n");
    const missed = cases.filter(
      ([, folder, , says], i) => !said.some((line) => line.startsWith(`${folder}/zz${i}.ts`) && says.test(line)),
    );
    clear();
    expect(missed.map(([what]) => what)).toEqual([]);
  });
});

describe("the linter", () => {
  const inSrc: readonly (readonly [rule: string, text: string])[] = [
    ["no default export", "export default 1;"],
    ["no clock", "export const t = new Date();"],
    ["no randomness", "export const r = Math.random();"],
    ["no plain Error", 'export function f(): void { throw new Error("x"); }'],
    ["no ambient declaration", "declare const host: number; export const h = host;"],
    ["no global object", "export const g = globalThis;"],
    ["no console", "export const f = (): void => console.log(1);"],
    ["no dynamic import", 'export const i = import("./quantities");'],
    ["no import from outside src", 'export { call } from "../functions/bind/call";'],
    ["no module-level state", "export let counter = 0;"],
    ["no private module-level state", "let counter = 0; export const f = (): number => (counter += 1);"],
    ["no eval", 'export const e = eval("1");'],
    ["no long function", `export function f(x: number): number {\n${"  x += 1;\n".repeat(41)}  return x;\n}`],
    [
      "no tangled function",
      `export function f(x: number): number {\n${Array.from({ length: 13 }, (_, i) => `  if (x === ${i}) return ${i};\n`).join("")}  return x;\n}`,
    ],
    ["no long file", Array.from({ length: 201 }, (_, i) => `export const a${i} = ${i};`).join("\n")],
    ["no any", "export const f = (x: any): number => x.y;"],
  ];
  const elsewhere: readonly (readonly [rule: string, file: string, text: string])[] = [
    ["no bare number in cost", "src/cost/zz.ts", "export const f = (x: number): number => x * 0.7;"],
    ["no host object outside host.ts", "functions/zz.ts", "export const e = CustomFunctions.Error;"],
    ["no Office outside office.ts", "taskpane/zz.ts", "export const o = Office.context;"],
    ["no innerHTML", "taskpane/zz.ts", 'export const f = (e: HTMLElement): void => { e.innerHTML = "x"; };'],
    ["no document.write", "taskpane/zz.ts", 'export const f = (): void => document.write("x");'],
    ["no default export in functions", "functions/zz.ts", "export default 1;"],
  ];
  it("catches a violation of each rule, in src and elsewhere", () => {
    const expected: string[] = [];
    inSrc.forEach(([, text], i) => plant(`src/zz${i}.ts`, text));
    elsewhere.forEach(([, , text], i) => plant(`${elsewhere[i]![1].replace("zz.ts", `zz${i}.ts`)}`, text));
    const { stdout } = spawnSync(process.execPath, [bin("eslint/bin/eslint.js"), "--format", "json", ...planted], {
      cwd: copy,
      encoding: "utf8",
      maxBuffer: 1e8,
    });
    const results = JSON.parse(stdout) as {
      filePath: string;
      messages: { ruleId: string | null; severity: number; fatal?: boolean }[];
    }[];
    const caught = (file: string): boolean =>
      results.some(
        (r) => r.filePath.endsWith(`/${file}`) && r.messages.some((m) => m.severity === 2 && m.fatal !== true),
      );
    inSrc.forEach(([rule], i) => {
      if (!caught(`src/zz${i}.ts`)) expected.push(rule);
    });
    elsewhere.forEach(([rule, file], i) => {
      if (!caught(file.replace("zz.ts", `zz${i}.ts`))) expected.push(rule);
    });
    clear();
    expect(expected, "rules that caught nothing").toEqual([]);
  });
});

/** A file of one room that sees a room above it. */
const upward = (folder: string, rooms: readonly (readonly [room: string, sees: string])[]) =>
  rooms.map(([room, sees]) => [`${folder}-${room}`, `${folder}/${room}/zz.ts`, `export * from "../${sees}";`] as const);

describe("the formatter", () => {
  it("catches a line that is not formatted, and a line of over 120 columns", () => {
    plant("src/zz0.ts", "export const a  = 1;\n");
    plant("test/zz1.ts", `export const b = [${Array.from({ length: 60 }, (_, i) => i).join(", ")}];\n`);
    plant("config/zz2.mjs", "export const c = 1;\n");
    const said = run([bin("prettier/bin/prettier.cjs"), "--check", ...planted]);
    clear();
    expect(["src/zz0.ts", "test/zz1.ts", "config/zz2.mjs"].map((f) => said.includes(f))).toEqual([true, true, false]);
  });
});

describe("the dependency rules", () => {
  const cases: readonly (readonly [rule: string, file: string, text: string, beside?: readonly [string, string]])[] = [
    ["src-is-pure", "src/zz.ts", 'export { call } from "../functions/bind/call";'],
    ...upward("src", [
      ["data", "cutting/cut"],
      ["material", "section/section"],
      ["size", "section/shapeOutline"],
      ["blade", "shop/shop"],
      ["section", "material/material"],
      ["shop", "cutting/cut"],
      ["cutting", "item/item"],
      ["item", "cutting/cut"],
      ["time", "cutting/cut"],
      ["yield", "section/section"],
      ["plan", "cost/lineCost"],
      ["cost", "about/version"],
      ["statistics", "shop/shop"],
      ["records", "item/item"],
      ["about", "shop/shop"],
    ]),
    ["functions-see-src-and-functions", "functions/zz.ts", 'export { element } from "../taskpane/controls/element";'],
    ...upward("functions", [
      ["formula", "kinds/cell"],
      ["kinds", "bind/entry"],
      ["shop", "bind/entry"],
      ["bind", "catalogue/time"],
      ["catalogue", "reference/describe"],
      ["hosts", "reference/describe"],
      ["reference", "hosts/grid"],
      ["workbook", "reference/describe"],
    ]),
    ["functions-packages", "functions/zz.ts", 'export { default as x } from "fast-check";'],
    ["workbook-is-not-the-add-in", "functions/zz.ts", 'export { readBook } from "./workbook/readBook";'],
    ["pane-sees-core-catalogue-bind", "taskpane/zz.ts", 'export { gridFunctions } from "../functions/hosts/grid";'],
    ...upward("taskpane", [
      ["sheet", "controls/element"],
      ["controls", "views/explain"],
      ["views", "main"],
    ]),
    ["tryit-not-host-or-test", "taskpane/tryit/zz.ts", 'export { register } from "../../functions/hosts/excel";'],
    ["pane-packages", "taskpane/zz.ts", 'export { default as x } from "fast-check";'],
    ["host-only-in-main", "functions/zz.ts", 'export { register } from "./hosts/excel";'],
    [
      "nothing-imports-test",
      "functions/zz.ts",
      'export { a } from "../test/zz";',
      ["test/zz.ts", "export const a = 1;"],
    ],
    ["nothing-imports-tryit", "taskpane/zz.ts", 'export { snapshot } from "./tryit/snapshot";'],
    [
      "no-circular",
      "src/zz.ts",
      'import type { B } from "./zzz"; export type A = B;',
      ["src/zzz.ts", 'import type { A } from "./zz"; export type B = A;'],
    ],
    ["not-to-unresolvable", "src/zz.ts", 'export { x } from "./nowhere";'],
  ];
  it("know every rule that is tested here", () => {
    const rules = execFileSync(
      process.execPath,
      ["-e", 'console.log(require("./.dependency-cruiser.cjs").forbidden.map((r) => r.name).join())'],
      { encoding: "utf8" },
    )
      .trim()
      .split(",");
    expect(cases.map(([rule]) => rule)).toEqual(rules);
  });

  it("catch a violation of each", () => {
    const own = (file: string, i: number): string => file.replace(/zz(?=\.ts)/, `zz${i}`);
    cases.forEach(([, file, text, beside], i) => {
      plant(own(file, i), text.replace(/\/zz"/, `/zz${i}"`).replace(/\/zzz"/, `/zzz${i}"`));
      if (beside !== undefined)
        plant(own(beside[0], i).replace("zzz.ts", `zzz${i}.ts`), beside[1].replace(/\/zz"/, `/zz${i}"`));
    });
    const said = run([
      bin("dependency-cruiser/bin/dependency-cruise.mjs"),
      "--config",
      ".dependency-cruiser.cjs",
      ".prettierrc.json",
      ".prettierignore",
      ...planted,
    ]).split("\n");
    const missed = cases.filter(
      ([rule, file], i) => !said.some((line) => line.includes(` ${rule}: `) && line.includes(own(file, i))),
    );
    clear();
    expect(missed.map(([rule]) => rule)).toEqual([]);
  });
});
