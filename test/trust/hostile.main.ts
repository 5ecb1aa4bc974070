// npm run hostile: every hostile book of the tests through the built program, with what it took.
import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { folder, recalc } from "../functions/workbook/fixture";
import { hostileBooks } from "../functions/workbook/hostileBooks";
import { atMost, tell } from "./report";

const runs = hostileBooks.map(([what, make, says]) => {
  const own = folder();
  const [file, out] = [join(own, "book.xlsx"), join(own, "out.xlsx")];
  writeFileSync(file, make());
  const run = recalc(file, "--write", out, "--send", `${out}2`, "--only", "Quote");
  const lines = run.stderr.trimEnd().split("\n");
  const isRefused = run.status === 2 && lines.length === 1 && says.test(lines[0]!) && run.stdout === "";
  const isWritten = [out, `${out}2`, `${out}.part`].some((path) => existsSync(path));
  if (!isRefused || isWritten) console.log(`${what}: exit ${String(run.status)}, ${run.stderr.slice(0, 300)}`);
  return { isSound: isRefused && !isWritten, seconds: run.seconds, memory: run.memory };
});
const most = (key: "seconds" | "memory"): number => Math.max(...runs.map((run) => run[key]));

tell("hostile", [
  { path: "hostile books", measured: runs.length, unit: "books", bar: "all", met: true },
  atMost(
    "not refused in one line with exit 2, or something written",
    runs.filter((r) => !r.isSound).length,
    0,
    "books",
  ),
  atMost("most processor time", most("seconds"), 5, "s"),
  atMost("most memory", most("memory"), 512, "MB"),
]);
