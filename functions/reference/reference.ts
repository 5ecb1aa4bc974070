import { argumentHeads, describe, resultHeads, shopHeads, shopIntro, shopRows, type FunctionDoc } from "./describe";
import type { Entry } from "../bind/entry";

const row = (cells: readonly string[]): string => `| ${cells.map((c) => c.replace(/\|/g, "\\|")).join(" | ")} |`;

/** A Markdown table. */
export const table = (heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] => [
  row(heads),
  row(heads.map(() => "---")),
  ...rows.map(row),
];

const example = ({ formula, cells }: FunctionDoc["examples"][number]): readonly string[] => {
  const single = cells.length === 1 && cells[0]!.length === 1;
  return single
    ? ["", `\`=${formula}\` gives ${cells[0]![0]!}`]
    : ["", `\`=${formula}\` gives`, "", ...cells.map((line) => `    ${line.join(" | ")}`)];
};

const page = (doc: FunctionDoc): readonly string[] => [
  `### ${doc.name}`,
  "",
  doc.help,
  "",
  `\`${doc.signature}\``,
  "",
  ...(doc.arguments.length === 0 ? [] : [...table(argumentHeads, doc.arguments), ""]),
  doc.gives,
  ...(doc.results.length === 0 ? [] : ["", ...table(resultHeads, doc.results)]),
  ...doc.examples.flatMap(example),
  "",
  `Source: ${doc.source}.`,
  "",
];

/** docs/functions.md. */
export function referencePage(catalogue: readonly Entry[]): string {
  const docs = catalogue.map((e) => describe(catalogue, e));
  const subjects = [...new Set(docs.map((d) => d.subject))];
  const lines = [
    "# Functions",
    "",
    "Made by `npm run generate` from functions/catalogue; every result on this page is computed. Type the formulas with your own list separator (`,` or `;`). Arguments in brackets may be left out. An argument that may be a range gives one result per row.",
    "",
    "A date in a cell is a plain number to a function, today about 46,000: Excel does not say that the cell shows it as a date. Where no size or pitch can be so large it is refused as a date. A quantity, minutes, hours, money or an area can be, and are taken as they stand: keep dates out of those columns.",
    "",
    ...subjects.flatMap((subject) => [`## ${subject}`, "", ...docs.filter((d) => d.subject === subject).flatMap(page)]),
    "## The shop block",
    "",
    shopIntro,
    "",
    ...table(shopHeads, shopRows()),
    "",
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}
