import type { CellValue } from "./book";
import { addressOf, areaOf } from "../formula/cellAddress";
import { partText, type Parts } from "./parts";
import { elements, escape, firstElement, unescape } from "./xml";

type ValueAt = (sheet: string, address: string) => CellValue;

/** The cells of "Sheet!$A$1:$B$2", row by row. */
function valuesOf(reference: string, valueAt: ValueAt): CellValue[] {
  const [sheet = "", area = ""] = unescape(reference).split("!");
  const { top, left, bottom, right } = areaOf(area)!;
  const width = right - left + 1;
  return Array.from({ length: (bottom - top + 1) * width }, (_, i) =>
    valueAt(sheet.replace(/^'|'$/g, ""), addressOf(top + Math.floor(i / width), left + (i % width))),
  );
}

function cache(name: "num" | "str", values: readonly CellValue[]): string {
  const points = values.map((value, i) =>
    value === null || value === "" || (name === "num" && typeof value !== "number")
      ? ""
      : `<c:pt idx="${i}"><c:v>${escape(String(value))}</c:v></c:pt>`,
  );
  return `<c:${name}Cache>${name === "num" ? "<c:formatCode>General</c:formatCode>" : ""}<c:ptCount val="${values.length}"/>${points.join("")}</c:${name}Cache>`;
}

const filled = (xml: string, name: "num" | "str", valueAt: ValueAt): string =>
  [...elements(xml, `${name}Ref`)].reduce((text, { whole, inner }) => {
    const f = firstElement(inner, "f")!;
    return text.replace(
      whole,
      () => `<c:${name}Ref>${f.whole}${cache(name, valuesOf(f.inner, valueAt))}</c:${name}Ref>`,
    );
  }, xml);

/** A workbook whose charts keep the values that they show, so that they are drawn before anything is calculated. */
export function withChartCaches(parts: Parts, valueAt: ValueAt): Parts {
  const encoder = new TextEncoder();
  const charts = Object.keys(parts).filter((path) => /^xl\/charts\/chart\d+\.xml$/.test(path));
  return {
    ...parts,
    ...Object.fromEntries(
      charts.map((path) => [
        path,
        encoder.encode(filled(filled(partText(parts, path), "num", valueAt), "str", valueAt)),
      ]),
    ),
  };
}
