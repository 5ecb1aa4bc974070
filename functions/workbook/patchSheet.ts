import { storedError, type CellValue } from "./book";
import { addressOf, columnName, columnOf, type Area } from "../formula/cellAddress";
import { isError } from "../formula/cellErrors";
import { toFile } from "./formulaText";
import { attributes, elements, escape, firstElement, type Element } from "./xml";

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

const without = (attributesText: string, ...names: readonly string[]): string =>
  names.reduce((text, name) => text.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), ""), attributesText);

const areaText = ({ top, left, bottom, right }: Area): string =>
  top === bottom && left === right ? addressOf(top, left) : `${addressOf(top, left)}:${addressOf(bottom, right)}`;

const withArea = (f: Element, area: Area, prefix: string): string =>
  `<${prefix}f${without(f.tag, "ref")} ref="${areaText(area)}">${f.inner}</${prefix}f>`;

/** The formula's element as it is to stand; "" for none. */
function formulaText(f: Element | undefined, { formula, area }: CellChange, prefix: string): string {
  if (formula === null) return "";
  // A new formula that fills cells is kept in the old way, {=…}: the newer one needs a part that the file may not have.
  if (formula !== undefined)
    return `<${prefix}f${area === undefined ? "" : ` t="array" ref="${areaText(area)}"`}>${escape(toFile(formula))}</${prefix}f>`;
  if (f === undefined) return "";
  return area === undefined ? f.whole : withArea(f, area, prefix);
}

/** Only what is written into needs a cell; a blank one is not made. */
const isMade = ({ value, formula }: CellChange): boolean => value !== null || typeof formula === "string";

/** A new cell, or none where nothing is to stand. */
function made(change: CellChange, prefix: string): string {
  if (!isMade(change)) return "";
  const formula = formulaText(undefined, change, prefix);
  const [type, content] = kept(change.value, formula !== "" || change.filled === true, prefix);
  return `<${prefix}c r="${addressOf(change.row, change.column)}"${type}>${formula}${content}</${prefix}c>`;
}

/** A cell with its style and its place, and the new content; what else stands in it stays, to the last blank. */
function changed(cell: Element, change: CellChange, prefix: string): string {
  const f = firstElement(cell.inner, "f");
  const formula = formulaText(f, change, prefix);
  const [type, content] = kept(change.value, formula !== "" || change.filled === true, prefix);
  const tag = without(cell.tag, "t", "vm", ...(change.formula === undefined ? [] : ["cm"])) + type;
  const calculated = f === undefined ? formula + cell.inner : cell.inner.replace(f.whole, () => formula);
  const old = firstElement(cell.inner, "v") ?? firstElement(cell.inner, "is");
  const end = formula === "" ? 0 : calculated.indexOf(formula) + formula.length;
  const inner =
    old === undefined
      ? calculated.slice(0, end) + content + calculated.slice(end)
      : calculated.replace(old.whole, () => content);
  return inner === "" ? `<${prefix}c${tag}/>` : `<${prefix}c${tag}>${inner}</${prefix}c>`;
}

const columnAt = (tag: string, next: number): number => {
  const { r } = attributes(tag);
  return r === undefined ? next : columnOf(r.replace(/[^A-Za-z]/g, ""));
};

/** The cells of one row with the changes in their places. */
function changedRow(inner: string, changes: readonly CellChange[], prefix: string): string {
  const waiting = [...changes].sort((a, b) => a.column - b.column);
  let [out, from, next] = ["", 0, 0];
  for (const cell of elements(inner, "c")) {
    const column = columnAt(cell.tag, next);
    next = column + 1;
    out += inner.slice(from, cell.at);
    from = cell.at + cell.whole.length;
    while (waiting[0] !== undefined && waiting[0].column < column) out += made(waiting.shift()!, prefix);
    out += waiting[0]?.column === column ? changed(cell, waiting.shift()!, prefix) : cell.whole;
  }
  const tail = inner.slice(from);
  return out + waiting.map((w) => made(w, prefix)).join("") + tail;
}

/** A row with changes in it. Where cells have come, its note of how far it reaches (spans, a hint for readers) is left out. */
function oldRow(line: Element, changes: readonly CellChange[], prefix: string): string {
  const inner = changedRow(line.inner, changes, prefix);
  const grew = [...elements(inner, "c")].length > [...elements(line.inner, "c")].length;
  return `<${prefix}row${grew ? without(line.tag, "spans") : line.tag}>${inner}</${prefix}row>`;
}

const newRow = (row: number, changes: readonly CellChange[], prefix: string): string => {
  const inner = changedRow("", changes, prefix);
  return inner === "" ? "" : `<${prefix}row r="${row + 1}">${inner}</${prefix}row>`;
};

function changedRows(inner: string, byRow: Map<number, CellChange[]>, prefix: string): string {
  const rows = [...byRow.keys()].sort((a, b) => a - b);
  let [out, from, next] = ["", 0, 0];
  for (const line of elements(inner, "row")) {
    const row = Number(attributes(line.tag)["r"] ?? next + 1) - 1;
    next = row + 1;
    out += inner.slice(from, line.at);
    from = line.at + line.whole.length;
    while (rows[0] !== undefined && rows[0] < row) out += newRow(rows[0], byRow.get(rows.shift()!)!, prefix);
    if (rows[0] !== row) out += line.whole;
    else out += oldRow(line, byRow.get(rows.shift()!)!, prefix);
  }
  return out + inner.slice(from) + rows.map((row) => newRow(row, byRow.get(row)!, prefix)).join("");
}

/** A sheet that grows says so, or some readers stop too early. */
function grown(xml: string, changes: readonly CellChange[]): string {
  return xml.replace(
    /(<(?:[\w.-]+:)?dimension\s[^>]*ref=")([A-Z]+)(\d+)(?::([A-Z]+)(\d+))?"/,
    (_, start: string, left: string, top: string, right = left, bottom = top) => {
      const come = changes.filter(isMade);
      const columns = [columnOf(left), columnOf(right as string), ...come.map((c) => c.column)];
      const rows = [Number(top), Number(bottom), ...come.map((c) => c.row + 1)];
      const [l, r] = [columns.reduce((a, b) => Math.min(a, b)), columns.reduce((a, b) => Math.max(a, b))];
      return `${start}${columnName(l)}${rows.reduce((a, b) => Math.min(a, b))}:${columnName(r)}${rows.reduce((a, b) => Math.max(a, b))}"`;
    },
  );
}

/** A sheet's part with some cells changed and nothing else. */
export function patchSheet(xml: string, changes: readonly CellChange[]): string {
  const data = firstElement(xml, "sheetData");
  if (data === undefined) return xml;
  const { prefix } = data;
  const byRow = new Map<number, CellChange[]>();
  for (const change of changes) {
    const row = byRow.get(change.row) ?? [];
    row.push(change);
    byRow.set(change.row, row);
  }
  const inner = changedRows(data.inner, byRow, prefix);
  return grown(
    `${xml.slice(0, data.at)}<${prefix}sheetData${data.tag}>${inner}</${prefix}sheetData>${xml.slice(data.at + data.whole.length)}`,
    changes,
  );
}
