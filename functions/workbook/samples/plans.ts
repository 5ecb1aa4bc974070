import { columnName } from "../../formula/cellAddress";
import { bladeClasses, formatted, head, invented, label, note, plain, someGrades, type SampleSheet } from "./sheet";
import { shopBlock } from "./shop";

const quantities = [1, 2, 5, 10, 20, 30, 40, 60, 80, 100] as const;
const firstQuantity = 10;
const lastQuantity = firstQuantity + quantities.length - 1;
const prices = lastQuantity + 3;
const lastPrice = prices + quantities.length;

/** One item by quantity, with a chart of the price each. */
export const breaks: SampleSheet = {
  name: "Breaks",
  widths: [190, 110, 110, 110, 80, 330, 30, 90, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented(
      "Price breaks of one item",
      note(
        "Set-up and bar loads come in steps, so the price each goes down and now and then up again. Each row is QUOTE's.",
      ),
    ),
    label("size", "round 4"),
    label("grade", "4140"),
    label("length of a piece, in", 6.5),
    label("blade", "bi-metal"),
    plain(),
    head("pieces"),
    ...quantities.map((quantity) => plain(quantity)),
    plain(),
    note("What to quote:"),
    ...formatted({ 0: "0", 1: "#,##0.00", 2: "#,##0.00", 3: "0.0", 4: "0" }, [
      head(`=SAW.PRICEBREAKS($B$4,$B$7,A${firstQuantity}:A${lastQuantity},${shopBlock},$B$5,$B$6)`),
      ...quantities.map(() => plain()),
    ]),
  ],
  frozen: { rows: 2, columns: 0 },
  inputs: ["B4:B7", `A${firstQuantity}:A${lastQuantity}`],
  lists: [
    { area: "B5", words: someGrades, free: true },
    { area: "B7", words: bladeClasses, free: true },
  ],
  spills: [`A${prices}:F${lastPrice}`],
  charts: [
    {
      kind: "lines",
      title: "Price each by quantity",
      says: "The price of a piece falls steeply over the first pieces, which share the set-up, and then slowly; it rises a little where a new bar begins.",
      across: "pieces",
      up: "money each",
      over: "H4:N22",
      series: [{ name: `B${prices}`, across: `A${prices + 1}:A${lastPrice}`, up: `B${prices + 1}:B${lastPrice}` }],
    },
  ],
  print: { area: `A1:N${lastPrice}`, pages: "one", turned: true },
};

const claims = ["life", "rate", "life and rate", "price", "saw hour value"] as const;
const table = 11;
const rows = 6;

/** How far the saving of an offer hangs on each claim. */
export const whatIf: SampleSheet = {
  name: "Claims",
  widths: [235, 110, 110, 120, 110, 130, 240, 30, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented(
      "What if a claim falls short",
      note(
        "Saving per in² with one claim of the offer changed; below, where the decision flips. Life and rate short together is the number to remember.",
      ),
    ),
    head("blade", "price", "life, in²", "rate, in²/min"),
    plain("in use", 180, 2500, 2.2),
    plain("offer", 520, 6000, 4),
    plain(),
    label("a saw hour is worth", 72),
    label("minutes to change a blade", 12),
    plain(),
    ...formatted({ 0: "0%", 1: "0.0000", 2: "0.0000", 3: "0.0000", 4: "0.0000", 5: "0.0000" }, [
      head("=SAW.SENSITIVITY($B$5:$D$5,$B$6:$D$6,$B$8,$B$9)"),
      ...Array.from({ length: rows }, () => plain()),
    ]),
    ...formatted({ 1: "#,##0", 2: "0.00", 3: "0.00", 4: "#,##0", 5: "0.00" }, [plain()]),
    ...formatted({ 1: "0%", 2: "0%", 3: "0%", 4: "0%", 5: "0%" }, [plain()]),
  ],
  frozen: { rows: 2, columns: 0 },
  inputs: ["B5:D6", "B8:B9"],
  spills: [`A${table}:G${table + rows + 2}`],
  charts: [
    {
      kind: "lines",
      title: "Saving by how far a claim is missed",
      says: "Five lines through one point, the saving as claimed. The line of life and rate together is the steepest; where a line meets zero the decision flips.",
      across: "change of the claim",
      up: "saving an in², money",
      signed: true,
      shows: { across: "0%", up: "0.00" },
      over: "I4:N22",
      series: claims.map((_, i) => ({
        name: `${columnName(i + 1)}${table}`,
        across: `A${table + 1}:A${table + rows}`,
        up: `${columnName(i + 1)}${table + 1}:${columnName(i + 1)}${table + rows}`,
      })),
    },
  ],
  print: { area: "A1:N23", pages: "one", turned: true },
};

const pieces: readonly (readonly [length: number, quantity: number])[] = [
  [74.5, 8],
  [62.25, 10],
  [48, 14],
  [36, 12],
  [27.75, 20],
  [18.5, 24],
  [11, 30],
];
const stocks: readonly (readonly [length: number, quantity: number | null])[] = [
  [240, null],
  [144, 3],
];
const firstPiece = 5;
const lastPiece = firstPiece + pieces.length - 1;
const firstStock = lastPiece + 3;
const lastStock = firstStock + stocks.length - 1;
const plan = lastStock + 7;
/** What the plan of this order fills below its heading. */
const patterns = 10;

/** A picking list: which bars to pull, and what to cut from each. */
export const cutList: SampleSheet = {
  name: "Cut plan",
  widths: [190, 90, 500, 120, 110, 90, 80, 330],
  rows: [
    ...invented(
      "A cut plan to print for the saw",
      note(
        "Kerf, trim, grip and the shortest useful remnant are the shop block's. The last row says how far the plan is proven.",
      ),
    ),
    head("length, in", "pieces"),
    ...formatted(
      { 0: "0.00", 1: "0" },
      pieces.map((row) => plain(...row)),
    ),
    plain(),
    head("bar, in", "bars in stock"),
    ...formatted(
      { 0: "0.00", 1: "0" },
      stocks.map((row) => plain(...row)),
    ),
    plain(),
    ...formatted({ 1: "0" }, [plain("pieces wanted", `=SUM(B${firstPiece}:B${lastPiece})`)]),
    label("size", "flat 3x1"),
    label("grade", "1018"),
    plain(),
    note("Pull and cut:"),
    ...formatted({ 0: "0.00", 1: "0", 3: "0.0", 4: "0.00", 5: "0.0%", 6: "0" }, [
      head(
        `=SAW.CUTPLAN(A${firstPiece}:A${lastPiece},B${firstPiece}:B${lastPiece},A${firstStock}:A${lastStock},,,,B${firstStock}:B${lastStock},,${shopBlock})`,
      ),
      ...Array.from({ length: patterns }, () => plain()),
    ]),
  ],
  frozen: { rows: 2, columns: 0 },
  inputs: [`A${firstPiece}:B${lastPiece}`, `A${firstStock}:B${lastStock}`],
  spills: [`A${plan}:H${plan + patterns}`],
  print: { area: `A1:H${plan + patterns}`, pages: "one", turned: true },
};
