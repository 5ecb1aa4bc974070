import type { Book, BookCell, BookFormula, BookName, BookSheet, BookTable, CellValue } from "./book";
import { areaOf, columnOf, type Area } from "../formula/cellAddress";
import { BookFault } from "./fault";
import { fromFile } from "./formulaText";
import { partText, relationsOf, workbookPart, type Parts, type Relation } from "./parts";
import { attributes, elements, firstElement, unescape } from "./xml";

/** Judgement: many times what the engine calculates (recalculate's limit), so that only a sheet of another purpose is refused. */
const mostCells = 1_000_000;

/** 8,192 characters as typed, a little more as written in XML. */
const longestFormula = 20_000;

/** The text of a string item: of all its runs, without the reading aids of East Asian text. */
function textOf(xml: string): string {
  const aids = [...elements(xml, "rPh")];
  const runs = [...elements(xml, "t")].filter(
    (t) => !aids.some((aid) => t.at > aid.at && t.at < aid.at + aid.whole.length),
  );
  return runs
    .map((t) => unescape(t.inner))
    .join("")
    .replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

function valueOf(type: string, raw: string | undefined, inner: string, strings: readonly string[]): CellValue {
  if (type === "inlineStr") return textOf(inner);
  if (raw === undefined) return null;
  if (type === "s") return strings[Number(raw)] ?? "";
  if (type === "str" || type === "e") return unescape(raw);
  if (type === "b") return raw.trim() === "1" || raw.trim() === "true";
  if (type === "d")
    throw new BookFault("keeps dates as text of the strict kind; save it as an ordinary .xlsx workbook first");
  return raw.trim() === "" ? null : Number(raw);
}

function formulaOf(inner: string): BookFormula | undefined {
  const f = firstElement(inner, "f");
  if (f === undefined) return undefined;
  const { t = "normal", si, ref } = attributes(f.tag);
  const is = t === "shared" || t === "array" || t === "dataTable" ? t : "plain";
  // Excel's own limit, and no text that is longer is worth the engine's time.
  if (f.inner.length > longestFormula)
    throw new BookFault(`holds a formula of ${f.inner.length.toLocaleString("en")} characters; Excel takes 8,192`);
  return {
    text: fromFile(unescape(f.inner)),
    is,
    shared: is === "shared" ? Number(si) : undefined,
    area: is === "array" && ref !== undefined ? areaOf(ref) : undefined,
  };
}

/** Counted before any is read, since that takes longer. */
function refuseCrowd(xml: string): void {
  const start = /<(?:[\w.-]+:)?c[\s>/]/g;
  for (let count = 0; start.test(xml); count += 1)
    if (count === mostCells)
      throw new BookFault(
        `has a sheet of more than ${mostCells.toLocaleString("en")} cells; that is more than is read`,
      );
}

const cellsIn = ({ top, left, bottom, right }: Area): number => (bottom - top + 1) * (right - left + 1);

/** The last row and column of a sheet are Excel's own. */
function refuseOutside(row: number, column: number): void {
  if (!(row >= 0 && row < 1_048_576 && column >= 0 && column < 16_384))
    throw new BookFault("is damaged: it has a cell outside of any sheet");
}

/** The cells of a sheet's part. A writer may leave out addresses: then each follows the one before. */
function cellsOf(xml: string, strings: readonly string[]): BookCell[] {
  refuseCrowd(xml);
  const cells: BookCell[] = [];
  let [row, filled] = [-1, 0];
  for (const line of elements(xml, "row")) {
    row = Number(attributes(line.tag)["r"] ?? row + 2) - 1;
    let column = -1;
    for (const { tag, inner } of elements(line.inner, "c")) {
      const { r, t = "n" } = attributes(tag);
      column = r === undefined ? column + 1 : columnOf(r.replace(/[^A-Za-z]/g, ""));
      const formula = formulaOf(inner);
      const value = valueOf(t, firstElement(inner, "v")?.inner, inner, strings);
      if (value === null && formula === undefined) continue;
      refuseOutside(row, column);
      filled += formula?.area === undefined ? 0 : cellsIn(formula.area);
      if (filled > mostCells)
        throw new BookFault(
          `has formulas that fill more than ${mostCells.toLocaleString("en")} cells; that is more than is read`,
        );
      cells.push({ row, column, value, formula });
    }
  }
  return cells;
}

const ends = (relation: Relation, kind: string): boolean => relation.type.endsWith(`/${kind}`);

function tablesOf(parts: Parts, sheet: string, part: string): BookTable[] {
  return relationsOf(parts, part)
    .filter((r) => ends(r, "table"))
    .flatMap((r) => {
      const xml = partText(parts, r.target);
      const {
        displayName,
        name,
        ref = "",
        headerRowCount = "1",
        totalsRowCount = "0",
      } = attributes(firstElement(xml, "table")?.tag ?? "");
      const area = areaOf(ref);
      return area === undefined
        ? []
        : [
            {
              name: displayName ?? name ?? "",
              sheet,
              area,
              columns: [...elements(xml, "tableColumn")].map((c) => attributes(c.tag)["name"] ?? ""),
              headers: headerRowCount !== "0",
              totals: totalsRowCount !== "0",
            },
          ];
    });
}

function namesOf(workbook: string, sheets: readonly { readonly name: string }[]): BookName[] {
  return [...elements(workbook, "definedName")].map(({ tag, inner }) => {
    const { name = "", localSheetId } = attributes(tag);
    return {
      name,
      refersTo: fromFile(unescape(inner)),
      sheet: localSheetId === undefined ? undefined : sheets[Number(localSheetId)]?.name,
    };
  });
}

function refuseForeign(workbook: string): void {
  if (/\bdate1904\s*=\s*["'](?:1|true)/.test(workbook))
    throw new BookFault("counts its dates from 1904; such a workbook is not recalculated");
}

/** What stands in the cells, names and tables of a workbook. Refuses what is no workbook, and what cannot be read rightly. */
export function readBook(parts: Parts): Book {
  const main = workbookPart(parts);
  const workbook = partText(parts, main);
  refuseForeign(workbook);
  const relations = relationsOf(parts, main);
  const shared = relations.find((r) => ends(r, "sharedStrings"));
  const strings =
    shared === undefined ? [] : [...elements(partText(parts, shared.target), "si")].map((si) => textOf(si.inner));
  const listed = [...elements(workbook, "sheet")].map(({ tag }) => {
    const { name = "", state = "visible", "r:id": id, id: plainId } = attributes(tag);
    return { name, state: state as BookSheet["state"], relation: relations.find((r) => r.id === (id ?? plainId)) };
  });
  const sheets = listed.filter((s) => s.relation !== undefined && ends(s.relation, "worksheet"));
  if (sheets.length === 0) throw new BookFault("has no worksheet, only macro sheets or charts");
  for (const { name, relation } of sheets)
    if (parts[relation!.target] === undefined) throw new BookFault(`is damaged: its sheet ${name} is missing`);
  const read = sheets.map(({ name, state, relation }) => ({
    name,
    state,
    part: relation!.target,
    cells: cellsOf(partText(parts, relation!.target), strings),
  }));
  return {
    sheets: read,
    names: namesOf(workbook, listed),
    tables: read.flatMap((s) => tablesOf(parts, s.name, s.part)),
  };
}
