import { wantBuilt } from "../../../config/built.mjs";
import { spawnSync, type SpawnSyncReturns } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { strToU8, zipSync, type Zippable } from "fflate";
import { escape } from "../../../functions/workbook/xml";

/** Workbooks written by hand for tests, part by part, and the recalc program as it is run. */

const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

const relations = (rows: readonly (readonly [id: string, kind: string, target: string])[]): string =>
  `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${rows.map(([id, kind, target]) => `<Relationship Id="${id}" Type="${office}/${kind}" Target="${target}"/>`).join("")}</Relationships>`;

export const contentTypes = (
  workbook = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
): string =>
  `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${workbook}"/></Types>`;

export const sheetXml = (rows: string, before = ""): string =>
  `${head}<worksheet xmlns="${main}" xmlns:r="${office}">${before}<sheetData>${rows}</sheetData></worksheet>`;

/** A cell with a value, and with a formula where one is given. */
export const cellXml = (at: string, value: string | number, formula?: string): string =>
  `<c r="${at}"${typeof value === "string" ? ' t="str"' : ""}>${formula === undefined ? "" : `<f>${escape(formula)}</f>`}<v>${escape(String(value))}</v></c>`;

/** The parts of a workbook: each sheet's rows as XML; names and other parts as given. */
export function bookParts(
  sheets: Readonly<Record<string, string>>,
  more: { readonly names?: string; readonly parts?: Readonly<Record<string, string | Uint8Array>> } = {},
): Record<string, Uint8Array> {
  const list = Object.entries(sheets);
  const parts: Record<string, string | Uint8Array> = {
    "[Content_Types].xml": contentTypes(),
    "_rels/.rels": relations([["rId1", "officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `${head}<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${list.map(([name], i) => `<sheet name="${name}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join("")}</sheets>${more.names === undefined ? "" : `<definedNames>${more.names}</definedNames>`}</workbook>`,
    "xl/_rels/workbook.xml.rels": relations(
      list.map((_, i) => [`rId${i + 1}`, "worksheet", `worksheets/sheet${i + 1}.xml`]),
    ),
    ...Object.fromEntries(list.map(([, rows], i) => [`xl/worksheets/sheet${i + 1}.xml`, sheetXml(rows)])),
    ...more.parts,
  };
  return Object.fromEntries(
    Object.entries(parts).map(([path, part]) => [path, typeof part === "string" ? strToU8(part) : part]),
  );
}

export const zip = (parts: Zippable): Uint8Array => zipSync(parts, { mtime: "1980-01-01T00:00:00" });

export const tableRelation = relations([["rId1", "table", "../tables/table1.xml"]]);

export const folder = (): string => mkdtempSync(join(tmpdir(), "kerfsheet-book-"));

export interface Run extends SpawnSyncReturns<string> {
  /** Of the processor; what the clock says depends on what else runs. */
  readonly seconds: number;
  /** The most memory that it held [MB]. */
  readonly memory: number;
}

/** Runs the built program; `npm test` builds it before the tests. */
export function recalc(...args: readonly string[]): Run {
  wantBuilt("programs");
  const note = join(folder(), "memory");
  const hook = join(folder(), "hook.cjs");
  writeFileSync(
    hook,
    `process.on("exit", () => { const u = process.resourceUsage(); require("node:fs").writeFileSync(${JSON.stringify(note)}, JSON.stringify([u.userCPUTime + u.systemCPUTime, u.maxRSS])); });`,
  );
  const done = spawnSync(process.execPath, ["--require", hook, resolve("build/recalc.cjs"), ...args], {
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  const [time, memory] = JSON.parse(readFileSync(note, "utf8")) as [number, number];
  return { ...done, seconds: time / 1e6, memory: memory / 1000 };
}

/** Recalculates a sheet with these formulas below each other in column A, each kept with the value that it should give. */
export function recalcColumn(cells: readonly (readonly [formula: string, value: string | number])[]): Run {
  const rows = cells.map(([f, v], i) => `<row r="${i + 1}">${cellXml(`A${i + 1}`, v, f)}</row>`);
  const file = join(folder(), "column.xlsx");
  writeFileSync(file, zip(bookParts({ One: rows.join("") })));
  return recalc(file);
}
