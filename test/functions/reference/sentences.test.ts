import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { Memo } from "../../../functions/bind/memo";
import { parseCall } from "../../../functions/bind/parseCall";
import { isRequired, slotHelp, slots, slotSays } from "../../../functions/bind/slots";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Cell } from "../../../functions/kinds/cell";
import { describe as describeFunction, shopRows } from "../../../functions/reference/describe";
import { driveTable } from "../catalogue/table";
import * as Bind from "../../../functions/bind/call";

/** A small reader of generated sentences: it knows the faults that putting words together makes. */
const faults: readonly (readonly [what: string, is: RegExp])[] = [
  ["a unit read as the word in", /\bin in\b/],
  ["in per", /\bin per\b/],
  ["a word twice", /\b([a-z]{2,}) \1\b/i],
  ["an empty place", /\{\w+\}|undefined|\bNaN\b|\[object|\bnull\b/],
  ["two blanks", / {2}/],
  ["a blank before a stop", / [,;.:](?: |$)/],
  ["two stops", /[,;:][,;:]|\.\.(?!\.)/],
  ["an article before a vowel", /\ba (?:area|inch|amount|empty|offer)\b/i],
  ["1 with a plural", /(?<![\d.,/-]|× )\b1 (?:rows|cells|items|sheets|teeth|bars)\b/],
  ["quotes that never close", /^[^"]*"(?:[^"]*"[^"]*")*[^"]*$/],
  ["brackets that never close", /^[^()]*\([^)]*$/],
];
const faultsIn = (sentence: string): readonly string[] =>
  faults.filter(([, is]) => is.test(sentence)).map(([what]) => `${what}: ${sentence}`);

describe("the reader of sentences", () => {
  it.each([
    ["length in in, or text", "a unit read as the word in"],
    ["number in per hour, 0 or more", "in per"],
    ["the the saw", "a word twice"],
    ["must be at most {limit}", "an empty place"],
    ["rows , columns", "a blank before a stop"],
    ["it has 1 rows", "1 with a plural"],
    ['it is "fast', "quotes that never close"],
  ])("finds the fault of %s", (sentence, what) => {
    expect(faultsIn(sentence).map((f) => f.split(":")[0])).toContain(what);
  });
});

describe("the sentences made from the catalogue", () => {
  it("have no such fault in any argument's help, in both unit systems", () => {
    const said = catalogue.flatMap((e) =>
      slots(e).flatMap((s) => [slotHelp(s), slotSays(s, "inch"), slotSays(s, "metric")]),
    );
    expect(said.length).toBeGreaterThan(300);
    expect([...new Set(said.flatMap(faultsIn))]).toEqual([]);
  });

  it("say a default exactly where an argument that may be left out has one", () => {
    for (const e of catalogue) {
      for (const slot of slots(e)) {
        if (slot.role !== "param") continue;
        const { missing, block } = slot.param;
        const has = block !== undefined || (missing !== "refuse" && missing.is !== undefined);
        expect(/\bdefault\b/.test(slotHelp(slot)), `${e.name}: ${slot.name}: ${slotHelp(slot)}`).toBe(has);
        if (isRequired(slot) && block === undefined) expect(slotHelp(slot)).not.toMatch(/\bdefault\b/);
      }
    }
  });

  it("have no such fault in any card, nor in the pages' words", () => {
    const cards = catalogue.flatMap((e) =>
      e.result.form !== "row"
        ? []
        : e.examples.flatMap((formula) => {
            const at = slots(e).findIndex((s) => s.name === "show");
            const args = [...parseCall(formula).args];
            while (args.length <= at) args.push(null);
            args[at] = [["card"]];
            return call(e, args, new Memo()).flat();
          }),
    );
    const docs = catalogue.map((e) => describeFunction(catalogue, e));
    const words = docs.flatMap((d) => [
      d.help,
      d.gives,
      d.source,
      ...d.asks,
      ...d.arguments.flat(),
      ...d.results.flat(),
    ]);
    const said = [...cards.map((c) => (c instanceof CellError ? c.text : String(c))), ...words, ...shopRows().flat()];
    expect(said.length).toBeGreaterThan(500);
    expect([...new Set(said.flatMap(faultsIn))]).toEqual([]);
  });

  it("have no such fault in any refusal of the table of wrong cells", () => {
    const said = new Set<string>();
    const listening: typeof Bind.call = (...args) => {
      const cells: Cell[][] = call(...args);
      for (const cell of cells.flat()) if (cell instanceof CellError) said.add(cell.text);
      return cells;
    };
    driveTable({ call: listening, CellError, slots, parseCall, Memo, catalogue });
    expect(said.size).toBeGreaterThan(100);
    expect([...said].flatMap(faultsIn)).toEqual([]);
  });
});

describe("docs/functions.md", () => {
  it("has no such fault outside its formulas and results", () => {
    const lines = readFileSync("docs/functions.md", "utf8")
      .split("\n")
      .filter((line) => !/^ {4}|^\| ---|`/.test(line))
      .flatMap((line) => (line.startsWith("|") ? line.split("|").map((cell) => cell.trim()) : [line]));
    expect([...new Set(lines.flatMap(faultsIn))]).toEqual([]);
  });
});
