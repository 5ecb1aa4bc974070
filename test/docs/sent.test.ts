import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { exampleResult, printCell } from "../../functions/reference/describe";

/** docs/method.md, "Words to send": each formula, as it stands or through INDEX, gives what is printed beside it. */

const text = readFileSync("docs/method.md", "utf8");
const section = text.slice(text.indexOf("## Words to send"), text.indexOf("## The saw hour"));
const rows = [...section.matchAll(/^\| `=([^`]+)` \| ([^|]+) \|$/gm)].map((m) => [m[1]!, m[2]!.trim()] as const);

describe("words to send", () => {
  it.each(rows)("%s", (formula, printed) => {
    const [, inner, row, column] = /^INDEX\((.*), (\d+), (\d+)\)$/.exec(formula) ?? [];
    const cells = exampleResult(catalogue, inner ?? formula);
    const cell = cells[Number(row ?? 1) - 1]![Number(column ?? 1) - 1]!;
    expect(printCell(cell)).toBe(printed);
  });

  it("the mail and the quote hold these figures", () => {
    expect(rows).toHaveLength(6);
    for (const figure of [
      "0.361 per in², 58 %",
      "a price of 2950",
      "both fall 58 % short",
      "in 3 months",
      "19.92",
      "6.42",
      "5.22",
    ])
      expect(section).toContain(figure);
  });
});
