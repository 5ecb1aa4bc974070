import { columnName } from "../../formula/cellAddress";
import { bladeClasses, formatted, head, invented, note, plain, someGrades, units, type SampleSheet } from "./sheet";
import { shopBlock } from "./shop";

/** Order lines: size, grade, length of a piece, class of blade, pieces; the last ones are whole descriptions. */
const lines: readonly (readonly [string, string | null, string | number | null, string, number])[] = [
  ["flat 6x1", "1018", 12, "bi-metal", 30],
  ["round 7", "17-4PH", 10, "carbide", 12],
  ["round 7", "17-4PH", 10, "bi-metal", 12],
  ["round 4", "A36", 8.25, "bi-metal", 40],
  ["round 4", "4140", 6, "cheapest", 25],
  ["round 4", "4140 HT", 6, "cheapest", 25],
  ["square 3", "1045", 18, "bi-metal", 60],
  ["round 2-1/2", "303", "100 mm", "bi-metal", 80],
  ["tube 6x0.5", "A36", "3 ft", "bi-metal", 16],
  ["W12x50", "A992", "8'-6\"", "bi-metal", 10],
  ["round 2 bundle 3x4", "1018", 4.5, "bi-metal", 100],
  ["round 5", "6061-T6", 2, "bi-metal", 50],
  ["round 3", "C36000", 1.5, "bi-metal", 35],
  ["round 6", "D2", 3, "carbide", 8],
  ["round 120 mm", "1.4301", "250 mm", "cheapest", 18],
  ['RND BAR 3-1/2" DIA 4140 X 6" LG', null, null, "cheapest", 24],
  ["HEB 200 S355J2 x 1500 mm", null, null, "bi-metal", 6],
];
const heads = [
  "read as",
  "price line",
  "price each",
  "minutes",
  "minutes low",
  "minutes high",
  "pitch",
  "rate",
  "blade",
  "cuts",
  "bars",
  "remnant",
  "mass",
] as const;
/** Beside them: why a line is refused, in words. */
const why = "refused because";
const whyColumn = columnName(heads.length + 5);
const first = 5;
const last = first + lines.length - 1;
const totals = last + 2;
const breaks = totals + 15;

/** The sentence of a line that has no price; nothing for a blank line. */
const refusal = (r: number): string =>
  `=IF(OR($A${r}="",ISNUMBER($G${r})),"",IFERROR(INDEX(SAW.WORKING("QUOTE",$A${r},$D${r},$E${r},${shopBlock},$B${r},$C${r}),2,4),"one of its cells is an error"))`;
/** One formula per cell; the heading above it is what it shows, so the sheet's own headings choose the results. */
const line = (cells: (typeof lines)[number], i: number) => {
  const r = first + i;
  return plain(
    ...cells,
    ...heads.map(
      (_, c) => `=SAW.QUOTE($A${r},$D${r},$E${r},${shopBlock},$B${r},$C${r},,${columnName(c + 5)}$${first - 1})`,
    ),
    refusal(r),
  );
};
const all = (column: string): string => `${column}${first}:${column}${last}`;
const results = (head: (typeof heads)[number]): string => all(columnName(heads.indexOf(head) + 5));
/** Of the lines that are priced: what is refused is an error, which no comparison takes. */
const priced = (cells: string): string => `SUMIF(${results("price line")},">0",${cells})`;
/** Where each figure below the lines stands. */
const at = (row: number): string => `B${totals + row}`;

/** The refused lines, one below the other. */
const refusedLines = `=FILTER("row "&ROW(${all(whyColumn)})&": "&${all("A")}&": "&${all(whyColumn)},${all(whyColumn)}<>"","none")`;
/** Excel's own functions over the lines; the last two rows add the money up a second way. */
const sums = [
  ...formatted({ 1: "0" }, [
    plain("lines priced", `=COUNT(${results("price line")})`, null, refusedLines),
    plain("lines refused", `=COUNTA(${all("A")})-${at(1)}`),
  ]),
  plain("the figures below count", `=${at(1)}&" priced, "&${at(2)}&" refused"`),
  ...formatted({ 1: "0" }, [
    plain("pieces", `=${priced(all("E"))}`),
    plain("bars to pull", `=${priced(results("bars"))}`),
  ]),
  ...formatted({ 1: "#,##0" }, [plain("mass, lb", `=${priced(results("mass"))}`)]),
  ...formatted({ 1: "0.0" }, [
    plain("saw hours, nominal", `=${priced(results("minutes"))}/60`),
    plain("saw hours if every cut runs fast", `=${priced(results("minutes low"))}/60`),
    plain("saw hours if every cut runs slow", `=${priced(results("minutes high"))}/60`),
  ]),
  ...formatted({ 1: "#,##0.00" }, [
    plain("price of all lines", `=${priced(results("price line"))}`),
    plain("price for each saw hour", `=${at(10)}/${at(7)}`),
    plain(
      "pieces times price each",
      `=IF(${at(2)}=0,SUMPRODUCT(${all("E")},${results("price each")}),"a line is refused")`,
    ),
  ]),
  ...formatted({ 1: "General" }, [
    plain("the two sums", `=IF(${at(2)}=0,IF(ABS(${at(12)}-${at(10)})<0.005,"agree","differ"),"a line is refused")`),
  ]),
];

const quantities = [1, 5, 18, 19, 36, 37, 100];

export const estimate: SampleSheet = {
  name: "Estimate",
  widths: [265, 100, 80, 115, 65, 330, 85, 80, 75, 75, 75, 60, 75, 75, 60, 60, 75, 80, 420],
  rows: [
    ...invented(
      "Quote lines",
      units(
        null,
        null,
        "in, or with its unit",
        null,
        null,
        null,
        "money",
        "money",
        "min",
        "min",
        "min",
        "teeth/in",
        "in²/min",
        null,
        null,
        null,
        "in",
        "lb",
      ),
    ),
    head("size or description", "material", "length", "wanted", "pieces", ...heads, why),
    ...formatted(
      {
        6: "#,##0.00",
        7: "#,##0.00",
        8: "0.0",
        9: "0.0",
        10: "0.0",
        12: "0.00",
        14: "0",
        15: "0",
        16: "0.0",
        17: "#,##0",
      },
      lines.map(line),
    ),
    plain(),
    head("all lines", "sum", null, "refused lines"),
    ...sums,
    note(
      "Quantity breaks are computed, never interpolated: the price of a piece is a saw-tooth, since a new bar is loaded every so many pieces.",
    ),
    head("pieces of line 1", "price each", "bars"),
    ...formatted(
      { 1: "0.00", 2: "0" },
      quantities.map((pieces, i) =>
        plain(
          pieces,
          ...["B", "C"].map((c) => `=SAW.QUOTE($A$5,$D$5,$A${breaks + 1 + i},${shopBlock},$B$5,$C$5,,${c}$${breaks})`),
        ),
      ),
    ),
    plain(),
    note("A refused line is in no sum; the list beside the sums says why."),
    note(
      "Minutes and rates are nominal, the middle figure between low and high. Not every line runs fast, or slow, at once: the hours of all lines lie between the two sums. The price is for sawing; the bar in the pieces is not in it.",
    ),
    note(
      "Margin, hourly cost, blades and minimum charge stand on the sheet Shop; a line at the minimum charge costs the same for fewer pieces.",
    ),
  ],
  frozen: { rows: first - 1, columns: 1 },
  inputs: [`A${first}:E${last}`, `A${breaks + 1}:A${breaks + quantities.length}`],
  tables: [
    { name: "QuoteLines", area: `A${first - 1}:${whyColumn}${last}` },
    { name: "QuantityBreaks", area: `A${breaks}:C${breaks + quantities.length}` },
  ],
  lists: [
    { area: all("D"), words: [...bladeClasses, "cheapest"] },
    { area: all("B"), words: someGrades, free: true },
  ],
  // None of these lines is refused.
  spills: [`D${totals + 1}`],
  print: { area: `A1:R${breaks + quantities.length + 4}`, pages: "wide", turned: true },
};
