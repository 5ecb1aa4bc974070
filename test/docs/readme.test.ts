import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { exampleResult, printCell } from "../../functions/reference/describe";

const readme = readFileSync("README.md", "utf8");
const developers = readFileSync("DEVELOPERS.md", "utf8");
const changelog = readFileSync("docs/changelog.md", "utf8");

describe("README.md", () => {
  const formulas = [...readme.matchAll(/^\| `=([^`]+)` \| ([^|]+) \|/gm)];
  it.each(formulas.map((m) => [m[1]!, m[2]!.trim()] as const))("=%s gives %s", (formula, printed) => {
    const [[cell]] = exampleResult(catalogue, formula) as [[string | number]];
    expect(typeof cell === "number" ? String(Number(cell.toPrecision(4))) : printCell(cell)).toBe(printed);
  });

  it("has three formulas, and names only files that are there", () => {
    expect(formulas.length).toBe(3);
    for (const text of [readme, developers])
      for (const [, link] of text.matchAll(/\]\(([^)#h][^)#]*)\)/g)) expect(existsSync(link!), link).toBe(true);
  });
});

describe("docs/changelog.md", () => {
  it("names every function", () => {
    for (const e of catalogue) expect(changelog, e.name).toMatch(new RegExp(`\\b${e.name}\\b`));
  });
});
