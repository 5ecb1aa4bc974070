import { writeXlsx, type CellStyle, type SheetChart, type WriteSheet } from "hucre";
import { withCalculatedColumns } from "./calculatedColumns";
import { addressOf, areaOf, columnName, inArea, type Area } from "../formula/cellAddress";
import { tokensOf } from "../formula/tokens";
import { finishBook } from "./finishBook";
import { toFile } from "./formulaText";
import {
  isInput,
  isSet,
  lookOf,
  sideOf,
  type RowStyle,
  type SampleBook,
  type SampleChart,
  type SampleRow,
  type SampleSeries,
  type SampleSheet,
} from "./samples/sheet";
import { withColumns, withTables } from "./structured";

/** What the samples become in a file; the library that writes it is known here and where sheets are sent on. */

const solid = (rgb: string): NonNullable<CellStyle["fill"]> => ({
  type: "pattern",
  pattern: "solid",
  fgColor: { rgb },
});
const thin = (rgb: string): NonNullable<CellStyle["border"]> => {
  const side = { style: "thin", color: { rgb } } as const;
  return { top: side, bottom: side, left: side, right: side };
};
const dark = { rgb: "1F3A4D" };
/** Every font in full: a part that is left out is another program's choice. */
const font = (more: CellStyle["font"] = {}): NonNullable<CellStyle["font"]> => ({
  name: "Calibri",
  size: 11,
  family: 2,
  ...more,
});
const looks: Readonly<Record<RowStyle, CellStyle>> = {
  title: { font: font({ bold: true, size: 14, color: dark }) },
  legend: { font: font({ italic: true }) },
  note: { font: font({ italic: true }) },
  units: { font: font({ italic: true, size: 9, color: { rgb: "5C6770" } }), alignment: { vertical: "bottom" } },
  head: {
    font: font({ bold: true, color: dark }),
    fill: solid("DFE8EE"),
    alignment: { wrapText: true, vertical: "center" },
  },
  label: { font: font({ bold: true, color: dark }) },
  plain: {},
  text: { alignment: { wrapText: true, vertical: "top" } },
};
const input: CellStyle = { fill: solid("FFF6D6"), border: thin("D8C98A") };
const sides = { left: {}, right: { horizontal: "right" }, inset: { horizontal: "left", indent: 1 } } as const;

function styleOf(sheet: SampleSheet, row: SampleRow, r: number, c: number): CellStyle {
  const look = looks[lookOf(row, c)];
  const alignment = { ...look.alignment, ...sides[sideOf(sheet, r, c)] };
  const format = row.style === "plain" ? row.formats[c] : undefined;
  return {
    ...look,
    ...(Object.keys(alignment).length === 0 ? {} : { alignment }),
    ...(format === undefined || format === "General" ? {} : { numFmt: format }),
    ...(isInput(sheet, r, c) ? input : {}),
  };
}

/** Excel marks every call of a function that may give several cells, and puts "@" before one that is not marked. */
const callsOurs = (formula: string): boolean =>
  tokensOf(formula).some(({ kind, text }) => kind === "function" && text.startsWith("SAW."));

/** The headings of a table are read from its cells: written twice they would drift. */
function columnNames(sheet: SampleSheet, area: string): string[] {
  const { top, left, right } = areaOf(area)!;
  return Array.from({ length: right - left + 1 }, (_, i) => String(sheet.rows[top]?.cells[left + i] ?? ""));
}

/** A formula as the file keeps it; it names a table's columns, and inside a table its own row's cells, by their headings. */
function stored(sheet: SampleSheet, formula: string, row: number, column: number): string {
  const tables = (sheet.tables ?? []).map(({ name, area }) => ({
    name,
    sheet: sheet.name,
    area: areaOf(area)!,
    columns: columnNames(sheet, area),
    headers: true,
    totals: false,
  }));
  const own = tables.find(({ area }) => inArea(area, row, column));
  return toFile(
    own === undefined ? withColumns(formula, tables) : withTables(formula, own, { sheet: sheet.name, row }),
  );
}

type Cells = NonNullable<WriteSheet["cells"]>;

function cellsOf(sheet: SampleSheet): Cells {
  const spills = new Map((sheet.spills ?? []).map((area) => [area.split(":")[0], area]));
  const cells: Cells = new Map();
  for (const [r, row] of sheet.rows.entries()) {
    for (let c = 0; c < sheet.widths.length; c += 1) {
      if (!isSet(sheet, r, c)) continue;
      const value = row.cells[c] ?? null;
      const style = styleOf(sheet, row, r, c);
      if (typeof value !== "string" || !value.startsWith("="))
        cells.set(`${r},${c}`, { value: value === "" ? null : value, style });
      else if (!callsOurs(value) && !spills.has(addressOf(r, c)))
        cells.set(`${r},${c}`, { style, formula: stored(sheet, value, r, c) });
      else
        cells.set(`${r},${c}`, {
          style,
          formula: stored(sheet, value, r, c),
          formulaType: "array",
          formulaDynamic: true,
          formulaRef: spills.get(addressOf(r, c)) ?? addressOf(r, c),
        });
    }
  }
  return cells;
}

const rows = (sheet: SampleSheet): NonNullable<WriteSheet["rowDefs"]> =>
  new Map(
    sheet.rows.flatMap((row, r) =>
      row.height !== undefined || row.style === "head" ? [[r, { height: (row.height ?? 40) * 0.75 }] as const] : [],
    ),
  );

const palette = ["8A4B2A", "1F6F8B", "6B8E23", "7A5C99", "555555"];

type Axis = NonNullable<NonNullable<SheetChart["axes"]>["y"]>;

const axis = (title: string, more: Axis): Axis => ({
  title,
  axisTitleFontSize: 10,
  axisTitleBold: false,
  majorTickMark: "out",
  minorTickMark: "none",
  ...more,
});
const from0 = (max: number | undefined) => ({ min: 0, ...(max === undefined ? {} : { max }) });
const plainNumbers = (formatCode: string) => ({ formatCode, sourceLinked: false });

const linesOf = { type: "scatter", scatterStyle: "lineMarker" } as const;
const stackOf = { type: "column", barGrouping: "stacked", overlap: 100, gapWidth: 60 } as const;

const signOf = (points: SampleSeries["points"]) =>
  points === undefined ? { symbol: "none" as const } : { symbol: points, size: 7 };

function chartOf({ kind, title, says, across, up, ends, signed, shows, over, series }: SampleChart): SheetChart {
  const { top, left, bottom, right } = areaOf(over)!;
  const lines = kind === "lines";
  // An axis that ends below 0 stands at its own end, with its numbers outside the picture.
  const scale = (end: number | undefined): Axis => (signed === true ? { crosses: "min" } : { scale: from0(end) });
  return {
    ...(lines ? linesOf : stackOf),
    title,
    titleFontSize: 12,
    titleBold: true,
    altText: says,
    legend: "bottom",
    anchor: { from: { row: top, col: left }, to: { row: bottom + 1, col: right + 1 } },
    axes: {
      x: axis(across, lines ? { ...scale(ends?.across), numberFormat: plainNumbers(shows?.across ?? "0") } : {}),
      y: axis(up, {
        axisTitleRotation: -90,
        gridlines: { major: true },
        ...scale(ends?.up),
        numberFormat: plainNumbers(shows?.up ?? (ends === undefined ? "0" : "0.00")),
      }),
    },
    // A name that begins with "=" is a cell; finishBook makes it one.
    series: series.map((s, i) => ({
      name: `=${s.name}`,
      categories: s.across,
      values: s.up,
      color: palette[i % palette.length]!,
      ...(lines ? { stroke: { width: 2 }, marker: signOf(s.points) } : {}),
    })),
  };
}

const merge = ({ top, left, bottom, right }: Area) => ({
  startRow: top,
  startCol: left,
  endRow: bottom,
  endCol: right,
});

const tableOf = (sheet: SampleSheet, name: string, area: string) => ({
  name,
  range: area,
  style: "TableStyleLight1",
  showAutoFilter: false,
  columns: columnNames(sheet, area).map((column) => ({ name: column })),
});

function pageOf({ print }: SampleSheet): Pick<WriteSheet, "pageSetup" | "headerFooter"> {
  if (print === undefined) return {};
  const { area, pages, turned } = print;
  return {
    pageSetup: {
      paperSize: "letter",
      orientation: turned ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: pages === "one" ? 1 : 0,
      printArea: area.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2"),
      horizontalCentered: true,
      margins: { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    headerFooter: { oddFooter: "&L&A&CInvented data; estimates&RPage &P of &N" },
  };
}

const sheetOf = (sheet: SampleSheet): WriteSheet => ({
  name: sheet.name,
  columns: sheet.widths.map((px) => ({ width: (px - 5) / 7 })),
  cells: cellsOf(sheet),
  rowDefs: rows(sheet),
  merges: (sheet.merged ?? []).map((area) => merge(areaOf(area)!)),
  tables: (sheet.tables ?? []).map(({ name, area }) => tableOf(sheet, name, area)),
  dataValidations: (sheet.lists ?? []).map(({ area, words, free }) => ({
    type: "list",
    range: area,
    values: [...words],
    allowBlank: true,
    showErrorMessage: free !== true,
    errorTitle: "Not in the list",
    errorMessage: `Choose ${words.join(", ")}.`.slice(0, 220),
  })),
  charts: (sheet.charts ?? []).map(chartOf),
  view: { showGridLines: sheet.name !== "Start" && sheet.name !== "Card" },
  ...(sheet.frozen === undefined ? {} : { freezePane: sheet.frozen }),
  ...pageOf(sheet),
});

const fixed = (sheet: SampleSheet): { name: string; range: string }[] =>
  Object.entries(sheet.names ?? {}).map(([name, area]) => {
    const { top, left, bottom, right } = areaOf(area)!;
    return { name, range: `${sheet.name}!$${columnName(left)}$${top + 1}:$${columnName(right)}$${bottom + 1}` };
  });

/** A sample as the bytes of an .xlsx file, the same on every run; its formulas have no values yet. */
export async function writeBook(book: SampleBook): Promise<Uint8Array> {
  const bytes = await writeXlsx({
    sheets: book.sheets.map(sheetOf),
    namedRanges: book.sheets.flatMap(fixed),
    properties: { title: book.title },
  });
  return withCalculatedColumns(finishBook(bytes));
}
