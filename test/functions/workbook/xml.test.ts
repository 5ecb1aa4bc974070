import { strToU8 } from "fflate";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BookFault } from "../../../functions/workbook/fault";
import { openParts } from "../../../functions/workbook/openParts";
import { patchBook } from "../../../functions/workbook/patchBook";
import { patchSheet } from "../../../functions/workbook/patchSheet";
import { readBook } from "../../../functions/workbook/readBook";
import {
  childrenOf,
  edited,
  elements,
  innerEnd,
  innerStart,
  placedXml,
  readXml,
  startTag,
} from "../../../functions/workbook/xml";
import { listOf } from "../../../functions/workbook/xmlList";
import { bookParts, sheetXml, zip } from "./fixture";

/** The cells of a sheet's part, as the whole way from the file gives them. */
const read = (xml: string, more: Readonly<Record<string, string>> = {}) => {
  const parts = { "xl/worksheets/sheet1.xml": xml, ...more };
  return readBook(openParts(zip(bookParts({ Quote: "" }, { parts })))).sheets[0]!.cells.map((c) => [
    `${c.row},${c.column}`,
    c.formula?.text,
    c.value,
  ]);
};
const refusal = (act: () => unknown): string => {
  try {
    act();
  } catch (problem) {
    if (problem instanceof BookFault) return problem.message;
    throw problem;
  }
  return "";
};
const cell = (inner: string, more = ""): string => sheetXml(`<row r="1"><c r="A1"${more}>${inner}</c></row>`);
const to9 = [{ row: 0, column: 0, value: 9 }];

describe("XML that a workbook may hold", () => {
  it("comments hide what stands in them, in a row, between rows and before the rows", () => {
    const rows =
      '<!--<row r="1"><c r="A1"><v>1</v></c></row>--><row r="2"><!--<c r="A2"><v>2</v></c>--><c r="B2"><v>3<!--4--></v></c></row>';
    expect(read(sheetXml(rows, "<!--<sheetData><row/></sheetData>-->"))).toEqual([["1,1", undefined, 3]]);
  });

  it("a commented-out sheetData is left alone, and the real one is patched", () => {
    const before = '<!-- <sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData> > --><?note <sheetData> ?>';
    const row = (v: number): string => `<row r="1"><!-- ' --><c r="A1" ><v>${v}</v></c></row>`;
    expect(read(sheetXml(row(1), before))).toEqual([["0,0", undefined, 1]]);
    expect(patchSheet(sheetXml(row(1), before), to9, "sheet1.xml", 1)).toBe(
      sheetXml(row(9).replace('"A1" >', '"A1">'), before),
    );
  });

  it("CDATA is text, in values, formulas and shared strings", () => {
    expect(read(cell("<v><![CDATA[a<b>&amp;]]>&amp;c</v>", ' t="str"'))).toEqual([["0,0", undefined, "a<b>&amp;&c"]]);
    expect(read(cell('<f><![CDATA["<c>"&]]>B1</f><v>1</v>'))).toEqual([["0,0", '"<c>"&B1', 1]]);
    expect(patchSheet(cell("<v><![CDATA[</v></c></row>]]></v>", ' t="str"'), to9, "sheet1.xml", 1)).toBe(
      cell("<v>9</v>"),
    );
  });

  it("references to characters and the five entities of XML are those characters; line ends are one", () => {
    expect(read(cell("<v>&lt;&gt;&amp;amp;&quot;&apos;&#65;&#x1F600;&#13;\r\n\r.</v>", ' t="str"'))).toEqual([
      ["0,0", undefined, "<>&amp;\"'A\u{1F600}\r\n\n."],
    ]);
    expect(read(cell("<is><r><t>a</t></r><rPh><t>b</t></rPh><r><t>_x000D_c</t></r></is>", ' t="inlineStr"'))).toEqual([
      ["0,0", undefined, "a\rc"],
    ]);
  });

  it("a > in an attribute ends no tag, and quotes of both kinds are quotes", () => {
    const xml = sheetXml(`<row r='1' x="</row>>"><c r='A1' s="/>"><v>1</v></c></row>`.replace("</row>>", "&lt;/row>>"));
    expect(read(xml)).toEqual([["0,0", undefined, 1]]);
    expect(patchSheet(xml, to9, "sheet1.xml", 1)).toBe(xml.replace("<v>1<", "<v>9<"));
  });
});

const bomb = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>';
const part = "its part xl/worksheets/sheet1.xml is not well-formed";

describe("XML that is refused, in a line that names the part", () => {
  it.each([
    [
      "an entity that only programs know",
      cell("<v>&constructor;</v>", ' t="str"'),
      `${part} (Named entity isn't defined: &constructor;)`,
    ],
    ["an entity that nobody knows", cell("<v>&nbsp;</v>", ' t="str"'), `${part} (Named entity isn't defined: &nbsp;)`],
    [
      "a character beyond Unicode",
      cell("<v>&#x110000;</v>", ' t="str"'),
      `${part} (Character reference resolves to an invalid character)`,
    ],
    ["a character that XML does not have", cell("<v>\u0001</v>", ' t="str"'), `${part} (Invalid character)`],
    ["an attribute twice", cell("<v>1</v>", ' s="1" s="2"'), `${part} (Duplicate attribute: s)`],
    [
      "a cell without its end",
      sheetXml('<row r="1"><c r="A1"><v>1</v></row>'),
      `${part} (an element of its sheetData has no end)`,
    ],
    ["a row without its end", sheetXml('<row r="1"><c r="A1"/>'), `${part} (an element of its sheetData has no end)`],
    [
      "ends in another order",
      sheetXml('<row r="1"><c r="A1"><v>1</c></v></row>'),
      `${part} (Missing end tag for element v)`,
    ],
    ["text cut inside a tag", '<worksheet><sheetData><row r="1', `${part} (it ends inside its markup)`],
    ["a comment without its end", "<worksheet><!-- <sheetData/></worksheet>", `${part} (it ends inside its markup)`],
    [
      "a sheet without its end",
      "<worksheet><sheetData></sheetData>",
      `${part} (Missing end tag for element worksheet)`,
    ],
    ["two roots", "<worksheet/><worksheet/>", `${part} (Extra content at the end of the document)`],
    ["nothing at all", "", `${part} (Root element is missing or invalid)`],
    [
      "elements in each other without end",
      cell("<x>".repeat(200_000) + "</x>".repeat(200_000)),
      `${part} (its elements lie too deep in each other)`,
    ],
    [
      "a document type",
      `${bomb}${sheetXml("").slice(sheetXml("").indexOf("<worksheet"))}`,
      "has a document type, which no workbook needs (xl/worksheets/sheet1.xml)",
    ],
  ])("%s", (_, xml, says) => {
    expect(refusal(() => read(xml))).toContain(says);
    expect(refusal(() => read(xml))).not.toContain("\n");
  });

  it.each(["xl/workbook.xml", "[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/sharedStrings.xml"])(
    "%s cut short",
    (path) => {
      const relation = '<Relationship Id="rId9" Type="x/sharedStrings" Target="sharedStrings.xml"/></Relationships>';
      const parts = bookParts({ Quote: "" }, { parts: { "xl/sharedStrings.xml": "<sst><si><t>a</t></si></sst>" } });
      const text = (p: string): string => new TextDecoder().decode(parts[p]);
      parts["xl/_rels/workbook.xml.rels"] = strToU8(
        text("xl/_rels/workbook.xml.rels").replace("</Relationships>", relation),
      );
      expect(refusal(() => readBook(openParts(zip(parts))))).toBe("");
      const cut = { ...parts, [path]: strToU8(text(path).slice(0, -3)) };
      expect(refusal(() => readBook(openParts(zip(cut))))).toContain(`its part ${path} is not well-formed (`);
    },
  );

  it("a document type and its entities by any way in", () => {
    expect(refusal(() => readXml(`<?xml version="1.0"?>${bomb}<x>&b;</x>`, "a.xml"))).toBe(
      "has a document type, which no workbook needs (a.xml)",
    );
    expect(refusal(() => patchSheet(`${bomb}<x><sheetData/></x>`, to9, "a.xml", 1))).toContain("has a document type");
  });

  it("names of any length and kind, in one line of few words", () => {
    expect(refusal(() => readXml(`<${"a".repeat(5000)}>`, "a\nb.xml")).length).toBeLessThan(200);
    expect(refusal(() => readXml("<a>", "a\nb.xml"))).not.toContain("\n");
  });

  it.each(["<row>", "<", "<!--", "<![CDATA[", "<a b='", "&", "\r", "<a/>", "</a>", "<?", '"', "]]>", "<c>\r"])(
    "a megabyte of %j takes no long time",
    (piece) => {
      const before = performance.now();
      for (const xml of [
        sheetXml(piece.repeat(1e6 / piece.length)),
        cell(piece.repeat(1e6 / piece.length), ' t="str"'),
      ])
        refusal(() => read(xml));
      expect(performance.now() - before).toBeLessThan(10_000);
    },
  );
});

describe("places", () => {
  const xml =
    "<x:a ><!-- c --><x:b k = '1' r=\"2\">t<![CDATA[<]]></x:b ><b/><b></b>\r\n\u{1F600}<d>\u{1F600}</d></x:a>";
  it("are those of the text, whatever stands before them", () => {
    const root = placedXml(xml, "a.xml");
    expect(
      elements(root, "b")
        .concat(elements(root, "d"))
        .map((e) => xml.slice(e.start, e.end)),
    ).toEqual([`<x:b k = '1' r="2">t<![CDATA[<]]></x:b >`, "<b/>", "<b></b>", "<d>\u{1F600}</d>"]);
    expect(childrenOf(root, "b").map((e) => xml.slice(innerStart(xml, e), innerEnd(xml, e)))).toEqual([
      "t<![CDATA[<]]>",
      "",
      "",
    ]);
    expect(childrenOf(root, "b").map((e) => startTag(xml, e, "k"))).toEqual(['<x:b r="2"', "<b", "<b"]);
    expect(xml.slice(innerStart(xml, root), innerEnd(xml, root))).toBe(xml.slice("<x:a >".length, -"</x:a>".length));
    const [b] = childrenOf(root, "b");
    expect(edited(xml, [{ start: b!.start, end: b!.end, text: "$&" }])).toBe(xml.replace(/<x:b.*<\/x:b >/, () => "$&"));
  });

  it("a list is its items and the rest, whatever stands between them (against the whole read at once)", () => {
    const item = fc.constantFrom(
      "<i/>",
      '<i k="/>"><j/><i>x</i></i>',
      "<o:i>&lt;</o:i>",
      "<i><![CDATA[</i>]]></i>",
      "<i ></i >",
    );
    const gap = fc.constantFrom("", "\n ", "<!-- <i/> -->", "<?p <i> ?>", "<!-- </l> ' -->");
    fc.assert(
      fc.property(fc.array(fc.tuple(gap, item)), gap, gap, (items, last, around) => {
        const text = `${around}<r>${around}<x:l a="b">${items.map((p) => p.join("")).join("")}${last}</x:l><z/></r>`;
        const list = listOf(text, "l", "a.xml");
        const whole = elements(placedXml(text, "a.xml"), "l")[0]!;
        expect(list.items.map((i) => [i.start, i.end])).toEqual(childrenOf(whole, "i").map((e) => [e.start, e.end]));
        expect(list.items.map((i) => i.children)).toEqual(
          childrenOf(whole, "i").map((e) => e.children.filter((c) => c.type === "element").length),
        );
        expect([list.place!.start, list.place!.open, list.place!.close]).toEqual([
          whole.start,
          innerStart(text, whole),
          innerEnd(text, whole),
        ]);
        const z = elements(placedXml(list.rest, "a.xml"), "z")[0]!;
        expect(text.slice(list.at(z.start), list.at(z.end))).toBe("<z/>");
      }),
    );
  });
});

describe("a workbook with a cell written into it", () => {
  it("keeps every other letter: other cells, comments, blanks, line ends and prefixes", () => {
    const rows = (v: string): string =>
      `\r\n  <!-- <row r="1"/> --><row  r='1' spans="1:2" >\r\n<c r='A1'   s = "3">${v}</c>\t<c r="B1" t='s'><v>0</v></c><extLst/></row >\r\n`;
    const parts = bookParts({ Quote: rows("<f >B1</f> <v>1</v>") });
    const xml = patchBook(parts, new Map([["xl/worksheets/sheet1.xml", to9]]))["xl/worksheets/sheet1.xml"]!;
    expect(new TextDecoder().decode(xml)).toBe(
      sheetXml(rows("<f >B1</f> <v>9</v>").replace('spans="1:2" >', 'spans="1:2">').replace("</row >", "</row>")),
    );
  });

  it("loses the note of the order of its formulas, and only that, when a formula goes", () => {
    const chain = '<Relationship Id="rId9" Type="x/calcChain" Target="calcChain.xml"/>';
    const override = '<Override PartName="/xl/calcChain.xml" ContentType="x"/>';
    const parts = bookParts({ Quote: "" }, { parts: { "xl/calcChain.xml": "<calcChain/>" } });
    const text = (p: string): string => new TextDecoder().decode(parts[p]);
    const [types, rels] = [text("[Content_Types].xml"), text("xl/_rels/workbook.xml.rels")];
    parts["[Content_Types].xml"] = strToU8(types.replace("</Types>", `<!-- ${override} -->${override}</Types>`));
    parts["xl/_rels/workbook.xml.rels"] = strToU8(rels.replace("</Relationships>", `${chain}</Relationships>`));
    const after = patchBook(parts, new Map([["xl/worksheets/sheet1.xml", [{ ...to9[0]!, formula: null }]]]));
    expect(Object.keys(after)).toEqual(Object.keys(parts).filter((p) => p !== "xl/calcChain.xml"));
    expect(new TextDecoder().decode(after["[Content_Types].xml"])).toBe(
      types.replace("</Types>", `<!-- ${override} --></Types>`),
    );
    expect(new TextDecoder().decode(after["xl/_rels/workbook.xml.rels"])).toBe(rels);
  });
});
