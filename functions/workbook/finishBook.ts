import { strFromU8, strToU8, unzipSync } from "fflate";
import { packParts } from "./patchBook";

type Change = (xml: string) => string;

/** A series named "=B5" is named by that cell, addresses stay where they are, and a line that is not said to be straight is drawn curved. */
const finishedSeries = (series: string): string => {
  const sheet = /<c:f>([^<!]+)!/.exec(series)![1]!;
  return series
    .replace(/<c:tx><c:v>=([A-Z]+\d+)<\/c:v><\/c:tx>/, `<c:tx><c:strRef><c:f>${sheet}!$1</c:f></c:strRef></c:tx>`)
    .replace(/(?<=<c:f>)[^<]+/g, (area) => area.replace(/\$?([A-Z]+)\$?(\d+)(?=:|$)/g, "$$$1$$$2"))
    .replace(/<\/c:yVal>(?=<\/c:ser>)/, '</c:yVal><c:smooth val="0"/>');
};

const paleGrid =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';

/** Grades and pitches are text that may look like a number: Excel is told not to mark each of them as a mistake. */
const withoutMarks: Change = (xml) => {
  const area = /<dimension ref="([^"]+)"/.exec(xml)?.[1];
  return area === undefined
    ? xml
    : xml.replace(
        /(?=<drawing\b|<legacyDrawing\b|<picture\b|<tableParts\b|<extLst\b|<\/worksheet>)/,
        `<ignoredErrors><ignoredError sqref="${area}" numberStoredAsText="1"/></ignoredErrors>`,
      );
};

/**
 * What the writing library leaves to do, part by part.
 * - calcPr: it asks for a calculation on load, and without the add-in every result would turn into #NAME?. 191029 is the mark of
 *   the engine of today's Excel: a file of an older one is recalculated too (from memory).
 * - core.xml: it stamps the time of day.
 */
const changes: readonly (readonly [path: RegExp, change: Change])[] = [
  [/^xl\/workbook\.xml$/, (xml) => xml.replace(/<calcPr\b[^>]*\/>/, '<calcPr calcId="191029"/>')],
  [/^docProps\/core\.xml$/, (xml) => xml.replace(/<dcterms:modified\b[\s\S]*?<\/dcterms:modified>/, "")],
  [/^xl\/worksheets\/sheet\d+\.xml$/, withoutMarks],
  [
    /^xl\/charts\/chart\d+\.xml$/,
    (xml) => xml.replace(/<c:ser>[\s\S]*?<\/c:ser>/g, finishedSeries).replace(/<c:majorGridlines\/>/g, paleGrid),
  ],
];

/** The same workbook, ready for Excel, with nothing in it of when and where it was made. */
export function finishBook(bytes: Uint8Array): Uint8Array {
  const parts = Object.entries(unzipSync(bytes)).map(([path, part]) => {
    const change = changes.find(([pattern]) => pattern.test(path))?.[1];
    return [path, change === undefined ? part : strToU8(change(strFromU8(part)))] as const;
  });
  return packParts(Object.fromEntries(parts));
}
