import { describe, expect, it } from "vitest";
import { patchSheet, type CellChange } from "../../../functions/workbook/patchSheet";
import { sheetXml } from "./fixture";

const cells = (rows: string, ...changes: readonly CellChange[]): string =>
  /<sheetData>(.*)<\/sheetData>/s.exec(
    patchSheet(sheetXml(rows, '<dimension ref="A1:B2"/>'), changes, "sheet1.xml", 1),
  )![1]!;

describe("cells written into a sheet's part", () => {
  it.each([
    [
      "a value of a formula",
      '<row r="1"><c r="A1" s="3"><f>B1*2</f><v>4</v></c></row>',
      [{ row: 0, column: 0, value: 5 }],
      '<row r="1"><c r="A1" s="3"><f>B1*2</f><v>5</v></c></row>',
    ],
    [
      "an error",
      '<row r="1"><c r="A1" t="str"><f>x</f><v>a</v></c></row>',
      [{ row: 0, column: 0, value: "#N/A" }],
      '<row r="1"><c r="A1" t="e"><f>x</f><v>#N/A</v></c></row>',
    ],
    [
      "text with signs of XML and of replacement",
      '<row r="1"><c r="A1"><f>x</f></c></row>',
      [{ row: 0, column: 0, value: "a<b & $& $1" }],
      '<row r="1"><c r="A1" t="str"><f>x</f><v>a&lt;b &amp; $&amp; $1</v></c></row>',
    ],
    [
      "a typed value in place of a formula",
      '<row r="1"><c r="A1" cm="1" s="2"><f t="array" ref="A1">x</f><v>1</v></c></row>',
      [{ row: 0, column: 0, value: "3/4", formula: null }],
      '<row r="1"><c r="A1" s="2" t="inlineStr"><is><t>3/4</t></is></c></row>',
    ],
    [
      "a typed formula in place of a text",
      '<row r="1"><c r="A1" t="s"><v>7</v></c></row>',
      [{ row: 0, column: 0, value: 38.5, formula: 'SAW.AREA("round 7")' }],
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1">_xldudf_SAW_AREA(&quot;round 7&quot;)</f><v>38.5</v></c></row>',
    ],
    [
      "a cell emptied",
      '<row r="1"><c r="A1" s="1" t="s"><v>7</v></c></row>',
      [{ row: 0, column: 0, value: null, formula: null }],
      '<row r="1"><c r="A1" s="1"/></row>',
    ],
    [
      "a cell between two",
      '<row r="1" spans="1:3"><c r="A1"/><c r="C1"/></row>',
      [{ row: 0, column: 1, value: true }],
      '<row r="1"><c r="A1"/><c r="B1" t="b"><v>1</v></c><c r="C1"/></row>',
    ],
    [
      "rows before, between and after",
      '<row r="2"><c r="A2"/></row><row r="4"/>',
      [
        { row: 0, column: 0, value: 1 },
        { row: 2, column: 0, value: 2 },
        { row: 3, column: 1, value: 3 },
        { row: 5, column: 0, value: 4 },
      ],
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="2"><c r="A2"/></row><row r="3"><c r="A3"><v>2</v></c></row><row r="4"><c r="B4"><v>3</v></c></row><row r="6"><c r="A6"><v>4</v></c></row>',
    ],
    [
      "a spill that grows",
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">x</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>',
      [
        { row: 0, column: 0, value: 1, area: { top: 0, left: 0, bottom: 2, right: 0 } },
        { row: 2, column: 0, value: 3 },
      ],
      '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A3">x</f><v>1</v></c></row><row r="2"><c r="A2"><v>2</v></c></row><row r="3"><c r="A3"><v>3</v></c></row>',
    ],
    [
      "nothing where nothing is",
      '<row r="1"><c r="A1"/></row>',
      [{ row: 4, column: 4, value: null, formula: null }],
      '<row r="1"><c r="A1"/></row>',
    ],
    [
      "cells without addresses, another prefix",
      "<x:row><x:c><x:v>1</x:v></x:c><x:c><x:v>2</x:v></x:c></x:row>",
      [{ row: 0, column: 1, value: 9 }],
      "<x:row><x:c><x:v>1</x:v></x:c><x:c><x:v>9</x:v></x:c></x:row>",
    ],
  ] as const)("%s", (_, rows, changes, expected) => {
    const prefixed = rows.includes("<x:");
    const given = prefixed
      ? patchSheet(
          sheetXml("").replace("<sheetData></sheetData>", `<x:sheetData>${rows}</x:sheetData>`),
          changes,
          "sheet1.xml",
          1,
        )
      : cells(rows, ...changes);
    expect(prefixed ? /<x:sheetData>(.*)<\/x:sheetData>/s.exec(given)![1] : given).toBe(expected);
  });

  it("a sheet that was empty, and its reach", () => {
    const xml = sheetXml("", '<dimension ref="B2"/>').replace("<sheetData></sheetData>", "<sheetData/>");
    expect(patchSheet(xml, [{ row: 4, column: 27, value: 1 }], "sheet1.xml", 1)).toContain(
      '<dimension ref="B2:AB5"/><sheetData><row r="5"><c r="AB5"><v>1</v></c></row></sheetData>',
    );
  });
});
