import type { XmlElement } from "@rgrove/parse-xml";
import { storedError, type CellValue } from "./book";
import { addressOf, areaOf, columnOf, type Area } from "../formula/cellAddress";
import { isError } from "../formula/cellErrors";
import { callsOwn, toFile } from "./formulaText";
import {
  childrenOf,
  edited,
  escape,
  innerEnd,
  innerStart,
  placedXml,
  prefixOf,
  readXml,
  startTag,
  type Edit,
} from "./xml";
import { listOf, type Item, type XmlList } from "./xmlList";

/** What becomes of one cell. */
export interface CellChange {
  readonly row: number;
  readonly column: number;
  readonly value: CellValue;
  /** Left out: the cell keeps its formula. null: it has none any more. Text: the new one, as typed. */
  readonly formula?: string | null;
  /** Another cell's formula fills it: its value is a result, though it has no formula. */
  readonly filled?: boolean;
  /** What its array formula fills now. */
  readonly area?: Area | undefined;
}

const preserved = (text: string): string => (/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : "");

/** Type and content of a value: a formula's text and a typed one are kept in different ways. */
function kept(value: CellValue, calculated: boolean, prefix: string): readonly [type: string, content: string] {
  const v = (text: string): string => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return ["", ""];
  if (typeof value === "number") return ["", v(String(value))];
  if (typeof value === "boolean") return [' t="b"', v(value ? "1" : "0")];
  if (calculated && isError(value)) return [' t="e"', v(String(storedError(value)))];
  if (calculated) return [' t="str"', v(escape(value))];
  return [' t="inlineStr"', `<${prefix}is><${prefix}t${preserved(value)}>${escape(value)}</${prefix}t></${prefix}is>`];
}

const moved = (edits: readonly Edit[], by: number): Edit[] =>
  edits.map(({ start, end, text }) => ({ start: start + by, end: end + by, text }));

const areaText = ({ top, left, bottom, right }: Area): string =>
  top === bottom && left === right ? addressOf(top, left) : `${addressOf(top, left)}:${addressOf(bottom, right)}`;

const withArea = (text: string, f: XmlElement, area: Area): string =>
  `${startTag(text, f, "ref")} ref="${areaText(area)}">${text.slice(innerStart(text, f), innerEnd(text, f))}</${f.name}>`;

/** A new formula that fills cells, or calls our functions, is kept as a dynamic array: dynamicArrays.ts says why. */
export const isDynamic = ({ formula, area }: CellChange): boolean =>
  typeof formula === "string" && (area !== undefined || callsOwn(formula));

function newFormula(change: CellChange, prefix: string): string {
  const { row, column, area } = change;
  const fills = area ?? { top: row, left: column, bottom: row, right: column };
  const array = isDynamic(change) ? ` t="array" ref="${areaText(fills)}"` : "";
  return `<${prefix}f${array}>${escape(toFile(change.formula!))}</${prefix}f>`;
}

/** Only what is written into needs a cell; a blank one is not made. */
const isMade = ({ value, formula }: CellChange): boolean => value !== null || typeof formula === "string";

const dynamic = (change: CellChange, cm: number): string => (isDynamic(change) ? ` cm="${cm}"` : "");

/** A new cell, or none where nothing is to stand. */
function made(change: CellChange, prefix: string, cm: number): string {
  if (!isMade(change)) return "";
  const formula = typeof change.formula === "string" ? newFormula(change, prefix) : "";
  const [type, content] = kept(change.value, formula !== "" || change.filled === true, prefix);
  return `<${prefix}c r="${addressOf(change.row, change.column)}"${dynamic(change, cm)}${type}>${formula}${content}</${prefix}c>`;
}

/** The formula of a cell as it is to stand; "" for none. */
function formulaText(text: string, f: XmlElement | undefined, change: CellChange, prefix: string): string {
  const { formula, area } = change;
  if (formula === null) return "";
  if (formula !== undefined) return newFormula(change, prefix);
  if (f === undefined) return "";
  return area === undefined ? text.slice(f.start, f.end) : withArea(text, f, area);
}

/** A cell with its style and its place, and the new content; what else stands in it stays, to the last blank. */
function changed(text: string, cell: XmlElement, change: CellChange, cm: number): string {
  const prefix = prefixOf(cell.name);
  const [f] = childrenOf(cell, "f");
  const [old] = [...childrenOf(cell, "v"), ...childrenOf(cell, "is")];
  const formula = formulaText(text, f, change, prefix);
  const [type, content] = kept(change.value, formula !== "" || change.filled === true, prefix);
  const [start, end] = [innerStart(text, cell), innerEnd(text, cell)];
  const first = { start, end: start };
  const edits = [
    { ...(f ?? first), text: formula },
    { ...(old ?? (f === undefined ? first : { start: f.end, end: f.end })), text: content },
  ];
  const inner = edited(text.slice(start, end), moved(edits, -start));
  const tag =
    startTag(text, cell, "t", "vm", ...(change.formula === undefined ? [] : ["cm"])) + dynamic(change, cm) + type;
  return inner === "" ? `${tag}/>` : `${tag}>${inner}</${cell.name}>`;
}

/** The changes of one row in and between its cells. */
function cellEdits(text: string, line: XmlElement, changes: readonly CellChange[], cm: number): Edit[] {
  const prefix = prefixOf(line.name);
  const edits: Edit[] = [];
  const waiting = [...changes].sort((a, b) => a.column - b.column);
  const insert = (at: number, before: number): void => {
    while (waiting[0] !== undefined && waiting[0].column < before)
      edits.push({ start: at, end: at, text: made(waiting.shift()!, prefix, cm) });
  };
  let [next, after] = [0, innerStart(text, line)];
  for (const cell of childrenOf(line, "c")) {
    const { r } = cell.attributes;
    const column = r === undefined ? next : columnOf(r.replace(/[^A-Za-z]/g, ""));
    insert(cell.start, column);
    if (waiting[0]?.column === column)
      edits.push({ start: cell.start, end: cell.end, text: changed(text, cell, waiting.shift()!, cm) });
    [next, after] = [column + 1, cell.end];
  }
  insert(after, Infinity);
  return edits.filter((e) => e.text !== text.slice(e.start, e.end));
}

/** A row with changes in it. Where cells have come, its note of how far it reaches (spans, a hint for readers) is left out. */
function changedRow(text: string, line: XmlElement, changes: readonly CellChange[], cm: number): string {
  const edits = cellEdits(text, line, changes, cm);
  if (edits.length === 0) return text;
  const grew = edits.some(({ start, end }) => start === end);
  const [start, end] = [innerStart(text, line), innerEnd(text, line)];
  return `${startTag(text, line, ...(grew ? ["spans"] : []))}>${edited(text.slice(start, end), moved(edits, -start))}</${line.name}>`;
}

const newRow = (row: number, changes: readonly CellChange[], prefix: string, cm: number): string => {
  const cells = [...changes].sort((a, b) => a.column - b.column).map((change) => made(change, prefix, cm));
  return cells.join("") === "" ? "" : `<${prefix}row r="${row + 1}">${cells.join("")}</${prefix}row>`;
};

/** The number of a row from 0, of which only the start tag is read. */
const rowAt = (xml: string, { start, open }: Item, next: number, part: string): number =>
  Number(readXml(xml.slice(start, open).replace(/\/?>$/, "/>"), part).attributes["r"] ?? next + 1) - 1;

/** The changes of a sheet in and between its rows. */
function rowEdits(
  xml: string,
  { items, place }: XmlList,
  changes: readonly CellChange[],
  { part, cm }: { readonly part: string; readonly cm: number },
): Edit[] {
  const prefix = prefixOf(xml.slice(place!.start + 1, place!.open));
  const byRow = new Map<number, CellChange[]>();
  for (const change of changes) {
    const row = byRow.get(change.row) ?? [];
    row.push(change);
    byRow.set(change.row, row);
  }
  const rows = [...byRow.keys()].sort((a, b) => a - b);
  const edits: Edit[] = [];
  let [next, waiting] = [0, 0];
  const insert = (at: number, before: number): void => {
    for (; waiting < rows.length && rows[waiting]! < before; waiting += 1)
      edits.push({ start: at, end: at, text: newRow(rows[waiting]!, byRow.get(rows[waiting]!)!, prefix, cm) });
  };
  for (const item of items) {
    const row = rowAt(xml, item, next, part);
    insert(item.start, row);
    if (rows[waiting] === row) {
      const text = xml.slice(item.start, item.end);
      edits.push({ ...item, text: changedRow(text, placedXml(text, part), byRow.get(row)!, cm) });
      waiting += 1;
    }
    next = row + 1;
  }
  insert(place!.close, Infinity);
  return edits;
}

/** A sheet that had no row at all may be one tag: it gets an end. */
function opened(xml: string, { place }: XmlList, rows: readonly Edit[]): readonly Edit[] {
  const { start, open, close } = place!;
  const text = rows.map((r) => r.text).join("");
  if (close > open || !xml.startsWith("/>", open - 2) || text === "") return rows;
  const name = /^<([^\s/]+)/.exec(xml.slice(start, open))![1]!;
  return [{ start: open - 2, end: open, text: `>${text}</${name}>` }];
}

/** A sheet that grows says so, or some readers stop too early. The note stands before the rows. */
function grown({ rest, place }: XmlList, changes: readonly CellChange[], part: string): Edit[] {
  const [note] = childrenOf(placedXml(rest, part), "dimension");
  const area = areaOf(note?.attributes["ref"] ?? "");
  const come = changes.filter(isMade);
  if (note === undefined || area === undefined || note.end > place!.start || come.length === 0) return [];
  const reach = come.reduce(
    (all, { row, column }) => ({
      top: Math.min(all.top, row),
      left: Math.min(all.left, column),
      bottom: Math.max(all.bottom, row),
      right: Math.max(all.right, column),
    }),
    area,
  );
  const ref = areaText(reach);
  if (ref === note.attributes["ref"]) return [];
  const open = innerStart(rest, note);
  const end = open === note.end ? "/>" : ">";
  return [{ start: note.start, end: open, text: `${startTag(rest, note, "ref")} ref="${ref}"${end}` }];
}

/**
 * A sheet's part with some cells changed and nothing else.
 * @param cm number of the cell metadata of dynamic arrays; see dynamicArrays.ts
 */
export function patchSheet(xml: string, changes: readonly CellChange[], part: string, cm: number): string {
  const list = listOf(xml, "sheetData", part);
  if (list.place === undefined) return xml;
  return edited(xml, [...grown(list, changes, part), ...opened(xml, list, rowEdits(xml, list, changes, { part, cm }))]);
}
