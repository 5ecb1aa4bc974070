import type * as Bind from "../../../functions/bind/call";
import type * as Cells from "../../../functions/kinds/cell";
import type { Cell, Range } from "../../../functions/kinds/cell";
import type * as Slots from "../../../functions/bind/slots";
import type { Kind } from "../../../functions/kinds/kind";
import type { Entry } from "../../../functions/bind/entry";
import type { Slot } from "../../../functions/bind/slots";
import type * as Examples from "../../../functions/bind/parseCall";
import type * as Memos from "../../../functions/bind/memo";

/** The parts of the project that the table drives; faults are planted in a copy of them. */
export interface Parts {
  readonly call: typeof Bind.call;
  readonly CellError: typeof Cells.CellError;
  readonly slots: typeof Slots.slots;
  readonly parseCall: typeof Examples.parseCall;
  readonly Memo: typeof Memos.Memo;
  readonly catalogue: readonly Entry[];
}

export interface Outcome {
  readonly failures: readonly string[];
  /** Good values that were refused all the same, with the reason. */
  readonly refused: readonly string[];
  readonly tried: number;
  readonly accepted: number;
}

/** Values that a kind accepts, whatever else stands in the call. */
const good: Readonly<Record<string, readonly Cell[]>> = {
  section: ["round 7 in", "square 4 in", "flat 6x1 in", "tube 6x0.5 in", "ROUND 5-1/2", "round 100 mm"],
  material: ["A36", "304", 4140, "1.4301", "6061-T6"],
  pitch: ["2/3", "3/4", 4, "1.4/2"],
  length: [12, "20 ft", "6 m"],
  text: ["round 7"],
  symptom: ["teeth broken off", "teeth broken off, new blade"],
  description: ["RND BAR 3-1/2 IN 4140 x 20 ft", "round 7 in 304"],
  "order item": ["round 7 in", "RND BAR 3-1/2 IN 4140 x 20 ft"],
};

const blanks: readonly Cell[] = [null, "", "   ", 0];

/** Every argument of every function against every kind of wrong cell, in both unit systems. */
export function driveTable({ call, CellError, slots, parseCall, Memo, catalogue }: Parts): Outcome {
  const failures: string[] = [];
  const refused: string[] = [];
  let [tried, accepted] = [0, 0];
  const isError = (cells: Cell[][], code?: string): boolean =>
    cells[0]![0] instanceof CellError && (code === undefined || cells[0]![0].code === code);
  const textOf = (cells: Cell[][]): string => (cells[0]![0] instanceof CellError ? cells[0]![0].text : "");
  const fail = (e: Entry, s: Slot, units: string, what: string, cells: Cell[][]) =>
    failures.push(`${e.name}(${s.name}, ${units}): ${what}; got ${JSON.stringify(cells[0])}`);

  for (const e of catalogue) {
    const places = slots(e);
    const base = parseCall(e.examples[0]).args;
    for (const units of e.takes.units === true ? ["inch", "metric"] : ["none"]) {
      const args = places.map((s, i) => (s.role === "units" && units !== "none" ? [[units]] : (base[i] ?? null)));
      const run = (at: number, range: Range | null) => {
        const got = call(
          e,
          args.map((r, i) => (i === at ? range : r)),
          new Memo(),
        );
        // WORKING says a refusal in a row of its own.
        return got[1]?.[0] === "refused" ? [[new CellError("#VALUE!", String(got[1][3]))]] : got;
      };
      const usual = call(e, args, new Memo());
      if (isError(usual)) failures.push(`${e.name} (${units}): its own example is refused: ${textOf(usual)}`);

      places.forEach((s, at) => {
        // A list of which each row stands for itself refuses nothing: it names the wrong cell in the comment of its table.
        const byRow = s.role === "param" ? s.param.list?.byRow === true : s.role === "saw" && e.takes.saw === "list";
        const isNamed = (got: Cell[][], pattern: RegExp): boolean =>
          got.some((row) => /left out/.test(String(row.at(-1))) && pattern.test(String(row.at(-1))));
        const expectError = (range: Range | null, pattern: RegExp, what: string, code?: string) => {
          const got = run(at, range);
          if (byRow) {
            if (isError(got) || !isNamed(got, pattern.source === "^$" ? /is #/ : pattern)) fail(e, s, units, what, got);
            return;
          }
          if (!isError(got, code) || !pattern.test(textOf(got))) fail(e, s, units, what, got);
        };
        const width = s.role === "param" ? s.param.kind.width : 1;
        const name = s.name.replace(/[A-Z]/g, (l) => ` ${l.toLowerCase()}`);
        const fill = (cell: Cell): Range => [new Array<Cell>(width).fill(cell)];
        expectError(fill(new CellError("#N/A")), /^$/, "an incoming #N/A must go out unchanged", "#N/A");
        expectError(fill(new CellError("#DIV/0!")), /^$/, "an incoming #DIV/0! must go out unchanged", "#DIV/0!");
        expectError(fill(new CellError("#REF!")), /is #REF!/, "an incoming #REF! must be named", "#VALUE!");
        if (s.role === "settings") {
          expectError([["Hourly cost", 60]], /first row/, "a block without Units must be refused");
          expectError(
            [
              ["Units", "inch"],
              ["Nonsense", 1],
            ],
            /Nonsense/,
            "an unknown label must be named",
          );
          expectError(
            [
              ["Units", "inch"],
              ["Kerf", 0.06],
              ["kerf", 0.07],
            ],
            /twice/,
            "a doubled label must be named",
          );
        }
        if (s.role !== "param") {
          if (s.role !== "settings") expectError([[true]], /./, "TRUE must be refused");
          if (s.role === "units") expectError([["inches"]], /inch/, "an unknown unit system must be refused");
          if (s.role === "show") expectError([["nonsense"]], /nonsense/, "an unknown result must be refused");
          return;
        }
        const { kind, missing, varies, list } = s.param;
        if (kind.name !== "mark") expectError(fill(true), /TRUE or FALSE|blank/, "TRUE must be refused");
        if (kind.name === "number" || kind.name === "blade" || kind.name === "offer") {
          expectError(fill("abc"), /is text|text/, "text must be refused");
          expectError(fill("12"), /is text, not a number/, "a number typed as text must be refused");
          expectError(fill(-1), /must be|at least|more than/, "a negative number must be refused");
          expectError(fill(1e300), /at most|Infinity|not less/, "a number out of range must be refused");
        }
        if (kind.name === "section") {
          expectError([[7]], /only a number/, "a bare number is no size", "#VALUE!");
          expectError([[45720]], /date/, "a date serial is no size", "#VALUE!");
          expectError([[-7]], /./, "a negative number is no size");
        }
        if (kind.name === "pitch") expectError([[46115]], /date/, "a date serial is no pitch", "#VALUE!");
        if (kind.name === "material") expectError([["no such steel"]], /./, "an unknown grade is not found", "#N/A");
        if (kind.choices !== undefined)
          expectError([["nonsense"]], /must be/, "an unknown word must be refused", "#VALUE!");
        for (const blank of blanks) {
          const got = run(at, fill(blank));
          const valued = blank === 0 && kind.zeroIsValue;
          if (
            missing === "refuse" &&
            !valued &&
            kind.name !== "offer" &&
            !(byRow && isNamed(got, new RegExp(`no ${name}`))) &&
            (!isError(got, "#VALUE!") || !textOf(got).includes(name))
          )
            fail(e, s, units, `blank ${JSON.stringify(blank)} must be refused by name`, got);
          if (missing !== "refuse" && JSON.stringify(got) !== JSON.stringify(run(at, null)))
            fail(e, s, units, `blank ${JSON.stringify(blank)} must mean not given`, got);
          if (valued && missing === "refuse" && isError(got)) fail(e, s, units, "0 is a value here", got);
        }
        if (!varies && list === undefined && s.role === "param")
          expectError([fill("round 7")[0]!, fill("round 7")[0]!], /one value|one row/, "a range must be refused");
        for (const value of goodValues(kind, base[at])) {
          tried += 1;
          const got = run(at, [value]);
          if (!isError(got)) accepted += 1;
          else refused.push(`${e.name}(${s.name}): ${JSON.stringify(value)}: ${textOf(got)}`);
        }
      });

      const varying = places.flatMap((s, i) => (s.role === "param" && s.param.varies && args[i] !== null ? [i] : []));
      const single = e.result.form !== "row" || e.result.main !== undefined;
      if (varying.length >= 2 && single) {
        const [a, b] = varying as [number, number];
        const rows = (i: number, n: number): Range => Array.from({ length: n }, () => args[i]![0]!);
        const wrong = call(
          e,
          args.map((r, i) => (i === a ? rows(a, 2) : i === b ? rows(b, 3) : r)),
          new Memo(),
        );
        if (!isError(wrong, "#VALUE!") || !/sizes must match/.test(textOf(wrong)))
          failures.push(`${e.name} (${units}): ranges of 2 and 3 rows must be refused`);
        const grid = call(
          e,
          args.map((r, i) => (i === a ? rows(a, 2) : i === b ? [rows(b, 3).flat()] : r)),
          new Memo(),
        );
        if (grid.length !== 2 || grid[0]!.length !== 3 || JSON.stringify(grid[1]![2]) !== JSON.stringify(usual[0]![0]))
          failures.push(`${e.name} (${units}): a column against a row must give the grid`);
      }
      if (varying.length >= 1 && single) {
        const [a] = varying as [number];
        const cells = args[a]![0]!;
        const empty = cells.map(() => null);
        const gap = call(
          e,
          args.map((r, i) => (i === a ? [cells, empty, cells, empty, empty] : r)),
          new Memo(),
        );
        if (gap.length !== 3 || gap[1]![0] !== "" || JSON.stringify(gap[2]) !== JSON.stringify(usual[0]))
          failures.push(
            `${e.name} (${units}): blank rows at the end are dropped, an inner one gives empty text; got ${JSON.stringify(gap)}`,
          );
        const bad = call(
          e,
          args.map((r, i) => (i === a ? [cells, cells.map(() => new CellError("#NUM!")), cells] : r)),
          new Memo(),
        );
        if (
          bad.length !== 3 ||
          JSON.stringify(bad[0]) !== JSON.stringify(usual[0]) ||
          !(bad[1]![0] instanceof CellError) ||
          JSON.stringify(bad[2]) !== JSON.stringify(usual[0])
        )
          failures.push(`${e.name} (${units}): an error spoils its own row only`);
      }
    }
  }
  return { failures, refused, tried, accepted };
}

function goodValues(kind: Kind<unknown>, base: Range | null | undefined): readonly (readonly Cell[])[] {
  const words = kind.choices ?? good[kind.name];
  if (words !== undefined) return words.map((w) => [w]);
  // Small, so that a cost on top leaves an answer; a count becomes 1.
  const cells = base?.[0] ?? [0.01];
  if (!cells.every((c) => typeof c === "number")) return [];
  // A count is whole: its multiples are rounded.
  const isWhole = /^whole number/.test(kind.says("inch"));
  const times = (c: number, f: number): number => (isWhole ? Math.max(1, Math.round(c * f)) : c * f);
  return [0.5, 0.9, 1, 1.1, 1.5].map((f) => cells.map((c) => times(c as number, f)));
}
