/** What a demo sheet shows: text, numbers, and formulas that begin with "=". */
export type DemoCell = string | number | null;

/** How the cells of a row are set. */
export type RowStyle = "title" | "note" | "head" | "plain";

export interface DemoRow {
  readonly style: RowStyle;
  readonly cells: readonly DemoCell[];
}

export interface DemoSheet {
  readonly name: string;
  /** Column widths [px]. */
  readonly widths: readonly number[];
  /** Number format by column (from 0). */
  readonly formats: Readonly<Record<number, string>>;
  readonly rows: readonly DemoRow[];
}

const title = (text: string): DemoRow => ({ style: "title", cells: [text] });
const note = (text: string): DemoRow => ({ style: "note", cells: [text] });
const head = (...cells: readonly DemoCell[]): DemoRow => ({ style: "head", cells });
const plain = (...cells: readonly DemoCell[]): DemoRow => ({ style: "plain", cells });

/** Order lines of an invented service centre: size, grade, class of blade, pieces. */
const lines: readonly (readonly [string, string, string, number])[] = [
  ["round 7", "17-4PH", "bi-metal", 12],
  ["round 7", "17-4PH", "carbide", 12],
  ["round 4", "A36", "bi-metal", 40],
  ["round 4", "4140", "bi-metal", 25],
  ["round 4", "4140 HT", "carbide", 25],
  ["square 3", "1045", "bi-metal", 60],
  ["flat 6x1", "1018", "bi-metal", 30],
  ["round 2-1/2", "303", "bi-metal", 80],
  ["tube 6x0.5", "A36", "bi-metal", 16],
  ["W12x50", "A992", "bi-metal", 10],
  ["round 5", "6061-T6", "bi-metal", 50],
  ["round 3", "C36000", "bi-metal", 35],
  ["round 6", "D2", "carbide", 8],
  ["round 3", "Ti-6Al-4V", "carbide", 10],
  ["round 120 mm", "1.4301", "bi-metal", 18],
];

/** The shop block, rows 21 to 30 of the sheet. */
const shop: readonly DemoRow[] = [
  plain("Units", "inch"),
  plain("Hourly cost", 72),
  plain("Handling minutes", 1.5),
  plain("Blade change minutes", 12),
  plain("Greatest feed", 20),
  plain("Break-in area", 60),
  plain("Bi-metal price", 180),
  plain("Bi-metal life", 1500),
  plain("Carbide price", 420),
  plain("Carbide life", 3000),
];
const block = "$A$24:$B$33";
const first = 5;

const line = ([size, grade, blade, pieces]: (typeof lines)[number], i: number): DemoRow => {
  const r = first + i;
  const carbide = `C${r}="carbide"`;
  return plain(size, grade, blade, pieces, `=SAW.PITCH(A${r},B${r},C${r},${block})`, `=SAW.CUTRATE(A${r},B${r},C${r},,${block})`, `=SAW.CUTTIME(A${r},F${r},,${block})`, `=G${r}*D${r}/60`, `=SAW.CUTCOST(A${r},F${r},,IF(${carbide},$B$32,$B$30),IF(${carbide},$B$33,$B$31),${block})`);
};

export const demoBook: readonly DemoSheet[] = [
  {
    name: "Order lines",
    widths: [190, 95, 80, 65, 75, 105, 95, 75, 95],
    formats: { 5: "0.00", 6: "0.0", 7: "0.0", 8: "0.00" },
    rows: [
      title("Saw bay of an invented service centre: invented data"),
      note("Change any size, grade, blade or shop value: every result follows. Estimates; the machine's manual and a qualified person come first."),
      plain(),
      head("size", "material", "blade", "pieces", "pitch", "rate in²/min", "min per cut", "hours", "cost per cut"),
      ...lines.map(line),
      plain(),
      note("The shop block: labels in one column, values beside them. Functions take the whole block as one argument."),
      plain(),
      head("shop block", "value"),
      ...shop,
      plain(),
      head("does carbide pay for 17-4PH?", "price", "life in²", "rate in²/min"),
      plain("in use, bi-metal", "=B30", "=B31", "=F5"),
      plain("offer, carbide", "=B32", "=B33", "=F6"),
      plain("what a saw hour is worth", "=B25"),
      plain("offer pays up to a price of", "=SAW.BREAKEVEN(B36:D36,B37:D37,B38,B27)"),
      plain("shortest life that pays", '=SAW.BREAKEVEN(B36:D36,B37:D37,B38,B27,"life")'),
      plain("verdict", '=SAW.BREAKEVEN(B36:D36,B37:D37,B38,B27,"verdict")'),
    ],
  },
];
