import { mkdirSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { dirname } from "node:path";

/** One bar: what was measured beside it. */
export interface Row {
  readonly path: string;
  readonly measured: number;
  readonly unit: string;
  /** In words, "0" or "≤ 50 ms". */
  readonly bar: string;
  readonly met: boolean;
}

export interface Report {
  readonly command: string;
  readonly date: string;
  readonly node: string;
  readonly cpu: string;
  readonly minutes: number;
  readonly rows: readonly Row[];
}

/** A bar of at most so much; null where there is none. */
export const atMost = (path: string, measured: number, bar: number | null, unit = ""): Row => ({
  path,
  measured,
  unit,
  bar: bar === null ? "none" : bar === 0 ? "0" : `≤ ${String(bar)} ${unit}`.trim(),
  met: bar === null || measured <= bar,
});

/** The value after a flag of the command line, or what holds without it. */
export function flag(name: string, otherwise: number): number {
  const at = process.argv.indexOf(`--${name}`);
  const value = at < 0 ? otherwise : Number(process.argv[at + 1]);
  if (Number.isFinite(value)) return value;
  console.error(`--${name} wants a number`);
  process.exit(2);
}

const commandOf = (name: string): string =>
  [`npm run ${name}`, ...(process.argv.length > 2 ? ["--", ...process.argv.slice(2)] : [])].join(" ");

/** The rows with when and where they were measured. */
export const reportOf = (command: string, rows: readonly Row[]): Report => ({
  command,
  date: new Date().toISOString().slice(0, 10),
  node: process.version,
  cpu: `${String(cpus().length)} × ${cpus()[0]?.model.trim() ?? "unknown"}`,
  minutes: performance.now() / 60_000,
  rows,
});

/** Prints the rows beside their bars and keeps them in reports/, from which `npm run trust` makes docs/trust.md. */
export function tell(name: string, rows: readonly Row[], command = commandOf(name)): void {
  for (const { path, measured, unit, bar, met } of rows)
    console.log(
      `${met ? "met    " : "NOT MET"}  ${path}: ${String(Number(measured.toPrecision(4)))} ${unit} (bar ${bar})`,
    );
  const file = `reports/${name}.json`;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify(reportOf(command, rows), null, 2)}\n`);
  if (rows.some((r) => !r.met)) process.exitCode = 1;
}
