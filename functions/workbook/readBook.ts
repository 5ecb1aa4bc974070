import { XmlElement } from "@rgrove/parse-xml";
import type { Book, BookCell, BookFormula, BookName, BookSheet, BookTable, CellValue } from "./book";
import { areaOf, columnOf, type Area } from "../formula/cellAddress";
import { BookFault } from "./fault";
import { callsOwn, fromFile, mended } from "./formulaText";
import { partText, relationsOf, workbookPart, type Parts, type Relation } from "./parts";
import { childrenOf, elements, localName, readXml, relationId } from "./xml";
import { listOf, type Item } from "./xmlList";

/** Judgement: many times what the engine calculates (recalculate's limit), so that only a sheet of another purpose is refused. */
const mostCells = 1_000_000;

/** 8,192 characters as typed, a little more as a file writes the names of functions. */
const longestFormula = 20_000;

/** The text of a string item: of all its runs, without the reading aids of East Asian text. */
const runsOf = (item: XmlElement): string =>
  item.children
    .map((c) =>
      !(c instanceof XmlElement) || localName(c.name) === "rPh" ? "" : localName(c.name) === "t" ? c.text : runsOf(c),
    )
    .join("");

/** The file format has escapes of its own for what XML cannot hold: _x000D_. */
const textOf = (item: XmlElement): string =>
  runsOf(item).replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

const numberOf = (raw: string): number | null => (raw.trim() === "" ? null : Number(raw));

function valueOf(cell: XmlElement, strings: readonly string[]): CellValue {
  const type = cell.attributes["t"] ?? "n";
  if (type === "inlineStr") return textOf(cell);
  const raw = childrenOf(cell, "v")[0]?.text;
  if (raw === undefined) return null;
  if (type === "s") return strings[Number(raw)] ?? "";
  if (type === "str" || type === "e") return raw;
  if (type === "b") return raw.trim() === "1" || raw.trim() === "true";
  if (type === "d")
    throw new BookFault("keeps dates as text of the strict kind; save it as an ordinary .xlsx workbook first");
  return numberOf(raw);
}

/** The stored form of a formula with our functions that a program, or Excel without the add-in, has kept in another. */
function mendOf(cell: XmlElement, f: XmlElement): string | undefined {
  if (!callsOwn(f.text)) return undefined;
  const text = mended(f.text);
  const { t, aca, ca } = f.attributes;
  const isKept = t === "array" && aca === undefined && ca === undefined && cell.attributes["cm"] !== undefined;
  return isKept && text === f.text ? undefined : text;
}

function formulaOf(cell: XmlElement): BookFormula | undefined {
  const [f] = childrenOf(cell, "f");
  if (f === undefined) return undefined;
  const { t = "normal", si, ref } = f.attributes;
  const is = t === "shared" || t === "array" || t === "dataTable" ? t : "plain";
  // Excel's own limit, and no text that is longer is worth the engine's time.
  if (f.text.length > longestFormula)
    throw new BookFault(`holds a formula of ${f.text.length.toLocaleString("en")} characters; Excel takes 8,192`);
  return {
    text: fromFile(f.text),
    is,
    shared: is === "shared" ? Number(si) : undefined,
    area: is === "array" && ref !== undefined ? areaOf(ref) : undefined,
    mend: mendOf(cell, f),
  };
}

const outside = (): BookFault => new BookFault("is damaged: it has a cell outside of any sheet");

/** The rows of a sheet's part by their places. Cells are counted before any is read, since that takes longer. */
function rowsOf(xml: string, part: string): readonly Item[] {
  const { items, rest } = listOf(xml, "sheetData", part);
  readXml(rest, part);
  if (items.reduce((count, row) => count + row.children, 0) > mostCells)
    throw new BookFault(`has a sheet of more than ${mostCells.toLocaleString("en")} cells; that is more than is read`);
  if (items.some((row) => row.children > mostColumns)) throw outside();
  return items;
}

const cellsIn = ({ top, left, bottom, right }: Area): number => (bottom - top + 1) * (right - left + 1);

/** The last row and column of a sheet are Excel's own. */
const mostRows = 1_048_576;
const mostColumns = 16_384;

function refuseOutside(row: number, column: number): void {
  if (!(row >= 0 && row < mostRows && column >= 0 && column < mostColumns)) throw outside();
}

/** The cells of a sheet's part. A writer may leave out addresses: then each follows the one before. */
function cellsOf(xml: string, part: string, strings: readonly string[]): BookCell[] {
  const cells: BookCell[] = [];
  let [row, filled] = [-1, 0];
  for (const { start, end } of rowsOf(xml, part)) {
    const line = readXml(xml.slice(start, end), part);
    row = Number(line.attributes["r"] ?? row + 2) - 1;
    let column = -1;
    for (const cell of childrenOf(line, "c")) {
      const { r } = cell.attributes;
      column = r === undefined ? column + 1 : columnOf(r.replace(/[^A-Za-z]/g, ""));
      const formula = formulaOf(cell);
      const value = valueOf(cell, strings);
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
    .filter((r) => ends(r, "table") && parts[r.target] !== undefined)
    .flatMap(({ target }) => {
      const table = readXml(partText(parts, target), target);
      const { displayName, name, ref = "", headerRowCount = "1", totalsRowCount = "0" } = table.attributes;
      const area = areaOf(ref);
      return area === undefined
        ? []
        : [
            {
              name: displayName ?? name ?? "",
              sheet,
              area,
              columns: elements(table, "tableColumn").map((c) => c.attributes["name"] ?? ""),
              headers: headerRowCount !== "0",
              totals: totalsRowCount !== "0",
            },
          ];
    });
}

const namesOf = (workbook: XmlElement, sheets: readonly { readonly name: string }[]): BookName[] =>
  elements(workbook, "definedName").map(({ attributes, text }) => {
    const { name = "", localSheetId } = attributes;
    return {
      name,
      refersTo: fromFile(text),
      sheet: localSheetId === undefined ? undefined : sheets[Number(localSheetId)]?.name,
    };
  });

function refuseForeign(workbook: XmlElement): void {
  if (elements(workbook, "workbookPr").some(({ attributes }) => /^(?:1|true)$/.test(attributes["date1904"] ?? "")))
    throw new BookFault("counts its dates from 1904; such a workbook is not recalculated");
}

function stringsOf(parts: Parts, part: string | undefined): readonly string[] {
  if (part === undefined || parts[part] === undefined) return [];
  const xml = partText(parts, part);
  const { items, rest } = listOf(xml, "sst", part);
  readXml(rest, part);
  return items.map(({ start, end }) => textOf(readXml(xml.slice(start, end), part)));
}

/** What stands in the cells, names and tables of a workbook. Refuses what is no workbook, and what cannot be read rightly. */
export function readBook(parts: Parts): Book {
  const main = workbookPart(parts);
  const workbook = readXml(partText(parts, main), main);
  refuseForeign(workbook);
  const relations = relationsOf(parts, main);
  const strings = stringsOf(parts, relations.find((r) => ends(r, "sharedStrings"))?.target);
  const listed = elements(workbook, "sheet").map((sheet) => {
    const { name = "", state = "visible" } = sheet.attributes;
    return { name, state: state as BookSheet["state"], relation: relations.find((r) => r.id === relationId(sheet)) };
  });
  const sheets = listed.filter((s) => s.relation !== undefined && ends(s.relation, "worksheet"));
  if (sheets.length === 0) throw new BookFault("has no worksheet, only macro sheets or charts");
  for (const { name, relation } of sheets)
    if (parts[relation!.target] === undefined) throw new BookFault(`is damaged: its sheet ${name} is missing`);
  const read = sheets.map(({ name, state, relation }) => ({
    name,
    state,
    part: relation!.target,
    cells: cellsOf(partText(parts, relation!.target), relation!.target, strings),
  }));
  return {
    sheets: read,
    names: namesOf(workbook, listed),
    tables: read.flatMap((s) => tablesOf(parts, s.name, s.part)),
  };
}
