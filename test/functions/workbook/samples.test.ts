import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { addressOf, areaOf, inArea } from "../../../functions/formula/cellAddress";
import { makeSample } from "../../../functions/workbook/makeSample";
import { openParts } from "../../../functions/workbook/openParts";
import { readBook } from "../../../functions/workbook/readBook";
import { sampleBooks } from "../../../functions/workbook/samples/books";
import { process, saws } from "../../../functions/workbook/samples/process";
import { childrenOf, elements, readXml } from "../../../functions/workbook/xml";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { CellError } from "../../../functions/kinds/cell";
import { Memo } from "../../../functions/bind/memo";
import { builtInMaterials } from "../../../src/material/builtInMaterials";
import { evaluate } from "../../browser/evaluate";

/** The workbooks of docs/samples, read back part by part. */

const files = sampleBooks.map((sample) => {
  const bytes = new Uint8Array(readFileSync(`docs/samples/${sample.file}`));
  const parts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]));
  return { sample, file: sample.file, bytes, parts, book: readBook(openParts(bytes)) };
});
type File = (typeof files)[number];
const sheetPart = ({ book, parts }: File, name: string): string =>
  parts[book.sheets.find((s) => s.name === name)!.part]!;
const all = (xml: string, name: string) => elements(readXml(xml, name), name);

describe.each(files.map((f) => [f.file, f] as const))("%s", (_, f) => {
  const { sample, parts, book } = f;

  it("is what npm run samples writes, byte for byte", async () => {
    expect(Buffer.compare(Buffer.from(await makeSample(sample)), Buffer.from(f.bytes)), "run npm run samples").toBe(0);
  });

  it("has a content type for every part, and every relationship leads to a part", () => {
    const types = parts["[Content_Types].xml"]!;
    const overrides = all(types, "Override").map((o) => o.attributes["PartName"]!);
    const defaults = all(types, "Default").map((d) => d.attributes["Extension"]!);
    const paths = Object.keys(parts);
    for (const path of paths.filter((p) => p !== "[Content_Types].xml"))
      expect(overrides.includes(`/${path}`) || (path.endsWith(".rels") && defaults.includes("rels")), path).toBe(true);
    for (const name of overrides) expect(paths, name).toContain(name.slice(1));
    for (const path of paths.filter((p) => p.endsWith(".rels"))) {
      const from = path.replace(/_rels\/[^/]*$/, "");
      for (const relation of all(parts[path]!, "Relationship")) {
        const target = new URL(relation.attributes["Target"]!, `http://zip/${from}`).pathname.slice(1);
        expect(paths, `${path}: ${target}`).toContain(target);
      }
    }
  });

  it("is not calculated on opening, and names no person, place or time", () => {
    expect(parts["xl/workbook.xml"]).not.toContain("fullCalcOnLoad");
    expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
    expect(parts["docProps/core.xml"]).not.toMatch(/creator|lastModifiedBy|created|modified/);
    expect(Object.values(parts).join("")).not.toMatch(/\/(work|home|root|tmp)\//);
  });

  it("shows the same values as the functions give without a spreadsheet", () => {
    let compared = 0;
    for (const [name, cells] of evaluate(sample.sheets)) {
      const kept = new Map(
        book.sheets.find((s) => s.name === name)!.cells.map((c) => [addressOf(c.row, c.column), c.value]),
      );
      for (const [at, expected] of cells) {
        const got = kept.get(at) ?? "";
        if (typeof expected === "number")
          expect(Math.abs(Number(got) - expected), `${name}!${at}`).toBeLessThanOrEqual(
            1e-11 * Math.max(1, Math.abs(expected)),
          );
        else expect(got, `${name}!${at}`).toBe(expected instanceof CellError ? expected.code : (expected ?? ""));
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(350);
  });

  it("marks each formula that calls ours as a dynamic array of the cells that it fills", () => {
    for (const sheet of sample.sheets) {
      const xml = sheetPart(f, sheet.name);
      for (const element of all(xml, "c")) {
        const { r, cm } = element.attributes;
        const [formula] = childrenOf(element, "f");
        if (formula?.text.includes("_xldudf_SAW_") !== true) continue;
        const { t, ref } = formula.attributes;
        expect([cm, t], `${sheet.name}!${r!}`).toEqual(["1", "array"]);
        expect(ref, `${sheet.name}!${r!}`).toBe((sheet.spills ?? []).find((area) => area.startsWith(`${r!}:`)) ?? r);
        expect(childrenOf(element, "v")[0], `${sheet.name}!${r!} has a value`).toBeDefined();
      }
      expect(xml).not.toMatch(/<f[^>]*>[^<]*\bSAW\./);
    }
  });

  it("has tables with ids and names of their own, headed by their cells, apart from each other and from spills", () => {
    const tables = Object.entries(parts)
      .filter(([path]) => path.startsWith("xl/tables/"))
      .map(
        ([, xml]) =>
          ({ ...readXml(xml, "table").attributes, xml }) as unknown as {
            id: string;
            displayName: string;
            ref: string;
            xml: string;
          },
      );
    expect(tables.length).toBe(sample.sheets.reduce((n, s) => n + (s.tables ?? []).length, 0));
    expect(new Set(tables.map((t) => t.id)).size).toBe(tables.length);
    expect(
      new Set([...tables.map((t) => t.displayName), ...book.names.map((n) => n.name)]).size,
    ).toBeGreaterThanOrEqual(tables.length + 1);
    for (const { name, sheet, area, columns } of book.tables) {
      const cells = book.sheets.find((s) => s.name === sheet)!.cells;
      const heads = columns.map((__, i) => cells.find((c) => c.row === area.top && c.column === area.left + i));
      expect(
        heads.map((h) => h?.value),
        name,
      ).toEqual(columns);
      expect(
        heads.every((h) => h?.formula === undefined),
        name,
      ).toBe(true);
      expect(new Set(columns.map((c) => c.toLowerCase())).size, name).toBe(columns.length);
      const own = sample.sheets.find((s) => s.name === sheet)!;
      for (const other of [
        ...(own.spills ?? []),
        ...(own.merged ?? []),
        ...own.tables!.filter((t) => t.name !== name).map((t) => t.area),
      ]) {
        const { top, left, bottom, right } = areaOf(other)!;
        const meets = top <= area.bottom && bottom >= area.top && left <= area.right && right >= area.left;
        expect(meets, `${name} and ${other}`).toBe(false);
      }
    }
    for (const { xml } of tables) expect(xml).toContain('tableStyleInfo name="TableStyle');
  });

  it("offers its lists, keeps its headings in sight, and knows its blocks by name", () => {
    for (const sheet of sample.sheets) {
      const xml = sheetPart(f, sheet.name);
      const lists = all(xml, "dataValidation").map((l) => ({
        at: l.attributes,
        words: childrenOf(l, "formula1")[0]!.text,
      }));
      expect(lists.map((l) => [l.at["type"], l.at["sqref"], l.words])).toEqual(
        (sheet.lists ?? []).map((l) => ["list", l.area, `"${l.words.join(",")}"`]),
      );
      for (const l of lists) expect(l.words.length).toBeLessThan(255);
      const pane = elements(readXml(xml, "sheet"), "pane")[0]?.attributes ?? {};
      expect([Number(pane["ySplit"] ?? 0), Number(pane["xSplit"] ?? 0), pane["state"]]).toEqual([
        sheet.frozen?.rows ?? 0,
        sheet.frozen?.columns ?? 0,
        sheet.frozen === undefined ? undefined : "frozen",
      ]);
    }
    const named = sample.sheets.flatMap((s) =>
      Object.entries(s.names ?? {}).map(([name, area]) => [
        name,
        `${s.name}!${area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`,
      ]),
    );
    expect(book.names.filter((n) => n.name !== "_xlnm.Print_Area").map((n) => [n.name, n.refersTo])).toEqual(named);
    expect(named.length).toBe(sample.file === "records.xlsx" ? 2 : 1);
  });

  it("keeps text that looks like a number unmarked, each sheet's elements in the order that Excel demands", () => {
    const order = [
      "sheetPr",
      "dimension",
      "sheetViews",
      "sheetFormatPr",
      "cols",
      "sheetData",
      "mergeCells",
      "dataValidations",
      "printOptions",
      "pageMargins",
      "pageSetup",
      "headerFooter",
      "ignoredErrors",
      "drawing",
      "tableParts",
    ];
    for (const { name, part } of book.sheets) {
      const body = parts[part]!.replace(/<sheetData>[\s\S]*<\/sheetData>/, "<sheetData/>").replace(
        /^[\s\S]*?<worksheet[^>]*>/,
        "",
      );
      const top = [...body.matchAll(/<(\/?)(\w+)[^>]*?(\/?)>/g)].reduce<{ depth: number; names: string[] }>(
        ({ depth, names }, [, close, element, empty]) => ({
          depth: depth + (close === "/" ? -1 : empty === "/" ? 0 : 1),
          names: depth === 0 && close === "" ? [...names, element!] : names,
        }),
        { depth: 0, names: [] },
      ).names;
      expect(
        top.map((t) => order.indexOf(t)),
        name,
      ).toEqual(top.map((t) => order.indexOf(t)).sort((a, b) => a - b));
      expect(top.every((t) => order.includes(t)) && top.includes("ignoredErrors"), `${name}: ${top.join(" ")}`).toBe(
        true,
      );
    }
  });

  it("has charts with titled axes, each holding what its cells hold", () => {
    const charts = Object.entries(parts).filter(([path]) => path.startsWith("xl/charts/chart"));
    expect(charts.length).toBe(sample.sheets.reduce((n, s) => n + (s.charts ?? []).length, 0));
    for (const [path, xml] of charts) {
      expect([...xml.matchAll(/<c:title>/g)].length, path).toBe(3);
      const references = [...all(xml, "numRef"), ...all(xml, "strRef")];
      expect(references.length, path).toBeGreaterThanOrEqual(3);
      for (const element of references) {
        const [sheet, area] = childrenOf(element, "f")[0]!.text.split("!") as [string, string];
        const cells = book.sheets
          .find((s) => s.name === sheet)!
          .cells.filter((c) => inArea(areaOf(area)!, c.row, c.column));
        expect(
          elements(element, "v").map((v) => v.text),
          `${path} ${area}`,
        ).toEqual(cells.map((c) => String(c.value)));
        expect(cells.length).toBe(Number(elements(element, "ptCount")[0]!.attributes["val"]));
      }
    }
  });

  it("has a first sheet that says what it is, and room for every cell", () => {
    expect(book.sheets[0]!.name).toBe("Start");
    expect(book.sheets[0]!.cells.map((c) => c.value).join(" ")).toMatch(
      /invented[\s\S]*add-in[\s\S]*#NAME\?[\s\S]*Lock out the saw[\s\S]*manual, local codes and a qualified person/,
    );
    for (const sheet of sample.sheets)
      for (const [r, row] of sheet.rows.entries())
        expect(row.cells.length, `${sheet.name} row ${r + 1}`).toBeLessThanOrEqual(sheet.widths.length);
  });
});

describe("the operator's card", () => {
  const f = files.find((file) => file.file === "process.xlsx")!;
  const xml = sheetPart(f, "Card");

  it("prints on one page", () => {
    expect(xml).toContain('<pageSetUpPr fitToPage="1"/>');
    expect(all(xml, "pageSetup")[0]!.attributes).toMatchObject({
      orientation: "portrait",
      fitToWidth: "1",
      fitToHeight: "1",
    });
    expect(f.book.names.find((n) => n.name === "_xlnm.Print_Area" && n.sheet === "Card")?.refersTo).toBe(
      "Card!$A$1:$E$32",
    );
  });

  it("has room for the longest text of any grade on any of the saws, 75 characters a line", () => {
    const texts = f.sample.sheets
      .find((s) => s.name === "Card")!
      .rows.filter((r) => r.style === "text")
      .map((r) => ({ show: /"([a-z -]+)",,/.exec(String(r.cells[1]))![1]!, lines: r.height! / 20 }));
    expect(texts.map((t) => t.show)).toEqual(["limit", "change first", "break-in", "notes", "basis", "cautions"]);
    const cutData = catalogue.find((e) => e.name === "CUTDATA")!;
    const block = process.rows.slice(4, 14).map((r) => r.cells.slice(0, 4));
    let seen = 0;
    for (const saw of saws) {
      const rows = call(
        cutData,
        [
          [["tube 6x0.5"]],
          builtInMaterials().map((m) => [m.key]),
          [["bi-metal"]],
          [texts.map((t) => t.show)],
          null,
          block,
          [[saw]],
        ],
        new Memo(),
      );
      for (const [i, row] of rows.entries())
        for (const [c, cell] of row.entries())
          if (typeof cell === "string") {
            expect(cell.length / 75, `${builtInMaterials()[i]!.key}, ${saw}: ${cell}`).toBeLessThanOrEqual(
              texts[c]!.lines,
            );
            seen += 1;
          }
    }
    expect(seen).toBeGreaterThan(1000);
  });

  it("computes every number on it", () => {
    const cells = f.book.sheets.find((s) => s.name === "Card")!.cells;
    expect(cells.filter((c) => typeof c.value === "number" && c.formula === undefined)).toEqual([]);
    expect(cells.filter((c) => c.formula !== undefined).length).toBeGreaterThanOrEqual(18);
  });
});
