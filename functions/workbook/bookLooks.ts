import type { ISheetDataValidationRule, IStyleData, IWorksheetData } from "@univerjs/core";
import type { BorderSide, CellStyle, Color, DataValidation, Sheet } from "hucre";
import { areaOf } from "../formula/cellAddress";
import type { BookLooks, SheetLook } from "./gridBook";
import { readLooks } from "./readLooks";

/** The looks of a workbook for the grid: fonts, fills, borders, formats, widths, frozen rows, lists. Charts and pictures are not shown. */

const borders: Readonly<Record<string, number>> = {
  thin: 1,
  hair: 2,
  dotted: 3,
  dashed: 4,
  dashDot: 5,
  dashDotDot: 6,
  double: 7,
  medium: 8,
  mediumDashed: 9,
  mediumDashDot: 10,
  mediumDashDotDot: 11,
  slantDashDot: 12,
  thick: 13,
};
const across: Readonly<Record<string, number>> = { left: 1, center: 2, right: 3 };
const upright: Readonly<Record<string, number>> = { top: 1, center: 2, bottom: 3 };

type Colour = (color: Color | undefined) => string | undefined;

/** A colour by itself or by its place in the file's theme; tints are left out. */
const colourIn =
  (theme: readonly string[] | undefined): Colour =>
  (color) => {
    const hex = color?.rgb ?? (color?.theme === undefined ? undefined : theme?.[color.theme]);
    return hex === undefined ? undefined : `#${hex.slice(-6)}`;
  };

const fontOf = ({ font }: CellStyle, colour: Colour): IStyleData => {
  const cl = colour(font?.color);
  return {
    ...(font?.name !== undefined && { ff: font.name }),
    ...(font?.size !== undefined && { fs: font.size }),
    ...(font?.bold === true && { bl: 1 }),
    ...(font?.italic === true && { it: 1 }),
    ...(cl !== undefined && { cl: { rgb: cl } }),
  };
};

const placeOf = ({ alignment }: CellStyle): IStyleData => ({
  ...(across[alignment?.horizontal ?? ""] && { ht: across[alignment!.horizontal!] }),
  ...(upright[alignment?.vertical ?? ""] && { vt: upright[alignment!.vertical!] }),
  ...(alignment?.wrapText === true && { tb: 3 }),
});

const bordersOf = ({ border }: CellStyle, colour: Colour): IStyleData => {
  const side = (s: BorderSide | undefined) =>
    s?.style === undefined ? undefined : { s: borders[s.style] ?? 1, cl: { rgb: colour(s.color) ?? "#000000" } };
  const sides = Object.entries({
    t: side(border?.top),
    b: side(border?.bottom),
    l: side(border?.left),
    r: side(border?.right),
  }).filter(([, s]) => s !== undefined);
  return sides.length === 0 ? {} : { bd: Object.fromEntries(sides) };
};

function styleOf(style: CellStyle, colour: Colour): IStyleData {
  const fill =
    style.fill?.type === "pattern" && style.fill.pattern === "solid" ? colour(style.fill.fgColor) : undefined;
  const pattern = style.numFmt;
  return {
    ...fontOf(style, colour),
    ...(fill !== undefined && { bg: { rgb: fill } }),
    ...placeOf(style),
    ...bordersOf(style, colour),
    ...(pattern !== undefined && pattern !== "General" && { n: { pattern } }),
  };
}

/** Widths of letters and points as pixels of the screen. */
const pixels = { letter: 7, margin: 5, point: 4 / 3 };

const sheetOf = (sheet: Sheet): Partial<IWorksheetData> => ({
  columnData: Object.fromEntries(
    (sheet.columns ?? []).flatMap((c, i) =>
      c.width === undefined && c.hidden !== true
        ? []
        : [
            [
              i,
              {
                ...(c.width !== undefined && { w: Math.round(c.width * pixels.letter + pixels.margin) }),
                ...(c.hidden === true && { hd: 1 }),
              },
            ],
          ],
    ),
  ),
  rowData: Object.fromEntries(
    [...(sheet.rowDefs ?? [])].map(([i, r]) => [
      i,
      {
        ...(r.height !== undefined && { h: Math.round(r.height * pixels.point), ia: 0 }),
        ...(r.hidden === true && { hd: 1 }),
      },
    ]),
  ),
  mergeData: (sheet.merges ?? []).map((m) => ({
    startRow: m.startRow,
    endRow: m.endRow,
    startColumn: m.startCol,
    endColumn: m.endCol,
  })),
  ...(sheet.freezePane && {
    freeze: {
      xSplit: sheet.freezePane.columns ?? 0,
      ySplit: sheet.freezePane.rows ?? 0,
      startRow: sheet.freezePane.rows ?? -1,
      startColumn: sheet.freezePane.columns ?? -1,
    },
  }),
});

/** A list that allows other words too is left out: the grid would mark each of them as wrong. */
const rule = (
  { range, values, formula1, errorStyle, showErrorMessage }: DataValidation,
  uid: string,
): ISheetDataValidationRule[] => {
  if (showErrorMessage !== true) return [];
  const ranges = range
    .split(/\s+/)
    .map(areaOf)
    .filter((a) => a !== undefined)
    .map((a) => ({ startRow: a.top, endRow: a.bottom, startColumn: a.left, endColumn: a.right }));
  return [
    {
      uid,
      type: "list",
      formula1: values?.join(",") ?? `=${formula1 ?? ""}`,
      ranges,
      allowBlank: true,
      showErrorMessage: true,
      errorStyle: errorStyle === "stop" || errorStyle === undefined ? 1 : 2,
      renderMode: 1,
    },
  ];
};

/** The looks of a workbook that has been opened already: its bytes are known to be sound. */
export async function bookLooks(bytes: Uint8Array): Promise<BookLooks> {
  const book = await readLooks(bytes);
  const colour = colourIn(book.themeColors);
  const names = new Map<string, string>();
  const styles: Record<string, IStyleData> = {};
  const nameOf = (style: CellStyle): string | undefined => {
    const made = styleOf(style, colour);
    const key = JSON.stringify(made);
    if (key === "{}") return undefined;
    const name = names.get(key) ?? `s${names.size}`;
    names.set(key, name);
    styles[name] = made;
    return name;
  };
  const lookOf = (sheet: Sheet): SheetLook => ({
    sheet: sheetOf(sheet),
    styles: new Map(
      [...(sheet.cells ?? [])].flatMap(([at, { style }]) => {
        const name = style === undefined ? undefined : nameOf(style);
        return name === undefined ? [] : [[at, name] as const];
      }),
    ),
  });
  const sheets = new Map(book.sheets.map((sheet) => [sheet.name, lookOf(sheet)]));
  const lists = new Map(
    book.sheets.map((sheet, i) => [
      sheet.name,
      (sheet.dataValidations ?? []).filter((v) => v.type === "list").flatMap((v, j) => rule(v, `list${i}_${j}`)),
    ]),
  );
  return { styles, sheets, lists };
}
