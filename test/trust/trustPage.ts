import type { Report } from "./report";

/** What Stryker writes of a run, as far as it is read here. */
export interface Mutants {
  /** What was to be changed: files, or places of files. */
  readonly config?: { readonly mutate: readonly string[] };
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>>;
}

interface Mutant {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: {
    readonly start: { readonly line: number; readonly column: number };
    readonly end: { readonly line: number; readonly column: number };
  };
}

/** Why a planted fault may live: by file, the text and what stood in its place. */
export type Reasons = Readonly<Record<string, string>>;

const digits = (n: number): string => (Number.isInteger(n) ? n.toLocaleString("en") : String(Number(n.toPrecision(3))));
const cell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\s+/g, " ");

function section(title: string, says: string, report: Report | undefined): string {
  const head = `## ${title}\n\n${says}\n`;
  if (report === undefined) return `${head}\nNot run since the last change of this page: not met.\n`;
  const rows = report.rows.map(
    ({ path, measured, unit, bar, met }) =>
      `| ${cell(path)} | ${digits(measured)} ${unit} | ${cell(bar)} | ${bar === "none" ? "" : met ? "met" : "**not met**"} |`,
  );
  return [
    head,
    `\`${report.command}\`, ${report.date}, ${report.cpu}, Node ${report.node}, ${digits(report.minutes)} minutes.`,
    "",
    "| what | measured | bar | |",
    "|---|---|---|---|",
    ...rows,
    "",
  ].join("\n");
}

/** What the coverage run writes of the whole, as far as it is read here. */
export interface Coverage {
  readonly total: Readonly<Record<"lines" | "branches", { readonly pct: number; readonly total: number }>>;
}

function coverage(report: Coverage | undefined): string {
  const head = "## Lines of the core that its tests run\n\n`npm run coverage`. Bar: all lines, 98 % of the branches.\n";
  if (report === undefined) return `${head}\nNot run since the last change of this page: not met.\n`;
  const { lines, branches } = report.total;
  const says = (pct: number, bar: number): string => (pct >= bar ? "met" : "**not met**");
  return [
    head,
    "| what | measured | bar | |",
    "|---|---|---|---|",
    `| lines | ${String(lines.pct)} % of ${digits(lines.total)} | 100 % | ${says(lines.pct, 100)} |`,
    `| branches | ${String(branches.pct)} % of ${digits(branches.total)} | 98 % | ${says(branches.pct, 98)} |`,
    "",
  ].join("\n");
}

const dead = new Set(["Killed", "Timeout"]);
const counted = new Set(["Killed", "Timeout", "Survived", "NoCoverage"]);

/** The text of a planted fault's place. */
function original(source: string, { start, end }: Mutant["location"]): string {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, i) => line.slice(i === 0 ? start.column - 1 : 0, i === last ? end.column - 1 : undefined))
    .join(" ");
}

const roomOf = (file: string): string => file.slice(0, file.lastIndexOf("/"));

/** What was noticed, and how far a random sample may be from the whole (two errors of the share). */
function score(drawn: number, all: number, noticed: number): string {
  const share = noticed / Math.max(1, all);
  const ran = `${digits(all)} faults, ${digits(noticed)} noticed: ${digits(100 * share)} %`;
  if (drawn === 0) return `All of these rooms: ${ran}. The bar is ${share >= 0.92 ? "met" : "**not met**"}.`;
  const off = 2 * Math.sqrt((share * (1 - share)) / drawn);
  const says =
    share - off >= 0.92
      ? "the bar is met"
      : share + off < 0.92
        ? "the bar is **not met**"
        : "whether the bar is met, the sample does **not** show";
  return `A random sample of ${digits(drawn)} of the smallest places (\`SAMPLE=${drawn} npm run mutate\`): ${ran}, so that of all such places ${digits(100 * (share - off))} to ${digits(Math.min(100, 100 * (share + off)))} % are; ${says}.`;
}

function mutation(report: Mutants | undefined, reasons: Reasons): string {
  const head =
    "## Faults planted in the code\n\n`npm run mutate` (Stryker) changes the code of src and functions/bind one place at a time; a test has to fail each time. Bar: 92 % of all places, each survivor with its reason. Only tests of the core and of bind are asked, and of those not the long random ones; a test that computes while its file is loaded is not asked where others run the place too, so the share is a low one.\n";
  if (report === undefined) return `${head}\nNot run since the last change of this page: not met.\n`;
  const files = Object.entries(report.files).map(([file, { source, mutants }]) => {
    const all = mutants.filter((m) => counted.has(m.status));
    return { file, source, all: all.length, alive: all.filter((m) => !dead.has(m.status)) };
  });
  const sum = (list: typeof files, of: (f: (typeof files)[number]) => number): number =>
    list.reduce((total, f) => total + of(f), 0);
  const all = sum(files, (f) => f.all);
  const rooms = [...new Set(files.map((f) => roomOf(f.file)))].map((room) => {
    const own = files.filter((f) => roomOf(f.file) === room);
    return `| ${room} | ${digits(sum(own, (f) => f.all))} | ${digits(sum(own, (f) => f.all - f.alive.length))} |`;
  });
  const survivors = files.flatMap(({ file, source, alive: left }) =>
    left.map((m) => {
      const [from, to] = [cell(original(source, m.location)).slice(0, 90), cell(m.replacement ?? "").slice(0, 60)];
      const reason = reasons[`${file}: ${from} -> ${to}`] ?? "not looked at";
      return `| ${file}:${String(m.location.start.line)} | \`${from}\` | \`${to}\` | ${reason} |`;
    }),
  );
  return [
    head,
    score(
      (report.config?.mutate ?? []).filter((m) => /:\d+:\d+-\d+:\d+$/.test(m)).length,
      all,
      all - sum(files, (f) => f.alive.length),
    ),
    "",
    "| room | faults | noticed |",
    "|---|---|---|",
    ...rooms,
    "",
    "| survivor | code | in its place | why |",
    "|---|---|---|---|",
    ...survivors,
    "",
  ].join("\n");
}

/** docs/trust.md from the reports of the commands; what was not run says so. */
export const trustPage = (
  reports: Readonly<Record<string, Report | undefined>>,
  mutants: Mutants | undefined,
  reasons: Reasons,
  covered: Coverage | undefined,
): string =>
  [
    "# Trust: every promise has a command and a figure",
    "",
    "Made by `npm run trust` from the reports of the commands below; do not edit. A bar that is not met is printed as not met. Times depend on the machine and on what else it does, so they stand beside it.",
    "",
    section(
      "Hostile calls",
      "Random calls of every function with what cells may hold: sound values, blanks, errors, booleans, dates, texts of all kinds, numbers at the ends of the range.",
      reports["fuzz"],
    ),
    section(
      "Laws",
      "What must hold between answers, over random cases: each law is one function of test/trust/laws.ts.",
      reports["laws"],
    ),
    section(
      "Hostile workbooks",
      "Every book of the tests that is damaged, encrypted, oversized or made to hang, through the built program.",
      reports["hostile"],
    ),
    section("Speed", "Calls as the host makes them, in one process; ratios say more than times.", reports["bench"]),
    section("The page", "The try-it page in Chromium.", reports["page"]),
    section("Size", "What Excel loads once and keeps; why it is larger: decisions/0002.", reports["size"]),
    coverage(covered),
    mutation(mutants, reasons),
    "## Licences and bill of materials\n\n`npm run licences` lists every installed package's licence and fails on one that is neither permissive nor named with its use; `npm run sbom` prints a CycloneDX bill of materials. What Excel loads holds one package besides our own code: zod (MIT).\n",
  ].join("\n");
