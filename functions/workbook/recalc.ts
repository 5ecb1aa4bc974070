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

const lineOf = ({ sheet, row, column, formula, was, is, sentence }: Recalculated): string =>
  [
    `${sheet}!${addressOf(row, column)}`,
    formula === "" ? "(filled by another cell)" : formula,
    `was ${shown(was)}`,
    `is ${shown(is)}${sentence === "" ? "" : `: ${sentence}`}`,
  ].join("\t");

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

async function main(words: readonly string[]): Promise<void> {
  // What ends without an answer is no success.
  process.exitCode = 2;
  try {
    process.exitCode = await run(orderOf(words));
  } catch (problem) {
    // A fault of ours shows itself whole; it is no difference between values, and must not end as one.
    if (!(problem instanceof BookFault)) console.error(problem);
    else console.error(`${words.find((w) => !w.startsWith("-")) ?? "recalc"} ${problem.message}`);
  }
}

void main(process.argv.slice(2));
