import { call as ours } from "../../functions/bind/call";
import type { Entry } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { repeats, slots, type Slot } from "../../functions/bind/slots";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { chance, examples, type Chance } from "./sheet";
import { anySize, blades, grades } from "./words";

/**
 * Random calls of every function with what cells may hold, sound and hostile. A fault is said with the call that shows
 * it; the same seed gives the same calls.
 */
export interface FuzzReport {
  readonly calls: number;
  /** Calls with an answer that is no error. */
  readonly answered: number;
  readonly faults: readonly string[];
  /** Slowest call of one cell, ms, and which. */
  readonly slowest: number;
  readonly slowestCall: string;
  readonly heapMB: number;
}

type Call = typeof ours;

const hostile: readonly Cell[] = [
  null,
  "",
  "   ",
  "\u00a0",
  0,
  -0,
  -1,
  0.1,
  1e-300,
  5e-324,
  1e15,
  1e308,
  -1e308,
  45_720,
  46_115.5,
  true,
  false,
  "12",
  " 7 ",
  "1e5",
  "TRUE",
  "abc",
  "2/3",
  "#N/A",
  "=1+1",
  "'7",
  "round",
  "round 0",
  "round -4",
  "round 7 round 8",
  "round 1e9 in",
  "constructor",
  "__proto__",
  "toString",
  "NaN",
  "Infinity",
  "7′ 3″",
  "½",
  "７",
  "круг 20",
  "‮round 7",
  "😀",
  "\u0000",
  "a\nb",
  "x".repeat(300),
  "9".repeat(400),
  "(".repeat(200),
  "round 2 bundle 9x9".repeat(20),
  new CellError("#N/A"),
  new CellError("#DIV/0!"),
  new CellError("#REF!"),
];

const sound: readonly ((chance: Chance) => Cell)[] = [
  anySize,
  anySize,
  (c) => c.of(grades),
  (c) => c.of(blades),
  (c) => c.of(["2/3", "3/4", "4/6", "10/14", 4]),
  (c) => c.of(["all", "card", "inch", "metric", "yes", "no"]),
  (c) => c.whole(1, 200),
  (c) => c.number(0, 20),
  (c) => 10 ** c.number(-6, 9),
  (c) => `${String(c.whole(1, 40))} ft`,
];

const anyCell = (chance: Chance): Cell => (chance.is(0.5) ? chance.of(hostile) : chance.of(sound)(chance));

/** A cell like the one given: a number of its size, a size or grade in place of a text. */
function like(cell: Cell, chance: Chance): Cell {
  if (typeof cell === "number")
    return Number.isInteger(cell)
      ? Math.max(1, Math.round(cell * chance.number(0.5, 2)))
      : cell * chance.number(0.5, 2);
  return cell;
}

function rangeLike(range: Range | null, chance: Chance): Range | null {
  if (chance.is(0.05)) return null;
  if (chance.is(0.1)) {
    const [rows, columns] = [chance.whole(1, 4), chance.whole(1, 3)];
    return Array.from({ length: rows }, () => Array.from({ length: columns }, () => anyCell(chance)));
  }
  if (range === null) return chance.is(0.2) ? [[anyCell(chance)]] : null;
  return range.map((row) =>
    row.map((cell) => (chance.is(0.06) ? anyCell(chance) : chance.is(0.5) ? like(cell, chance) : cell)),
  );
}

const shown = (entry: Entry, args: readonly (Range | null)[]): string =>
  `${entry.name}(${JSON.stringify(args).slice(0, 1000)})`;

const freeze = (args: readonly (Range | null)[]): readonly (Range | null)[] => {
  for (const range of args) {
    range?.forEach((row) => Object.freeze(row));
    Object.freeze(range);
  }
  return Object.freeze(args);
};

const codes = new Set(["#VALUE!", "#N/A", "#NUM!", "#DIV/0!", "#NULL!", "#REF!", "#NAME?"]);
const leak = /\b(?:NaN|Infinity|undefined|null)\b|\[object|function ?\(|\{[a-z]+\}/;

/** What is wrong with one cell of an answer; a word that was typed may be said again. */
function cellFault(cell: Cell, typed: string): string | undefined {
  if (typeof cell === "number") return Number.isFinite(cell) ? undefined : `the number ${String(cell)}`;
  if (cell instanceof CellError) {
    if (!codes.has(cell.code)) return `the code ${cell.code}`;
    const leaked = leak.exec(cell.text)?.[0];
    return leaked === undefined || typed.includes(leaked) ? undefined : `the sentence ${cell.text}`;
  }
  if (typeof cell === "boolean" || cell === undefined) return `the value ${String(cell)}`;
  return undefined;
}

const shapeFault = (cells: Cell[][]): string | undefined =>
  cells.length === 0 || cells.some((row) => row.length === 0 || row.length !== cells[0]!.length)
    ? "rows of different lengths"
    : undefined;

const isRefused = (cells: Cell[][]): boolean =>
  // A row that is blank in every range stays blank.
  cells.every((row) => row.every((c) => c === "") || row.some((c) => c instanceof CellError)) ||
  cells.some((row) => /refused|left out/.test(String(row[0]) + String(row.at(-1))));

/** Blank, TRUE and a number typed as text are never taken as a number. */
function readAsNumber(
  entry: Entry,
  places: readonly Slot[],
  args: readonly (Range | null)[],
  chance: Chance,
  call: Call,
): string | undefined {
  const numeric = places.flatMap((s, i) =>
    s.role === "param" && s.param.kind.name === "number" && s.param.list === undefined ? [{ s, i }] : [],
  );
  if (numeric.length === 0) return undefined;
  const { s, i } = chance.of(numeric);
  const cell = chance.of<Cell>([true, false, "12", "7", " 3 "]);
  const got = call(
    entry,
    args.map((r, at) => (at === i ? [[cell]] : r)),
    new Memo(),
  );
  if (!isRefused(got)) return `${JSON.stringify(cell)} is taken as ${s.name}`;
  return s.role === "param" &&
    s.param.missing === "refuse" &&
    !isRefused(
      call(
        entry,
        args.map((r, at) => (at === i ? [[""]] : r)),
        new Memo(),
      ),
    )
    ? `a blank is taken as ${s.name}`
    : undefined;
}

const textOf = (cells: Cell[][]): string => JSON.stringify(cells);

/** The most milliseconds a call of one cell may take; a slow one is measured again by the processor, since other work disturbs. */
const patient = 50;

/** `call` is the one of the product, or one with a fault planted that must be found. */
export function fuzz(calls: number, seed: number, call: Call = ours): FuzzReport {
  const pick = chance(seed);
  const faults: string[] = [];
  const kept = new Memo();
  let [answered, slowest, slowestCall] = [0, 0, ""];
  for (let n = 0; n < calls; n += 1) {
    const { entry, args: base } = pick.of(examples);
    const places = slots(entry);
    const count = places.length > 0 && repeats(places.at(-1)!) ? Math.max(base.length, places.length) : places.length;
    const args = freeze(Array.from({ length: count }, (_, i) => rangeLike(base[i] ?? null, pick)));
    const fault = (what: string | undefined): void => {
      if (what !== undefined && faults.length < 100) faults.push(`${shown(entry, args)}: ${what}`);
    };
    try {
      const timed = (): number => {
        const start = process.cpuUsage();
        call(entry, args, kept);
        const { user, system } = process.cpuUsage(start);
        return (user + system) / 1000;
      };
      const start = performance.now();
      const cells = call(entry, args, kept);
      let took = performance.now() - start;
      if (took > patient) took = Math.min(took, timed(), timed());
      const perCell = took / Math.max(1, cells.length);
      if (perCell > slowest) [slowest, slowestCall] = [perCell, shown(entry, args)];
      fault(shapeFault(cells));
      const typed = JSON.stringify(args);
      for (const row of cells) for (const cell of row) fault(cellFault(cell, typed));
      if (n % 4 === 0)
        fault(textOf(call(entry, args, new Memo())) === textOf(cells) ? undefined : "another answer on replay");
      if (!isRefused(cells)) {
        answered += 1;
        if (n % 4 === 1) fault(readAsNumber(entry, places, args, pick, call));
      }
    } catch (thrown) {
      fault(`thrown: ${thrown instanceof Error ? (thrown.stack ?? "").slice(0, 400) : String(thrown)}`);
    }
  }
  return { calls, answered, faults, slowest, slowestCall, heapMB: process.memoryUsage().heapUsed / 1e6 };
}
