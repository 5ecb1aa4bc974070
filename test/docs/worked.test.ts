import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { exampleResult } from "../../functions/reference/describe";
import { demoBook } from "../../functions/workbook/samples/books";
import { evaluate } from "../browser/evaluate";

/** docs/method.md, "Worked by hand": each line as arithmetic, and its results on the demo sheets. */

const text = readFileSync("docs/method.md", "utf8");
const worked = text.slice(text.indexOf("### One cut by hand"));
const blocks = [...worked.matchAll(/```\n([\s\S]*?)```/g)].map((m) => m[1]!.trim().split("\n"));
const sheets = evaluate(demoBook);
const cell = (sheet: string, at: string): number => sheets.get(sheet)!.get(at) as number;
const last = (line: string): number => Number(line.split("=").at(-1));

describe("worked by hand in docs/method.md", () => {
  it("every line is right to the places it prints", () => {
    let lines = 0;
    for (const line of blocks.flat()) {
      const [, expression, value] =
        /^[^:]+(?:: |.*: )((?:[\d.+\-*/() ]|ln|sqrt|asin|exp)+) = (-?[\d.]+)$/.exec(line) ?? [];
      expect(expression, line).toBeDefined();
      const calculated = Number(
        new Function("ln", "sqrt", "asin", "exp", `return (${expression!});`)(Math.log, Math.sqrt, Math.asin, Math.exp),
      );
      // Six figures carried on: half a unit of the last place, and what the rounded terms before it may bring.
      const place = 10 ** -(value!.split(".")[1]?.length ?? 0);
      expect(Math.abs(calculated - Number(value)), `${line} (${calculated})`).toBeLessThanOrEqual(
        0.5 * place + 3e-6 * Math.abs(calculated),
      );
      lines += 1;
    }
    expect(lines).toBeGreaterThan(50);
  });

  it("the cut by hand ends on what CUTDATA gives", () => {
    const [cut] = blocks as [string[]];
    const find = (start: string): number => last(cut.find((l) => l.startsWith(start))!);
    const result = (show: string): number =>
      exampleResult(catalogue, `SAW.CUTDATA("round 4", "A36", "bi-metal", "${show}")`)[0]![0] as number;
    for (const [start, show, factor] of [
      ["band speed, ft/min", "band speed", 1],
      ["minutes: ", "minutes", 1],
      ["rate, in²/min", "rate", 1],
      ["low", "rate low", 1],
      ["high", "rate high", 1],
      ["bite as it runs", "bite", 25.4],
      ["teeth", "teeth", 1],
      ["chip", "chip thickness", 25.4],
    ] as const)
      expect(Math.abs((result(show) * factor) / find(start) - 1), start).toBeLessThan(1e-5);
  });

  it("ends on the numbers of the demo sheets", () => {
    const [, flat, round, purchase, monday] = blocks as [string[], string[], string[], string[], string[]];
    const find = (block: string[], start: string): number => last(block.find((l) => l.startsWith(start))!);
    const near = (value: number, printed: number) => expect(Math.abs(value / printed - 1)).toBeLessThan(2e-5);
    near(cell("Estimate", "M5"), 10.41088);
    near(cell("Estimate", "I5"), find(flat, "minutes of the line"));
    near(cell("Estimate", "G5"), find(flat, "price line"));
    near(cell("Estimate", "Q5"), find(flat, "remnant of the other bar"));
    near(cell("Estimate", "M6"), 9.511491);
    near(cell("Estimate", "I6"), find(round, "minutes of the line"));
    near(cell("Estimate", "G6"), find(round, "price line"));
    near(cell("Estimate", "G7"), 490.52);
    near(cell("Purchase", "B26"), find(purchase, "highest price"));
    near(cell("Purchase", "C26"), find(purchase, "shortest life"));
    near(cell("Purchase", "D26"), find(purchase, "slowest rate"));
    near(cell("Purchase", "F26"), find(purchase, "saving, an in²"));
    near(cell("Purchase", "F34"), find(monday, "saving on Mondays"));
    near(cell("Purchase", "F35"), find(monday, "saving on other days"));
    near(cell("Purchase", "B36"), find(monday, "blended hour, weighted"));
    near(cell("Purchase", "F36"), find(monday, "both, by the blended hour"));
    near(cell("Purchase", "F37"), 2224.75);
    expect(cell("Purchase", "E36") * cell("Purchase", "C36")).toBeCloseTo(cell("Purchase", "F36"), 9);
  });
});
