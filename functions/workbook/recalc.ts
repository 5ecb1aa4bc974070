import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, resolve } from "node:path";
import { parseArgs } from "node:util";
import type { CellValue } from "./book";
import { addressOf } from "../formula/cellAddress";
import { mendedTables } from "./calculatedColumns";
import { BookFault } from "./fault";
import { largest, openParts } from "./openParts";
import { changesOf, packParts, patchBook } from "./patchBook";
import { readBook } from "./readBook";
import type { Recalculated } from "./recalculate";

/**
 * npm run recalc -- book.xlsx [--write out.xlsx] [--send out.xlsx --only "Sheet" …]
 * Prints each cell whose value is not what its file keeps. Ends with 0: none; 1: some; 2: it could not be done.
 */

interface Order {
  readonly file: string;
  readonly write: string | undefined;
  readonly send: string | undefined;
  readonly only: readonly string[];
}

const usage = 'npm run recalc -- book.xlsx [--write out.xlsx] [--send out.xlsx --only "Sheet" …]';

const options = {
  write: { type: "string" },
  send: { type: "string" },
  only: { type: "string", multiple: true },
} as const;

function orderOf(words: readonly string[]): Order {
  try {
    const {
      values: { write, send, only = [] },
      positionals: [file, ...more],
    } = parseArgs({ args: [...words], options, allowPositionals: true });
    if (file === undefined || more.length > 0 || (send === undefined) !== (only.length === 0)) throw new BookFault("");
    if ([write, send].some((out) => out !== undefined && resolve(out) === resolve(file)))
      throw new BookFault("would be written over by its own result: name another file");
    return { file, write, send, only };
  } catch (problem) {
    throw problem instanceof BookFault && problem.message !== "" ? problem : new BookFault(`usage: ${usage}`);
  }
}

function bytesOf(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (problem) {
    const { code } = problem as NodeJS.ErrnoException;
    throw new BookFault(
      code === "ENOENT"
        ? "is not there"
        : code === "EISDIR"
          ? "is a folder"
          : code === "ERR_FS_FILE_TOO_LARGE"
            ? `is larger than ${largest.file / 1e6} MB`
            : `cannot be read (${code ?? "unknown"})`,
    );
  }
}

/** Whole or not at all: a run that ends halfway leaves no half of a workbook. */
function put(file: string, bytes: Uint8Array): void {
  const half = `${file}.part`;
  try {
    writeFileSync(half, bytes);
    renameSync(half, file);
  } catch (problem) {
    rmSync(half, { force: true });
    throw new BookFault(`could not be written to ${file} (${(problem as NodeJS.ErrnoException).code ?? "unknown"})`);
  }
}

const shown = (value: CellValue): string =>
  value === null
    ? "nothing"
    : typeof value === "string"
      ? value.startsWith("#")
        ? value
        : JSON.stringify(value)
      : String(value);

/** What a file holds cannot make a line of its own, nor colour or move what is printed. */
const inLine = (text: string): string =>
  text.replace(
    /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

const lineOf = ({ sheet, row, column, formula, was, is, sentence }: Recalculated): string =>
  [
    `${sheet}!${addressOf(row, column)}`,
    formula === "" ? "(filled by another cell)" : formula,
    `was ${shown(was)}`,
    `is ${shown(is)}${sentence === "" ? "" : `: ${sentence}`}`,
  ]
    .map(inLine)
    .join("\t");

/** A line each second, once a run takes longer than one. */
function progress(): (done: number, of: number) => void {
  let next = performance.now() + 1000;
  return (done, of) => {
    if (performance.now() < next || of === 0) return;
    next = performance.now() + 1000;
    console.error(`${done.toLocaleString("en")} of ${of.toLocaleString("en")} formulas`);
  };
}

async function run(order: Order): Promise<number> {
  const started = performance.now();
  const parts = openParts(bytesOf(order.file));
  const book = readBook(parts);
  // Loaded late: what cannot be opened is refused before the engine takes its memory.
  const { isSame, recalculate } = await import("./recalculate");
  const results = await recalculate(book, progress());
  const differ = results.filter((r) => !isSame(r.was, r.is));
  const sent =
    order.send === undefined
      ? undefined
      : await (await import("./sendBook")).sendBook({ parts, book, results, only: order.only });
  for (const result of differ) console.log(lineOf(result));
  console.log(
    `${basename(order.file)}: ${results.length.toLocaleString("en")} cells calculated, ${differ.length.toLocaleString("en")} differ (${((performance.now() - started) / 1000).toFixed(1)} s)`,
  );
  if (order.write !== undefined) {
    const loose = results.filter((r) => r.mend !== undefined);
    const written = patchBook(parts, changesOf(book, [...new Set([...differ, ...loose])]));
    put(order.write, packParts({ ...written, ...mendedTables(parts) }));
    const kept = loose.length === 0 ? "" : `, ${loose.length.toLocaleString("en")} formulas as Excel keeps them`;
    console.log(`wrote ${order.write}: ${differ.length.toLocaleString("en")} values${kept}`);
  }
  if (order.send !== undefined && sent !== undefined) {
    put(order.send, sent);
    console.log(`wrote ${order.send}: ${order.only.join(", ")}, values only`);
  }
  return differ.length > 0 ? 1 : 0;
}

/** One line for whatever ends a run. What is not foreseen is no difference between values, and must not end as one. */
function end(words: readonly string[], problem: unknown): void {
  const file = words.find((w) => !w.startsWith("-")) ?? "recalc";
  const said = problem instanceof BookFault ? problem.message : `cannot be recalculated: ${String(problem)}`;
  console.error(inLine(`${file} ${said}`.split("\n")[0]!));
}

async function main(words: readonly string[]): Promise<void> {
  // What ends without an answer is no success.
  process.exitCode = 2;
  // The engine works in turns of its own: formulas that lie too deep in each other end it there.
  process.on("uncaughtException", (problem) => {
    end(words, problem);
    process.exit(2);
  });
  try {
    process.exitCode = await run(orderOf(words));
  } catch (problem) {
    end(words, problem);
  }
}

void main(process.argv.slice(2));
