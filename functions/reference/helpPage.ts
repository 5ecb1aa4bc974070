import { generalCautions } from "../../src/data/cautions";
import { argumentHeads, describe, resultHeads, shopHeads, shopIntro, shopRows, type FunctionDoc } from "./describe";
import { symptomDocs, symptomHeads, symptomIntro, type SymptomDoc } from "./symptomSection";
import type { Entry } from "../bind/entry";

const text = (plain: string): string =>
  plain.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
const tag = (name: string, inner: string, attributes = ""): string => `<${name}${attributes}>${inner}</${name}>`;
const paragraph = (plain: string): string => tag("p", text(plain));

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  tag(
    "table",
    `${tag("thead", tag("tr", heads.map((h) => tag("th", text(h), ' scope="col"')).join("")))}${tag("tbody", rows.map(([first, ...rest]) => tag("tr", tag("th", text(first!), ' scope="row"') + rest.map((c) => tag("td", text(c))).join(""))).join("\n"))}`,
  );

const example = ({ formula, cells }: FunctionDoc["examples"][number]): string => {
  const lead = `${tag("code", text(`=${formula}`))} gives`;
  if (cells.length === 1 && cells[0]!.length === 1) return tag("p", `${lead} ${tag("strong", text(cells[0]![0]!))}`);
  const rows = tag(
    "table",
    tag("tbody", cells.map((row) => tag("tr", row.map((c) => tag("td", text(c))).join(""))).join("\n")),
    ' class="cells"',
  );
  // A row of many results is wider than a narrow page: it scrolls by itself, with the keyboard too.
  return `${tag("p", lead)}${cells[0]!.length > 5 ? tag("div", rows, ` class="wide" role="group" tabindex="0" aria-label="Results of ${formula.replace(/"/g, "&quot;").replace(/</g, "&lt;")}"`) : rows}`;
};

const section = (doc: FunctionDoc): string =>
  tag(
    "section",
    [
      tag("h2", `SAW.${doc.name}`),
      paragraph(doc.help),
      doc.asks.length === 0 ? "" : paragraph(`Answers: ${doc.asks.join("; ")}.`),
      tag("p", tag("code", text(doc.signature))),
      doc.arguments.length === 0 ? "" : table(argumentHeads, doc.arguments),
      paragraph(doc.gives),
      doc.results.length === 0 ? "" : table(resultHeads, doc.results),
      ...doc.examples.map(example),
      paragraph(`Source: ${doc.source}.`),
      doc.subject === "Whole add-in"
        ? ""
        : tag("p", `Estimates and reminders: ${tag("a", "the cautions", ' href="#cautions"')} come first.`),
    ].join("\n"),
    ` id="${doc.name}"`,
  );

const symptom = ({ name, say, alsoTyped, stop, lookFirst, causes }: SymptomDoc): string =>
  [
    tag("h3", text(say), ` id="symptom-${name.replace(/ /g, "-")}"`),
    paragraph(`Type: ${name}; also ${alsoTyped}.`),
    paragraph(`${stop} Look first: ${lookFirst}`),
    table(symptomHeads, causes),
  ].join("\n");

const wrong = (): string =>
  tag(
    "section",
    `${tag("h2", "What goes wrong")}${paragraph(symptomIntro)}${symptomDocs().map(symptom).join("\n")}`,
    ' id="symptoms"',
  );

const intro =
  "Type a formula with your own list separator, a comma or a semicolon. Every number on this page is computed by the functions themselves. Predicted rates are estimates, each with its low and high: for steels and stainless with bi-metal about 80 % of published cases or more fall inside; elsewhere low and high are judgement, and CUTDATA says so. Where a shop block is tuned they hold about 80 % of your own cuts.";

/** help.html: one page on the add-in's own origin, an anchor per function. Made from the same entries as docs/functions.md. */
export function helpPage(catalogue: readonly Entry[]): string {
  const docs = catalogue.map((e) => describe(catalogue, e));
  const list = tag(
    "nav",
    tag("ul", docs.map((d) => tag("li", `${tag("a", d.name, ` href="#${d.name}"`)} ${text(d.help)}`)).join("\n")),
    ' aria-label="Functions"',
  );
  const cautions = tag(
    "section",
    `${tag("h2", "Cautions")}${tag("ul", generalCautions.map((c) => tag("li", text(c))).join("\n"))}`,
    ' id="cautions"',
  );
  const shop = tag(
    "section",
    `${tag("h2", "The shop block")}${paragraph(shopIntro)}${table(shopHeads, shopRows())}`,
    ' id="shop-block"',
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8" />
<meta name="viewport" content="width=device-width, initial-scale=1" />
<title>Kerfsheet: help</title>
<link rel="stylesheet" href="pane.css" />
</head>
<body class="help">
<header><h1>Kerfsheet: the functions</h1>
${paragraph(intro)}
</header>
${list}
<main>
${docs.map(section).join("\n")}
${shop}
${wrong()}
${cautions}
</main>
</body>
</html>
`;
}
