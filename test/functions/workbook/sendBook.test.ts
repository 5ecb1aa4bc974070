import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { openParts } from "../../../functions/workbook/openParts";
import { readBook } from "../../../functions/workbook/readBook";
import { bookParts, folder, recalc, zip } from "./fixture";

/** Twenty things that a receiver must not find, each a word or number of its own somewhere in the workbook. */
const secrets = [
  "73.125",
  "SecretSheet",
  "SecretName",
  "secretComment",
  "secretThread",
  "8.0625",
  "secretHiddenRow",
  "secretHiddenText",
  "secretLink",
  "secretList",
  "secretRule",
  "secretHeader",
  "SecretAuthor",
  "SecretCompany",
  "secretCustom",
  "91.375",
  "secretAltText",
  "secretBook",
  "secretInFormula",
  "secretLeftover",
  "SecretStyle",
  "secretFormat",
] as const;

const rel = (rows: string): string =>
  `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${rows}</Relationships>`;
const kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

const quote = `<cols><col min="3" max="3" width="12" hidden="1" customWidth="1"/></cols>
<sheetData><row r="1"><c r="A1" t="s" s="1"><v>0</v></c><c r="B1"><f>SecretSheet!B2*2</f><v>146.25</v></c><c r="C1"><v>8.0625</v></c><c r="D1"><f>IF(B1&gt;1,"fine","secretInFormula")</f></c></row>
<row r="2" hidden="1"><c r="A2" t="inlineStr"><is><t>secretHiddenRow</t></is></c><c r="C2" t="inlineStr"><is><t>secretHiddenText</t></is></c></row>
<row r="3"><c r="A3" t="inlineStr"><is><t>round 7</t></is></c><c r="B3"><f>_xldudf_SAW_AREA(A3)</f></c><c r="D3"><v>5</v></c></row></sheetData>
<conditionalFormatting sqref="B1"><cfRule type="containsText" priority="1" operator="containsText" text="secretRule"><formula>NOT(ISERROR(SEARCH("secretRule",B1)))</formula></cfRule></conditionalFormatting>
<dataValidations count="1"><dataValidation type="list" sqref="A3"><formula1>"secretList,other"</formula1></dataValidation></dataValidations>
<hyperlinks><hyperlink ref="A3" r:id="rId9"/></hyperlinks><headerFooter><oddHeader>&amp;CsecretHeader</oddHeader></headerFooter><drawing r:id="rId8"/>`;

const sheet = (inner: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="${kind}">${inner}</worksheet>`;

function secretBook(): Uint8Array {
  const parts = bookParts(
    {
      Quote: "",
      SecretSheet:
        '<row r="1"><c r="A1" t="inlineStr"><is><t>Units</t></is></c></row><row r="2"><c r="B2"><v>73.125</v></c></row>',
    },
    {
      names: '<definedName name="SecretName">SecretSheet!$B$2</definedName>',
      parts: {
        "xl/worksheets/sheet1.xml": sheet(quote),
        "xl/sharedStrings.xml":
          '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>Quote for you</t></si><si><t>secretLeftover</t></si></sst>',
        "xl/styles.xml":
          '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="1"><numFmt numFmtId="164" formatCode="&quot;secretFormat&quot;0"/></numFmts><fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="14"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="3"><xf/><xf fontId="1" applyFont="1"/><xf numFmtId="164"/></cellXfs><cellStyles count="1"><cellStyle name="SecretStyle" xfId="0"/></cellStyles></styleSheet>',
        "xl/worksheets/_rels/sheet1.xml.rels": rel(
          `<Relationship Id="rId9" Type="${kind}/hyperlink" Target="https://example.test/secretLink" TargetMode="External"/><Relationship Id="rId7" Type="${kind}/comments" Target="../comments1.xml"/><Relationship Id="rId8" Type="${kind}/drawing" Target="../drawings/drawing1.xml"/>`,
        ),
        "xl/comments1.xml":
          '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>SecretAuthor</author></authors><commentList><comment ref="A1" authorId="0"><text><t>secretComment</t></text></comment></commentList></comments>',
        "xl/threadedComments/threadedComment1.xml": "<x>secretThread</x>",
        "xl/drawings/drawing1.xml":
          '<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="1" name="p" descr="secretAltText"/></xdr:nvPicPr></xdr:pic></xdr:wsDr>',
        "xl/charts/chart1.xml":
          '<c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:v>91.375</c:v></c:chart>',
        "xl/externalLinks/externalLink1.xml": "<externalLink>secretBook.xlsx</externalLink>",
        "customXml/item1.xml": "<x>secretCustom</x>",
        "docProps/core.xml":
          '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator>SecretAuthor</dc:creator></cp:coreProperties>',
        "docProps/app.xml":
          '<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Company>SecretCompany</Company></Properties>',
      },
    },
  );
  const more = (path: string, add: string, before: string): void => {
    parts[path] = strToU8(Buffer.from(parts[path]!).toString().replace(before, `${add}${before}`));
  };
  more(
    "xl/_rels/workbook.xml.rels",
    `<Relationship Id="rId91" Type="${kind}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rId92" Type="${kind}/styles" Target="styles.xml"/>`,
    "</Relationships>",
  );
  more(
    "_rels/.rels",
    `<Relationship Id="rId93" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties" Target="docProps/core.xml"/>`,
    "</Relationships>",
  );
  return zip(parts);
}

const contents = (bytes: Uint8Array): string =>
  Object.entries(unzipSync(bytes))
    .map(([path, part]) => `${path}\n${new TextDecoder("latin1").decode(part)}`)
    .join("\n");

describe("--send", () => {
  const dir = folder();
  const [file, out] = [join(dir, "book.xlsx"), join(dir, "quote.xlsx")];
  writeFileSync(file, secretBook());
  const run = recalc(file, "--send", out, "--only", "Quote");

  it("every secret is in the workbook to begin with, and none of them in any part of what is sent", () => {
    expect(secrets.filter((s) => !contents(secretBook()).includes(s))).toEqual([]);
    expect(run.stderr).toBe("");
    expect(secrets.filter((s) => contents(readFileSync(out)).toLowerCase().includes(s.toLowerCase()))).toEqual([]);
  });

  it("what is sent holds the values as calculated now, the visible rows and columns alone, and no formula", () => {
    const book = readBook(openParts(readFileSync(out)));
    expect(book.sheets.map((s) => s.name)).toEqual(["Quote"]);
    expect(book.sheets[0]!.cells.map((c) => [c.row, c.column, c.value, c.formula])).toEqual([
      [0, 0, "Quote for you", undefined],
      [0, 1, 146.25, undefined],
      [0, 2, "fine", undefined],
      [1, 0, "round 7", undefined],
      [1, 1, expect.closeTo(38.4845, 4), undefined],
      [1, 2, 5, undefined],
    ]);
    expect(contents(readFileSync(out))).toMatch(/<b\/>/);
    expect(book.names).toEqual([]);
  });

  it("the same workbook gives the same bytes", () => {
    const again = join(dir, "again.xlsx");
    recalc(file, "--send", again, "--only", "Quote");
    expect(Buffer.compare(readFileSync(again), readFileSync(out))).toBe(0);
  });

  it("an unknown sheet is refused with the names that there are, and nothing is written", () => {
    const wrong = recalc(file, "--send", join(dir, "no.xlsx"), "--only", "Quotes");
    expect(wrong.status).toBe(2);
    expect(wrong.stderr).toContain('has no sheet "Quotes"; its sheets are Quote, SecretSheet');
    expect(() => readFileSync(join(dir, "no.xlsx"))).toThrow();
  });
});
