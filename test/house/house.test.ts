import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { wantBuilt } from "../../config/built.mjs";
import { catalogue } from "../../functions/catalogue";
import { call } from "../../functions/bind/call";
import { CellError } from "../../functions/kinds/cell";
import { slots } from "../../functions/bind/slots";
import { parseCall } from "../../functions/bind/parseCall";
import { Memo } from "../../functions/bind/memo";

/** The rules of the house that no compiler, linter or dependency rule can hold. No exemption lists. */

const coreFiles = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((f) => f.replace(/\\/g, "/"))
  .filter((f) => f.endsWith(".ts") && f.includes("/") && !f.startsWith("data/"));

interface Exported {
  readonly name: string;
  readonly kind: "function" | "value" | "type";
  readonly doc: string;
}

const exportsOf = (text: string): Exported[] => {
  const file = ts.createSourceFile("x.ts", text, ts.ScriptTarget.ES2020, true);
  return file.statements.flatMap((s): Exported[] => {
    const exported =
      ts.canHaveModifiers(s) && ts.getModifiers(s)?.some((m) => m.kind === ts.SyntaxKind.ExportKeyword) === true;
    if (!exported) return [];
    const doc = ts
      .getJSDocCommentsAndTags(s)
      .map((d) => d.getText())
      .join("\n");
    if (ts.isFunctionDeclaration(s)) return [{ name: s.name!.text, kind: "function", doc }];
    if (ts.isInterfaceDeclaration(s) || ts.isTypeAliasDeclaration(s)) return [{ name: s.name.text, kind: "type", doc }];
    if (ts.isVariableStatement(s))
      return s.declarationList.declarations.map((d) => ({ name: d.name.getText(), kind: "value", doc }));
    return [{ name: s.getText().slice(0, 40), kind: "value", doc }];
  });
};

/** What is wrong with one core file. */
export const coreProblems = (path: string, text: string, hasTest: boolean): string[] => {
  const all = exportsOf(text);
  const functions = all.filter((e) => e.kind === "function");
  const problems: string[] = [];
  if (functions.length > 1) problems.push(`${path}: exports ${functions.length} functions; one function, one file`);
  for (const f of functions) {
    if (`${f.name}.ts` !== basename(path)) problems.push(`${path}: ${f.name} stands in a file of another name`);
    if (!/@source/.test(f.doc)) problems.push(`${path}: ${f.name} names no @source`);
    if (!/@returns[^@]*\[[^\]]+\]/.test(f.doc)) problems.push(`${path}: ${f.name} gives no unit of its result`);
    if (/throw new InputError/.test(text) && !/@throws/.test(f.doc))
      problems.push(`${path}: ${f.name} does not say what it refuses`);
    if (!hasTest)
      problems.push(`${path}: has no test: add ${path.replace(/^src/, "test").replace(/\.ts$/, ".test.ts")}`);
  }
  return problems;
};

describe("every core function", () => {
  it("stands alone in a file of its name, with source, units, refusals and a test", () => {
    expect(coreFiles.length).toBeGreaterThan(10);
    expect(
      coreFiles.flatMap((f) =>
        coreProblems(
          `src/${f}`,
          readFileSync(join("src", f), "utf8"),
          existsSync(join("test", f.replace(/\.ts$/, ".test.ts"))),
        ),
      ),
    ).toEqual([]);
  });

  it("is found wanting when it breaks one of these rules", () => {
    const good =
      '/**\n * @returns a [mm]\n * @throws InputError\n * @source geometry\n */\nexport function a(): number { throw new InputError("none", "", ""); }';
    expect(coreProblems("src/x/a.ts", good, true)).toEqual([]);
    expect(coreProblems("src/x/a.ts", good, false)).toHaveLength(1);
    expect(coreProblems("src/x/b.ts", good, true)).toHaveLength(1);
    expect(coreProblems("src/x/a.ts", good.replace("@source geometry", ""), true)).toHaveLength(1);
    expect(coreProblems("src/x/a.ts", good.replace("[mm]", "mm"), true)).toHaveLength(1);
    expect(coreProblems("src/x/a.ts", good.replace("@throws InputError", ""), true)).toHaveLength(1);
    expect(
      coreProblems(
        "src/x/a.ts",
        `${good}\n/** @returns [mm] @throws InputError @source x */ export function b(): number { return 1; }`,
        true,
      ).length,
    ).toBeGreaterThan(0);
  });

  it("reaches the sheet: no core file stands outside every entry", () => {
    const reached = new Set<string>();
    const visit = (file: string): void => {
      if (reached.has(file) || !existsSync(file)) return;
      reached.add(file);
      for (const match of readFileSync(file, "utf8").matchAll(/from "(\.[^"]+)"/g)) {
        const target = join(file, "..", match[1]!).replace(/\\/g, "/");
        visit(`${target}.ts`);
        visit(`${target}/index.ts`);
      }
    };
    visit("functions/main.ts");
    visit("taskpane/main.ts");
    const alone = coreFiles.map((f) => `src/${f}`).filter((f) => !reached.has(f));
    expect(alone.map((f) => `${f} is reached by no entry: add one in functions/catalogue, or delete the file`)).toEqual(
      [],
    );
  });
});

describe("every entry", () => {
  it.each(catalogue.flatMap((e) => e.examples.map((formula) => [formula, e] as const)))(
    "%s runs and is no error",
    (formula, e) => {
      const { name, args } = parseCall(formula);
      expect(name).toBe(e.name);
      expect(
        call(e, args, new Memo())
          .flat()
          .filter((c) => c instanceof CellError),
      ).toEqual([]);
    },
  );

  it("has a default of 0 where 0 may be given, so that blank and 0 are the same", () => {
    for (const e of catalogue) {
      for (const s of slots(e)) {
        if (s.role !== "param" || s.param.missing === "refuse" || !s.param.kind.zeroIsValue) continue;
        expect(s.param.missing.is, `${e.name}: ${s.name}`).toBe(0);
      }
    }
  });

  it("reads the shop block where an argument is fed by it", () => {
    for (const e of catalogue)
      for (const p of Object.values(e.params))
        if (p.block !== undefined) expect(e.takes.settings, e.name).toBeDefined();
  });

  it("is named in the changelog", () => {
    const changelog = readFileSync("docs/changelog.md", "utf8");
    const unnamed = catalogue.map((e) => e.name).filter((name) => !new RegExp(`\\b${name}\\b`).test(changelog));
    expect(unnamed.map((name) => `${name} is not in docs/changelog.md: add a line that says what it gives`)).toEqual(
      [],
    );
  });

  it("has at most six required arguments", () => {
    for (const e of catalogue)
      expect(Object.values(e.params).filter((p) => p.missing === "refuse").length, e.name).toBeLessThanOrEqual(6);
  });
});

describe("generate --check", () => {
  it("finds one changed letter, and nothing else", () => {
    wantBuilt("programs");
    const copy = mkdtempSync(join(tmpdir(), "kerfsheet-"));
    try {
      execFileSync("cp", ["-r", "package.json", "src", "functions", "docs", "taskpane", copy]);
      const page = join(copy, "docs/functions.md");
      writeFileSync(page, readFileSync(page, "utf8").replace("Minutes per cut", "Minutes a cut"));
      const { status, stderr } = spawnSync(process.execPath, [resolve("build/generate.cjs"), "--check"], {
        cwd: copy,
        encoding: "utf8",
      });
      expect([status, stderr]).toEqual([1, expect.stringMatching(/^stale: docs\/functions\.md\. Run/)]);
    } finally {
      rmSync(copy, { recursive: true, force: true });
    }
  });
});

describe("what is committed", () => {
  const files = execFileSync("git", ["ls-files", "-co", "--exclude-standard"], { encoding: "utf8" })
    .split("\n")
    .filter((f) => f !== "" && existsSync(f) && !/\.(png|xlsx|ico)$|package-lock\.json$/.test(f));
  const holding = (pattern: RegExp): string[] =>
    files.filter((f) => !f.startsWith("test/house/") && pattern.test(readFileSync(f, "utf8")));

  it("names no path of a machine and no private folder", () => {
    expect(holding(/\/work\/|\/home\/[a-z]|\/tmp\/[a-z]|[^\w]shared\//)).toEqual([]);
  });

  it("makes no HTML from text, evaluates nothing, writes no document (outside the tests)", () => {
    expect(
      holding(/\.innerHTML|\.outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function\(/).filter((f) =>
        /^(src|functions|taskpane)\//.test(f),
      ),
    ).toEqual([]);
  });
});
