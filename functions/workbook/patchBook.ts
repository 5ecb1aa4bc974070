import { zipSync } from "fflate";
import type { Book } from "./book";
import { partText, relationsOf, relationsPart, workbookPart, type Parts } from "./parts";
import { withDynamicArrays } from "./dynamicArrays";
import { isDynamic, patchSheet, type CellChange } from "./patchSheet";
import type { Recalculated } from "./recalculate";
import { edited, elements, placedXml } from "./xml";

const encoder = new TextEncoder();

/** Packs parts so that the same parts give the same bytes, at any time and anywhere. */
export const packParts = (parts: Parts): Uint8Array => zipSync({ ...parts }, { mtime: "1980-01-01T00:00:00" });

/** Excel's note of the order of its formulas: a formula that has come or gone makes it wrong, and Excel writes a new one. */
function withoutCalcChain(parts: Parts): Parts {
  const main = workbookPart(parts);
  const chain = relationsOf(parts, main).find((r) => r.type.endsWith("/calcChain"));
  if (chain === undefined) return parts;
  const drop = (path: string, name: string, attribute: string, value: string): Parts => {
    const xml = partText(parts, path);
    const gone = elements(placedXml(xml, path), name).filter((e) => e.attributes[attribute] === value);
    return {
      [path]: encoder.encode(
        edited(
          xml,
          gone.map(({ start, end }) => ({ start, end, text: "" })),
        ),
      ),
    };
  };
  const left = Object.fromEntries(Object.entries(parts).filter(([path]) => path !== chain.target));
  return {
    ...left,
    ...drop("[Content_Types].xml", "Override", "PartName", `/${chain.target}`),
    ...drop(relationsPart(main), "Relationship", "Id", chain.id),
  };
}

/** Results as changes of the sheets' parts. */
export function changesOf(
  { sheets }: Book,
  results: readonly Recalculated[],
): ReadonlyMap<string, readonly CellChange[]> {
  const bySheet = new Map<string, CellChange[]>();
  for (const { sheet, row, column, is, area, formula, mend } of results) {
    const changes = bySheet.get(sheet) ?? [];
    const text = mend === undefined ? {} : { formula: mend };
    changes.push({ row, column, value: is, area, filled: formula === "", ...text });
    bySheet.set(sheet, changes);
  }
  return new Map(sheets.map(({ name, part }) => [part, bySheet.get(name) ?? []]));
}

/**
 * Writes cells into a workbook in place: values, formulas where the change has one, and nothing else.
 * @param changes by the path of the sheet's part
 */
export function patchBook(parts: Parts, changes: ReadonlyMap<string, readonly CellChange[]>): Parts {
  const wanted = [...changes.values()].some((cells) => cells.some(isDynamic));
  const { parts: ready, cm } = wanted ? withDynamicArrays(parts) : { parts, cm: 0 };
  const sheets = [...changes]
    .filter(([, cells]) => cells.length > 0)
    .map(([part, cells]) => [part, encoder.encode(patchSheet(partText(parts, part), cells, part, cm))] as const);
  const patched = { ...ready, ...Object.fromEntries(sheets) };
  return [...changes.values()].some((cells) => cells.some((c) => c.formula !== undefined))
    ? withoutCalcChain(patched)
    : patched;
}
