import type { CellValue } from "./book";
import { addressOf, areaOf } from "../formula/cellAddress";
import { sheetNamed, tokensOf } from "../formula/tokens";
import { partText, type Parts } from "./parts";
import { childrenOf, edited, elements, escape, placedXml } from "./xml";

type ValueAt = (sheet: string, address: string) => CellValue;

/** The cells of "Sheet!$A$1:$B$2", row by row. */
function valuesOf(reference: string, valueAt: ValueAt): CellValue[] {
  const [sheet, cells] = tokensOf(reference);
  const { top, left, bottom, right } = areaOf(cells!.text)!;
  const width = right - left + 1;
  return Array.from({ length: (bottom - top + 1) * width }, (_, i) =>
    valueAt(sheetNamed(sheet!), addressOf(top + Math.floor(i / width), left + (i % width))),
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

function filled(xml: string, part: string, valueAt: ValueAt): string {
  const root = placedXml(xml, part);
  const edits = (["num", "str"] as const).flatMap((name) =>
    elements(root, `${name}Ref`).map((reference) => {
      const f = childrenOf(reference, "f")[0]!;
      const text = `<c:${name}Ref>${xml.slice(f.start, f.end)}${cache(name, valuesOf(f.text, valueAt))}</c:${name}Ref>`;
      return { start: reference.start, end: reference.end, text };
    }),
  );
  return edited(xml, edits);
}

/** A workbook whose charts keep the values that they show, so that they are drawn before anything is calculated. */
export function withChartCaches(parts: Parts, valueAt: ValueAt): Parts {
  const encoder = new TextEncoder();
  const charts = Object.keys(parts).filter((path) => /^xl\/charts\/chart\d+\.xml$/.test(path));
  return {
    ...parts,
    ...Object.fromEntries(charts.map((path) => [path, encoder.encode(filled(partText(parts, path), path, valueAt))])),
  };
}
