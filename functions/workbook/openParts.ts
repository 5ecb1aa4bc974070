import { unzipSync } from "fflate";
import { BookFault } from "./fault";
import { partText, workbookPart, type Parts } from "./parts";
import { elements, readXml } from "./xml";
import { crc32, zipDirectory, type ZipEntry } from "./zipDirectory";

/** Judgement: far above a workbook of 150,000 formulas (3 MB, 25 MB unpacked), and within what a browser's page may hold. */
export const largest = { file: 30e6, unpacked: 150e6, parts: 4000 };

const starts = (bytes: Uint8Array, ...mark: readonly number[]): boolean => mark.every((b, i) => bytes[i] === b);
const holds = (bytes: Uint8Array, text: string): boolean => new TextDecoder("latin1").decode(bytes).includes(text);

function refuseOther(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new BookFault("is empty");
  if (starts(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
    const locked = holds(bytes.subarray(0, 4_000_000), "EncryptedPackage".replace(/(?!^)/g, "\0"));
    throw new BookFault(
      locked
        ? "is encrypted: open it in Excel, take its password off and save it"
        : "is an old .xls workbook: save it as .xlsx first",
    );
  }
  if (!starts(bytes, 0x50, 0x4b, 0x03, 0x04)) throw new BookFault("is not an .xlsx workbook");
  if (bytes.length > largest.file)
    throw new BookFault(`is ${(bytes.length / 1e6).toFixed(0)} MB; at most ${largest.file / 1e6} MB are read`);
}

function refuseLarge(entries: readonly ZipEntry[]): void {
  if (entries.length > largest.parts)
    throw new BookFault(`has ${entries.length} parts inside; at most ${largest.parts} are read`);
  if (new Set(entries.map((e) => e.name)).size !== entries.length)
    throw new BookFault("is damaged: two of its parts have one name");
  const size = entries.reduce((sum, e) => sum + e.size, 0);
  if (size > largest.unpacked)
    throw new BookFault(`unpacks to ${(size / 1e6).toFixed(0)} MB; at most ${largest.unpacked / 1e6} MB are read`);
}

/** Each part gets the memory that the directory names and no more; what does not fit it fails its check. */
function unzip(bytes: Uint8Array): Parts {
  try {
    return unzipSync(bytes);
  } catch {
    throw new BookFault("is damaged: it cannot be unpacked");
  }
}

/**
 * XML entities can grow without end, and no spreadsheet program writes them. Every part is looked through, those too that
 * only others read; a comment that holds one is refused with them.
 */
function refuseEntities(parts: Parts): void {
  for (const [name, bytes] of Object.entries(parts)) {
    if (!/\.(?:xml|rels|vml)$/i.test(name)) continue;
    if (starts(bytes, 0xff, 0xfe) || starts(bytes, 0xfe, 0xff))
      throw new BookFault(`is written in an encoding that is not read (${name})`);
    if (holds(bytes, "<!DOCTYPE") || holds(bytes, "<!ENTITY"))
      throw new BookFault(`has a document type, which no workbook needs (${name})`);
  }
}

/** What a part is, by the zip's own list of types: named itself, or by its ending. */
function typeOf(parts: Parts, path: string): string {
  const types = readXml(partText(parts, "[Content_Types].xml"), "[Content_Types].xml");
  const named = elements(types, "Override")
    .map((e) => e.attributes)
    .find((a) => a["PartName"]?.toLowerCase() === `/${path.toLowerCase()}`);
  const byEnding = elements(types, "Default")
    .map((e) => e.attributes)
    .find((a) => path.toLowerCase().endsWith(`.${a["Extension"]?.toLowerCase() ?? ""}`));
  return (named ?? byEnding)?.["ContentType"] ?? "";
}

function refuseKind(parts: Parts): void {
  if (parts["[Content_Types].xml"] === undefined) throw new BookFault("is a zip, but not an .xlsx workbook");
  const type = typeOf(parts, workbookPart(parts));
  if (/sheet\.binary/i.test(type)) throw new BookFault("is a binary workbook (.xlsb): save it as .xlsx first");
  if (/macroEnabled/i.test(type) || Object.keys(parts).some((name) => /vbaProject\.bin$/i.test(name)))
    throw new BookFault("holds macros: save it as .xlsx, without them, first");
  if (!/spreadsheetml\.(?:sheet|template)\.main/i.test(type))
    throw new BookFault("is not a workbook, but another kind of document");
}

/** Unpacks an .xlsx file, whole and unchanged, or says in one line why not. Nothing of it is ever run or fetched. */
export function openParts(bytes: Uint8Array): Parts {
  refuseOther(bytes);
  const entries = zipDirectory(bytes);
  refuseLarge(entries);
  const parts = unzip(bytes);
  for (const { name, check } of entries) {
    const part = parts[name];
    if (part === undefined || crc32(part) !== check)
      throw new BookFault(`is damaged: its part ${name} has changed since it was written`);
  }
  refuseEntities(parts);
  refuseKind(parts);
  return parts;
}
