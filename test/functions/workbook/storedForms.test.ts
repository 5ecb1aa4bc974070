import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { parseStringPromise } from "xml2js";
import { openParts } from "../../../functions/workbook/openParts";
import { withDynamicArrays } from "../../../functions/workbook/dynamicArrays";
import { partText, type Parts } from "../../../functions/workbook/parts";
import { packParts, patchBook } from "../../../functions/workbook/patchBook";
import { bookParts, folder, recalc, tableRelation, zip } from "./fixture";

/**
 * The form in which Excel keeps a custom function: cm="n", t="array", _xldudf_SAW_NAME, no aca or ca. Source: two Excel-saved
 * files quoted in public issue threads of the office-js repository, and the stuck form #NAME? of the same threads; not seen in Excel.
 */

const stuck = '<f t="array" aca="1" ref="A3" ca="1">SAW.AREA("flat 6x1")</f><v>#NAME?</v>';
const rows = [
  '<row r="1"><c r="A1"><f>SAW.AREA("round 7")</f><v>1</v></c><c r="B1"><f>SUM(A1:A3)</f><v>0</v></c></row>',
  '<row r="2"><c r="A2" s="0"><f>[2]!_xldudf_SAW_AREA("round 2")</f></c></row>',
  `<row r="3"><c r="A3" t="e" cm="1">${stuck}</c></row>`,
  `<row r="4"><c r="A4"><f>'C:\\old\\BOOK.XLAM'!_xldudf_SAW_AREA("round 2")</f></c></row>`,
  '<row r="5"><c r="A5"><f t="shared" si="0" ref="A5:A6">SAW.AREA(B5)</f></c><c r="B5" t="str"><v>round 1</v></c></row>',
  '<row r="6"><c r="A6"><f t="shared" si="0"/></c><c r="B6" t="str"><v>round 2</v></c></row>',
  '<row r="7"><c r="A7" t="e" cm="1"><f t="array" aca="1" ref="A7" ca="1">SAW.AREA(B5:B6)</f><v>#NAME?</v></c></row>',
].join("");
const foreignMetadata =
  '<?xml version="1.0"?><x:metadata xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:metadataTypes count="1"><x:metadataType name="XLRICHVALUE" minSupportedVersion="120000"/></x:metadataTypes><x:futureMetadata name="XLRICHVALUE" count="1"><x:bk><x:extLst/></x:bk></x:futureMetadata><x:cellMetadata count="1"><x:bk><x:rc t="1" v="0"/></x:bk></x:cellMetadata><x:valueMetadata count="1"><x:bk><x:rc t="1" v="0"/></x:bk></x:valueMetadata></x:metadata>';
const table =
  '<?xml version="1.0"?><table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="T" ref="D1:E3"><tableColumns count="2"><tableColumn id="1" name="size"/><tableColumn id="2" name="area"><calculatedColumnFormula>SAW.AREA(T[[#This Row],[size]])</calculatedColumnFormula></tableColumn></tableColumns></table>';

const write = (parts: Parts): { readonly out: string; readonly line: string } => {
  const at = folder();
  writeFileSync(join(at, "in.xlsx"), zip(parts));
  const run = recalc(join(at, "in.xlsx"), "--write", join(at, "out.xlsx"));
  expect([run.status, run.stderr]).toEqual([1, ""]);
  return { out: join(at, "out.xlsx"), line: run.stdout };
};
const sheetOf = (file: string): string => partText(openParts(readFileSync(file)), "xl/worksheets/sheet1.xml");

interface Metadata {
  readonly metadataTypes: readonly { readonly metadataType: readonly { readonly $: { readonly name: string } }[] }[];
  readonly futureMetadata: readonly { readonly $: { readonly name: string } }[];
  readonly cellMetadata: readonly {
    readonly bk: readonly { readonly rc: readonly { readonly $: { readonly t: string; readonly v: string } }[] }[];
  }[];
}

/** The type that a cell's cm leads to, read by a general reader of XML (xml2js). */
async function typeOf(parts: Parts, path: string, cm: number): Promise<string> {
  const { metadata } = (await parseStringPromise(partText(parts, path), {
    tagNameProcessors: [(name: string) => name.slice(name.indexOf(":") + 1)],
  })) as { readonly metadata: Metadata };
  const { t, v } = metadata.cellMetadata[0]!.bk[cm - 1]!.rc[0]!.$;
  const { name } = metadata.metadataTypes[0]!.metadataType[Number(t) - 1]!.$;
  const own = metadata.futureMetadata.find(({ $ }) => $.name === name);
  return `${name} ${JSON.stringify(own).includes("fDynamic") ? v : "no dynamic array"}`;
}

describe("recalc --write brings our functions into the form that Excel keeps", () => {
  const { out, line } = write({
    ...bookParts({ Sheet1: rows }),
  });
  const xml = sheetOf(out);

  it.each([
    ["a bare name", '<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_SAW_AREA(&quot;round 7&quot;)</f>'],
    ["another workbook's function", '<c r="A2" s="0" cm="1"><f t="array" ref="A2">_xldudf_SAW_AREA('],
    ["a stuck cell", '<c r="A3" cm="1"><f t="array" ref="A3">_xldudf_SAW_AREA(&quot;flat 6x1&quot;)</f><v>'],
    ["an add-in file's function", '<c r="A4" cm="1"><f t="array" ref="A4">_xldudf_SAW_AREA('],
    ["the leader of a shared formula", '<c r="A5" cm="1"><f t="array" ref="A5">_xldudf_SAW_AREA(B5)</f>'],
    ["its follower", '<c r="A6" cm="1"><f t="array" ref="A6">_xldudf_SAW_AREA(B6)</f>'],
    ["a stuck cell that fills two", '<c r="A7" cm="1"><f t="array" ref="A7:A8">_xldudf_SAW_AREA(B5:B6)</f>'],
    ["a native formula, as it was", '<c r="B1"><f>SUM(A1:A3)</f>'],
  ])("%s", (_, expected) => {
    expect(xml).toContain(expected);
    expect(xml).not.toMatch(/aca=|ca="1"|si=/);
  });
  it("says how many", () => {
    expect(line).toContain("7 formulas as Excel keeps them");
  });
  it("a second run finds the form right and writes the same bytes", () => {
    const again = join(folder(), "again.xlsx");
    expect(recalc(out, "--write", again).stdout).not.toContain("as Excel keeps them");
    const [first, second] = [openParts(readFileSync(out)), openParts(readFileSync(again))];
    expect(Object.keys(second)).toEqual(Object.keys(first));
    for (const [path, part] of Object.entries(first)) expect(Buffer.compare(second[path]!, part), path).toBe(0);
  });
  it("the chain from cm to a dynamic array, by a general reader of XML; relation and content type lead to the part", async () => {
    const parts = openParts(readFileSync(out));
    expect(await typeOf(parts, "xl/metadata.xml", 1)).toBe("XLDAPR 0");
    expect(partText(parts, "[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    expect(partText(parts, "xl/_rels/workbook.xml.rels")).toContain('Target="metadata.xml"');
  });
  it("another library (hucre) reads the formulas and the values", async () => {
    const book = await readXlsx(readFileSync(out));
    const cells = book.sheets[0]!.cells!;
    expect(cells.get("2,0")).toMatchObject({
      formula: '_xldudf_SAW_AREA("flat 6x1")',
      formulaResult: expect.closeTo(6, 9) as number,
    });
    expect(cells.get("0,1")!.formula).toBe("SUM(A1:A3)");
  });
});

describe("workbooks that have metadata, and tables", () => {
  it("rich values keep their number, the dynamic array takes the next", async () => {
    const parts: Parts = {
      ...bookParts({ Sheet1: '<row r="1"><c r="A1"><f>SAW.AREA("round 7")</f></c></row>' }),
    };
    const relations = partText(parts, "xl/_rels/workbook.xml.rels").replace(
      "</Relationships>",
      '<Relationship Id="rId9" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>',
    );
    const encoder = new TextEncoder();
    const { parts: ready, cm } = withDynamicArrays({
      ...parts,
      "xl/_rels/workbook.xml.rels": encoder.encode(relations),
      "xl/metadata.xml": encoder.encode(foreignMetadata),
    });
    expect(cm).toBe(2);
    expect(await typeOf(ready, "xl/metadata.xml", 2)).toBe("XLDAPR 0");
    const xml = partText(ready, "xl/metadata.xml");
    expect(xml).toContain('<x:metadataTypes count="2">');
    expect(xml.indexOf("<x:cellMetadata")).toBeLessThan(xml.indexOf("<x:valueMetadata"));
    expect(withDynamicArrays(ready)).toEqual({ parts: ready, cm: 2 });
  });
  it("a calculated column with our function says array, so that new rows get no @", () => {
    const { out } = write({
      ...bookParts(
        {
          Sheet1:
            '<row r="1"><c r="D1" t="str"><v>size</v></c><c r="E1" t="str"><v>area</v></c></row><row r="2"><c r="D2" t="str"><v>round 2</v></c><c r="E2"><f>SAW.AREA(T[[#This Row],[size]])</f></c></row>',
        },
        { parts: { "xl/tables/table1.xml": table, "xl/worksheets/_rels/sheet1.xml.rels": tableRelation } },
      ),
    });
    expect(partText(openParts(readFileSync(out)), "xl/tables/table1.xml")).toContain(
      '<calculatedColumnFormula array="1">_xldudf_SAW_AREA(T[[#This Row],[size]])</calculatedColumnFormula>',
    );
  });
  it("the samples' columns with our functions say so, native ones do not", () => {
    const xml = partText(openParts(readFileSync("docs/samples/estimate.xlsx")), "xl/tables/table1.xml");
    expect(xml).toContain('<calculatedColumnFormula array="1">_xldudf_SAW_QUOTE(');
    expect(xml).not.toMatch(/<calculatedColumnFormula>[^<]*_xldudf_/);
  });
  it("a cell typed in the page is kept so too", () => {
    const change = { row: 0, column: 0, value: 38.5, formula: '=SAW.AREA("round 7")' };
    const after = patchBook(bookParts({ Sheet1: "" }), new Map([["xl/worksheets/sheet1.xml", [change]]]));
    expect(partText(after, "xl/worksheets/sheet1.xml")).toContain(
      '<c r="A1" cm="1"><f t="array" ref="A1">_xldudf_SAW_AREA(&quot;round 7&quot;)</f><v>38.5</v></c>',
    );
    expect(partText(openParts(packParts(after)), "xl/metadata.xml")).toContain("XLDAPR");
  });
});
