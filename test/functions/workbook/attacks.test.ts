import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readXlsx } from "hucre/xlsx";
import { readFileSync } from "node:fs";
import { addressOf } from "../../../functions/formula/cellAddress";
import { bookParts, folder, recalc, sheetXml, zip } from "./fixture";

/** What an attack found: one line, exit 2, nothing written; no number for a cell that depends on itself. */

const cells = (...formulas: readonly string[]): string =>
  formulas.map((f, i) => `<row r="${i + 1}"><c r="A${i + 1}"><f>${f}</f></c></row>`).join("");
const file = (sheets: Readonly<Record<string, string>>, names?: string): string => {
  const path = join(folder(), "book.xlsx");
  writeFileSync(path, zip({ ...bookParts(sheets, names === undefined ? {} : { names }) }));
  return path;
};

describe("workbooks that are refused in one line", () => {
  it.each<readonly [string, Readonly<Record<string, string>>, string | undefined, RegExp]>([
    ["a cell that reads itself", { S: cells("A1+1") }, undefined, /depend on their own results: S!A1$/m],
    [
      "three in a circle, over a range",
      { S: cells("SUM(A2:A3)", "A3", "A1*2") },
      undefined,
      /own results: S!A1, S!A[23]/,
    ],
    ["over two sheets", { S: cells("T!A1"), T: cells("S!A1") }, undefined, /own results: S!A1, T!A1/],
    ["through a name", { S: cells("Twice") }, '<definedName name="Twice">S!$A$1*2</definedName>', /own results: S!A1/],
    [
      "names that refer to each other",
      { S: cells("One") },
      '<definedName name="One">Two</definedName><definedName name="Two">One</definedName>',
      /the name one refers to itself/,
    ],
    ["two thousand nested IFs", { S: cells(`${"IF(1,".repeat(2000)}1${")".repeat(2000)}`) }, undefined, /./],
    ["15,000 minus signs", { S: cells(`${"-".repeat(15_000)}1`) }, undefined, /./],
    [
      "a range of seventeen thousand million cells",
      { S: cells("SUM(B1:XFD1048576*1)") },
      undefined,
      /million cells at once/,
    ],
  ])("%s", (_, sheets, names, says) => {
    const run = recalc(file(sheets, names));
    // Deep formulas may also be calculated; then there is a number, and no stack trace.
    if (run.status !== 2) expect([0, 1]).toContain(run.status);
    else {
      expect(run.stderr).toMatch(says);
      expect(run.stderr.trimEnd().split("\n")).toHaveLength(1);
    }
    if (says.source !== ".") expect(run.status).toBe(2);
    expect(run.stderr).not.toMatch(/\n\s+at /);
    expect(run.seconds).toBeLessThan(20);
  });

  it("ROW and COLUMNS of their own cell are no circle, and a total beside its rows is none", () => {
    const run = recalc(file({ S: cells("ROW(A1)+COLUMNS(A1:B1)", "SUM(A1:A1)") }));
    expect(run.stdout).toContain("S!A1\t=ROW(A1)+COLUMNS(A1:B1)\twas nothing\tis 3");
  });

  it("a sheet's name forges no line", () => {
    const parts = bookParts({ "a&#10;b‮c": cells("1+1") });
    const path = join(folder(), "book.xlsx");
    writeFileSync(path, zip({ ...parts }));
    const lines = recalc(path).stdout.trimEnd().split("\n");
    expect(lines).toHaveLength(2);
    expect(lines[0]).toContain("a\\u000ab\\u202ec!A1");
  });
});

describe("small files that once took minutes", () => {
  const sheet = '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><f>LEN(A1)</f><v>3</v></c></row>';
  const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
  const withStrings = (strings: string, rows: string): string => {
    const parts = bookParts(
      { S: "" },
      {
        parts: {
          "xl/worksheets/sheet1.xml": rows,
          "xl/sharedStrings.xml": `<sst ${main} count="1" uniqueCount="1"><si><t>abc</t>${strings}</si></sst>`,
        },
      },
    );
    const relation = `<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings" Target="sharedStrings.xml"/>`;
    const rels = Buffer.from(parts["xl/_rels/workbook.xml.rels"]!)
      .toString()
      .replace("</Relationships>", `${relation}</Relationships>`);
    const path = join(folder(), "book.xlsx");
    writeFileSync(path, zip({ ...parts, "xl/_rels/workbook.xml.rels": Buffer.from(rels) }));
    return path;
  };
  it.each([
    ["100,000 phonetic runs", withStrings('<rPh sb="0" eb="1"><t>x</t></rPh>'.repeat(100_000), sheetXml(sheet))],
    [
      "3,000 merges of whole columns",
      withStrings(
        "",
        sheetXml(sheet).replace(
          "</worksheet>",
          `<mergeCells>${Array.from({ length: 3000 }, (_, i) => `<mergeCell ref="${addressOf(0, 2 * i + 2)}:${addressOf(1_048_575, 2 * i + 3)}"/>`).join("")}</mergeCells></worksheet>`,
        ),
      ),
    ],
  ])("%s", (_, path) => {
    const run = recalc(path);
    expect(run.status).toBe(0);
    expect(run.seconds).toBeLessThan(10);
    expect(run.memory).toBeLessThan(1000);
  });
});

describe("what is sent holds nothing that a reader does not see", () => {
  it("cells under a merged area, hairline rows and columns, and values under ;;; stay behind", async () => {
    const row = (r: number, more: string, height = ""): string =>
      `<row r="${r}"${height}><c r="A${r}" t="inlineStr"><is><t>seen ${r}</t></is></c><c r="B${r}" t="inlineStr"><is><t>beside ${r}</t></is></c>${more}</row>`;
    const xml = sheetXml(
      [
        row(1, '<c r="C1" s="1"><v>4321</v></c><c r="D1"><v>99</v></c>'),
        row(2, "", ' ht="0.5" customHeight="1"'),
        row(3, ""),
      ].join(""),
      '<cols><col min="4" max="4" width="0.1" customWidth="1"/></cols>',
    ).replace("</worksheet>", '<mergeCells count="1"><mergeCell ref="A3:B3"/></mergeCells></worksheet>');
    const styles =
      '<?xml version="1.0"?><styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="1"><numFmt numFmtId="164" formatCode=";;;"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf/><xf numFmtId="164" applyNumberFormat="1"/></cellXfs></styleSheet>';
    const parts = bookParts({ S: "" }, { parts: { "xl/worksheets/sheet1.xml": xml, "xl/styles.xml": styles } });
    const rels = Buffer.from(parts["xl/_rels/workbook.xml.rels"]!)
      .toString()
      .replace(
        "</Relationships>",
        '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>',
      );
    const path = join(folder(), "book.xlsx");
    writeFileSync(path, zip({ ...parts, "xl/_rels/workbook.xml.rels": Buffer.from(rels) }));
    const out = join(folder(), "sent.xlsx");
    expect(recalc(path, "--send", out, "--only", "S").stderr).toBe("");
    const sent = await readXlsx(readFileSync(out));
    const values = sent.sheets[0]!.rows.flat().filter((value) => value !== null && value !== "");
    expect(values).toEqual(["seen 1", "beside 1", "seen 3"]);
  });
});
