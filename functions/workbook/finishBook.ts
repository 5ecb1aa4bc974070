import { strFromU8, strToU8, unzipSync } from "fflate";
import { XmlElement } from "@rgrove/parse-xml";
import { absoluteOf, areaOf } from "../formula/cellAddress";
import { rewritten } from "../formula/tokens";
import { packParts } from "./patchBook";
import { childrenOf, edited, elements, escape, innerEnd, localName, placedXml, type Edit } from "./xml";
import { listOf } from "./xmlList";

type Change = (xml: string, part: string) => string;

/** Cells of a formula as addresses that stay where they are. */
const fixed = (formula: string): string =>
  rewritten(formula, ({ kind, text }) => {
    const area = kind === "reference" ? areaOf(text) : undefined;
    return area === undefined ? text : absoluteOf(area);
  });

/** No line between the points of a series that is drawn as points. */
function pointEdits(series: XmlElement): Edit[] {
  const [sign] = elements(series, "symbol");
  if (sign === undefined || sign.attributes["val"] === "none") return [];
  return childrenOf(series, "spPr")
    .flatMap((look) => childrenOf(look, "ln"))
    .map((line) => ({ ...placeOf(line), text: "<a:ln><a:noFill/></a:ln>" }));
}

/** A series named "=B5" is named by that cell, addresses stay where they are, and a line that is not said to be straight is drawn curved. */
function seriesEdits(series: XmlElement): Edit[] {
  const formulas = elements(series, "f");
  const sheet = formulas[0]!.text.slice(0, formulas[0]!.text.lastIndexOf("!"));
  const named = childrenOf(series, "tx").flatMap((tx) => {
    const [v] = childrenOf(tx, "v");
    return v?.text.startsWith("=") === true
      ? [{ ...placeOf(v), text: `<c:strRef><c:f>${escape(`${sheet}!${fixed(v.text.slice(1))}`)}</c:f></c:strRef>` }]
      : [];
  });
  const [last] = series.children.slice(-1);
  const isLine = last instanceof XmlElement && localName(last.name) === "yVal";
  return [
    ...named,
    ...pointEdits(series),
    ...formulas.map((f) => ({ ...placeOf(f), text: `<c:f>${escape(fixed(f.text))}</c:f>` })),
    ...(isLine ? [{ start: last.end, end: last.end, text: '<c:smooth val="0"/>' }] : []),
  ];
}

const placeOf = ({ start, end }: XmlElement) => ({ start, end });

const paleGrid =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

const finishedChart: Change = (xml, part) => {
  const root = placedXml(xml, part);
  const lines = elements(root, "majorGridlines").filter((e) => e.isEmpty);
  return edited(xml, [
    ...elements(root, "ser").flatMap(seriesEdits),
    ...lines.map((line) => ({ ...placeOf(line), text: paleGrid })),
  ]);
};

/** Grades and pitches are text that may look like a number: Excel is told not to mark each of them as a mistake. */
const withoutMarks: Change = (xml, part) => {
  const { rest, at } = listOf(xml, "sheetData", part);
  const root = placedXml(rest, part);
  const area = childrenOf(root, "dimension")[0]?.attributes["ref"];
  const after = ["drawing", "legacyDrawing", "picture", "tableParts", "extLst"];
  const next = root.children.find((c) => c instanceof XmlElement && after.includes(localName(c.name)));
  const start = at(next?.start ?? innerEnd(rest, root));
  const text = `<ignoredErrors><ignoredError sqref="${area ?? ""}" numberStoredAsText="1"/></ignoredErrors>`;
  return area === undefined ? xml : edited(xml, [{ start, end: start, text }]);
};

/** Every element of a name as another text. */
const replaced =
  (name: string, text: string): Change =>
  (xml, part) =>
    edited(
      xml,
      elements(placedXml(xml, part), name).map((e) => ({ ...placeOf(e), text })),
    );

/**
 * What the writing library leaves to do, part by part.
 * - calcPr: it asks for a calculation on load, and without the add-in every result would turn into #NAME?. 191029 is the mark of
 *   the engine of today's Excel: a file of an older one is recalculated too (from memory).
 * - core.xml: it stamps the time of day.
 */
const changes: readonly (readonly [path: RegExp, change: Change])[] = [
  [/^xl\/workbook\.xml$/, replaced("calcPr", '<calcPr calcId="191029"/>')],
  [/^docProps\/core\.xml$/, replaced("modified", "")],
  [/^xl\/worksheets\/sheet\d+\.xml$/, withoutMarks],
  [/^xl\/charts\/chart\d+\.xml$/, finishedChart],
];

/** The same workbook, ready for Excel, with nothing in it of when and where it was made. */
export function finishBook(bytes: Uint8Array): Uint8Array {
  const parts = Object.entries(unzipSync(bytes)).map(([path, part]) => {
    const change = changes.find(([pattern]) => pattern.test(path))?.[1];
    return [path, change === undefined ? part : strToU8(change(strFromU8(part), path))] as const;
  });
  return packParts(Object.fromEntries(parts));
}
