// npm run trust: docs/trust.md from the reports that the commands left in reports/.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import type { Report } from "./report";
import { trustPage, type Coverage, type Mutants, type Reasons } from "./trustPage";

const read = <T>(file: string): T | undefined =>
  existsSync(file) ? (JSON.parse(readFileSync(file, "utf8")) as T) : undefined;
const names = ["fuzz", "laws", "hostile", "bench", "page"] as const;
const reports = Object.fromEntries(names.map((name) => [name, read<Report>(`reports/${name}.json`)]));
const page = trustPage(
  reports,
  read<Mutants>("reports/mutate.json"),
  read<Reasons>("test/trust/survivors.json") ?? {},
  read<Coverage>("reports/coverage/coverage-summary.json"),
);
writeFileSync("docs/trust.md", page);
console.log("docs/trust.md is written");
