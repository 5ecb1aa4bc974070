// npm run trust: docs/trust.md from the reports that the commands left in reports/.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { atMost, reportOf, type Report } from "./report";
import { trustPage, type Coverage, type Mutants, type Reasons } from "./trustPage";

const read = <T>(file: string): T | undefined =>
  existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as T) : undefined;

/** What the last build left in dist/, as a host that compresses sends it. */
function size(): Report | undefined {
  if (!existsSync("dist/functions.js")) return undefined;
  const kB = (file: string): number => gzipSync(readFileSync(`dist/${file}`), { level: 9 }).length / 1000;
  return reportOf("npm run build", [
    atMost("functions.js with all functions", kB("functions.js"), 150, "kB gzip"),
    ...["core.js", "pane.js"].map((file) => ({
      path: `${file}, which the pane's page loads`,
      measured: kB(file),
      unit: "kB gzip",
      bar: "none",
      met: true,
    })),
  ]);
}

const names = ["fuzz", "laws", "hostile", "bench", "page"] as const;
const reports = {
  ...Object.fromEntries(names.map((name) => [name, read<Report>(`reports/${name}.json`)])),
  size: size(),
};
const page = trustPage(
  reports,
  read<Mutants>("reports/mutate.json"),
  read<Reasons>("test/trust/survivors.json") ?? {},
  read<Coverage>("reports/coverage/coverage-summary.json"),
);
writeFileSync("docs/trust.md", page);
console.log("docs/trust.md is written");
