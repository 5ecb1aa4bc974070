import { formatted, head, invented, note, plain, type DemoSheet } from "./sheet";
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
const heads = ["price line", "price each", "minutes", "minutes low", "minutes high", "pitch", "rate", "blade", "cuts", "bars", "remnant", "mass"] as const;
const first = 5;
const column = (i: number): string => String.fromCharCode(65 + i);

/** One formula per cell; the heading above it is what it shows, so the sheet's own headings choose the results. */
const line = (cells: (typeof lines)[number], i: number) => {
  const r = first + i;
  return plain(...cells, ...heads.map((_, c) => `=SAW.QUOTE($A${r},$D${r},$E${r},${shopBlock},$B${r},$C${r},,${column(c + 5)}$${first - 1})`));
};

export const estimate: DemoSheet = {
  name: "Estimate",
  widths: [215, 80, 75, 75, 60, 85, 85, 75, 95, 95, 80, 75, 80, 55, 55, 80, 75],
  rows: [
    ...invented("Quote lines"),
    head("size or description", "material", "length", "wanted", "pieces", ...heads),
    ...formatted({ 5: "0.00", 6: "0.00", 7: "0.0", 8: "0.0", 9: "0.0", 11: "0.00", 15: "0.0", 16: "0" }, lines.map(line)),
    plain(),
    note("Quantity breaks are computed, never interpolated: the price of a piece is a saw-tooth, since a new bar is loaded every so many pieces."),
    head("pieces of line 1", "price each", "bars"),
    ...formatted({ 1: "0.00" }, [1, 5, 18, 19, 36, 37, 100].map((pieces, i) => plain(pieces, ...["price each", "bars"].map((show) => `=SAW.QUOTE($A$5,$D$5,$A${first + lines.length + 3 + i},${shopBlock},$B$5,$C$5,,"${show}")`)))),
  ],
};
