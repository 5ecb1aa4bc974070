import { strToU8 } from "fflate";
import { bookParts, contentTypes, sheetXml, zip } from "./fixture";

/** Files that are no sound workbook. Each must be refused in one line, within 5 s and 512 MB, and nothing be written. */

type HostileBook = readonly [what: string, make: () => Uint8Array, says: RegExp];

const good = (): Record<string, Uint8Array> =>
  bookParts({ Quote: '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>A1*2</f><v>2</v></c></row>' });
export const sound = (): Uint8Array => zip(good());
const changed = (at: (bytes: Uint8Array) => number, value: number): Uint8Array => {
  const bytes = sound();
  bytes[at(bytes)] = value;
  return bytes;
};
const find = (bytes: Uint8Array, text: string, from = 0): number => Buffer.from(bytes).indexOf(text, from, "latin1");
const utf16 = (text: string): string => [...text].join("\0");
const ole = (stream: string): Uint8Array =>
  Buffer.concat([
    Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]),
    Buffer.alloc(2000),
    Buffer.from(utf16(stream), "latin1"),
    Buffer.alloc(2000),
  ]);
const withPart = (path: string, part: string | Uint8Array): Uint8Array =>
  zip({ ...good(), [path]: typeof part === "string" ? strToU8(part) : part });
const withSheet = (rows: string): Uint8Array => withPart("xl/worksheets/sheet1.xml", sheetXml(rows));
const formula = (text: string): Uint8Array => withSheet(`<row r="1"><c r="A1"><f>${text}</f><v>1</v></c></row>`);

/** The size in the zip's directory, and before the part, made small: a bomb that lies. */
const lying = (): Uint8Array => {
  const bytes = withPart("xl/worksheets/sheet1.xml", new Uint8Array(100e6));
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  const local = find(bytes, "xl/worksheets/sheet1.xml") - 30;
  const central = find(bytes, "xl/worksheets/sheet1.xml", local + 60) - 46;
  view.setUint32(local + 22, 1000, true);
  view.setUint32(central + 24, 1000, true);
  return bytes;
};

export const hostileBooks: readonly HostileBook[] = [
  ["an empty file", () => new Uint8Array(), /is empty$/],
  ["a text file", () => strToU8("size,minutes\nround 7,18\n"), /is not an \.xlsx workbook$/],
  ["a file cut short", () => sound().slice(0, 900), /is damaged: its end is missing$/],
  [
    "a file whose list of parts is cut",
    () => changed((b) => find(b, "PK\x01\x02"), 0),
    /is damaged: its list of parts is broken$/,
  ],
  [
    "a changed bit in a part",
    () => {
      const bytes = zip({
        ...good(),
        "xl/worksheets/sheet1.xml": [strToU8(sheetXml('<row r="1"><c r="A1"><v>12345</v></c></row>')), { level: 0 }],
      });
      bytes[find(bytes, "12345")]! ^= 1;
      return bytes;
    },
    /is damaged: its part xl\/worksheets\/sheet1\.xml has changed/,
  ],
  ["an encrypted workbook", () => ole("EncryptedPackage"), /is encrypted: open it in Excel/],
  ["an old .xls workbook", () => ole("Workbook"), /is an old \.xls workbook/],
  [
    "a workbook with macros",
    () =>
      zip({
        ...good(),
        "xl/vbaProject.bin": new Uint8Array(100),
        "[Content_Types].xml": strToU8(contentTypes("application/vnd.ms-excel.sheet.macroEnabled.main+xml")),
      }),
    /holds macros/,
  ],
  ["macros under a plain name", () => withPart("xl/vbaProject.bin", new Uint8Array(100)), /holds macros/],
  [
    "only macro sheets",
    () =>
      withPart(
        "xl/_rels/workbook.xml.rels",
        Buffer.from(good()["xl/_rels/workbook.xml.rels"]!).toString().replace('/worksheet"', '/xlMacrosheet"'),
      ),
    /has no worksheet/,
  ],
  [
    "a binary workbook",
    () => withPart("[Content_Types].xml", contentTypes("application/vnd.ms-excel.sheet.binary.macroEnabled.main")),
    /is a binary workbook/,
  ],
  [
    "a text document",
    () =>
      withPart(
        "[Content_Types].xml",
        contentTypes("application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"),
      ),
    /is not a workbook/,
  ],
  [
    "an OpenDocument sheet",
    () => zip({ mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"), "content.xml": strToU8("<x/>") }),
    /is a zip, but not an \.xlsx workbook$/,
  ],
  [
    "a workbook without its sheet",
    () => {
      const parts = good();
      delete parts["xl/worksheets/sheet1.xml"];
      return zip(parts);
    },
    /is damaged: its sheet Quote is missing$/,
  ],
  [
    "a zip bomb",
    () => withPart("xl/media/image1.png", new Uint8Array(400e6)),
    /unpacks to 400 MB; at most 150 MB are read$/,
  ],
  ["a zip bomb that lies about its size", lying, /is damaged: its part xl\/worksheets\/sheet1\.xml has changed/],
  [
    "70,000 parts",
    () => zip(Object.fromEntries(Array.from({ length: 70_000 }, (_, i) => [`a${i}`, new Uint8Array()]))),
    /parts inside; at most 4000|is damaged/,
  ],
  [
    "XML entities that grow",
    () =>
      withPart(
        "xl/workbook.xml",
        '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]><workbook>&b;</workbook>',
      ),
    /has a document type, which no workbook needs/,
  ],
  [
    "a part in another encoding",
    () => withPart("xl/workbook.xml", Buffer.from("\ufeff<workbook/>", "utf16le")),
    /encoding that is not read/,
  ],
  [
    "rows that never end",
    () => withSheet("<row>".repeat(4e6)),
    /is damaged: its part xl\/worksheets\/sheet1\.xml is not well-formed \(a sheetData has no end\)$/,
  ],
  [
    "more cells than are read",
    () => withSheet(`<row r="1">${"<c><v>1</v></c>".repeat(1_000_001)}</row>`),
    /more than 1,000,000 cells/,
  ],
  [
    "a formula longer than Excel takes",
    () => formula("1+".repeat(20_000) + "1"),
    /holds a formula of 40,001 characters/,
  ],
  [
    "a function that nobody knows",
    () => formula("_xldudf_OTHER_PRICE(A2)"),
    /cannot be recalculated: Quote!A1 calls OTHER_PRICE, a function that is not known here$/,
  ],
  [
    "another workbook's cells",
    () => formula("[1]Prices!A1*2"),
    /cannot be recalculated: Quote!A1 refers to another workbook$/,
  ],
  [
    "dates from 1904",
    () =>
      withPart(
        "xl/workbook.xml",
        Buffer.from(good()["xl/workbook.xml"]!).toString().replace("<sheets>", '<workbookPr date1904="1"/><sheets>'),
      ),
    /counts its dates from 1904/,
  ],
  [
    "a name that stands for another workbook's cells",
    () =>
      zip(
        bookParts(
          { Quote: '<row r="1"><c r="A1"><f>Prices*2</f><v>4</v></c></row>' },
          { names: '<definedName name="Prices">[1]List!$A$1</definedName>' },
        ),
      ),
    /cannot be recalculated: Quote!A1 uses the name Prices, which refers to another workbook$/,
  ],
  [
    "one cell's formula with several results",
    () => withSheet('<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>A1:A3*2</f><v>2</v></c></row>'),
    /Quote!B1 gives several results, and the file keeps it as a formula of one cell$/,
  ],
  [
    "a formula that says it fills a whole sheet",
    () => withSheet('<row r="1"><c r="A1"><f t="array" ref="A1:XFD1048576">B1*2</f><v>1</v></c></row>'),
    /has formulas that fill more than 1,000,000 cells/,
  ],
  [
    "a cell outside of any sheet",
    () => withSheet('<row r="2000000"><c r="A2000000"><v>1</v></c></row>'),
    /is damaged: it has a cell outside of any sheet$/,
  ],
  [
    "two cells at the far ends of a sheet, to be sent",
    () => withSheet('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>3</v></c></row>'),
    /has looks that cannot be read: Sheet "Quote" spans 1048576 rows/,
  ],
  [
    "formulas without number",
    () => withSheet("<row><c><f>A1</f></c></row>".repeat(150_001)),
    /holds 150,001 formulas; at most 150,000 are recalculated$/,
  ],
  [
    "one long formula shared by 30,000 cells",
    () =>
      withSheet(
        `<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B30000" si="0">${"SQRT(A1)+".repeat(860)}1</f><v>2</v></c></row>${Array.from({ length: 29_999 }, (_, i) => `<row r="${i + 2}"><c r="B${i + 2}"><f t="shared" si="0"/><v>2</v></c></row>`).join("")}`,
      ),
    /holds 232 million characters of formulas; that is more than is recalculated$/,
  ],
  [
    "a target outside the zip",
    () =>
      withPart(
        "xl/_rels/workbook.xml.rels",
        Buffer.from(good()["xl/_rels/workbook.xml.rels"]!)
          .toString()
          .replace("worksheets/sheet1.xml", "../../../../etc/passwd"),
      ),
    /is damaged: its sheet Quote is missing$/,
  ],
];
