import { bladeClasses, formatted, head, invented, note, plain, someGrades, units, type SampleSheet } from "./sheet";

type Line = readonly [
  day: number,
  saw: string,
  blade: string,
  kind: string,
  size: string | null,
  grade: string,
  pitch: string,
  speed: number | null,
  minutes: number | string | null,
  leave: string | null,
  note: string | null,
];

/** The day that the log begins with, as a sheet counts days: 2026-09-01. */
const firstDay = 46266;

/** Timed cuts of the invented service centre. The first ones are drawn in the chart; the last show what a log holds too. */
// prettier-ignore
const cuts: readonly Line[] = [
  [0, "small", "B-31", "bi-metal", "round 3", "304", "4/6", 125, 3.1, null, null],
  [0, "small", "B-31", "bi-metal", "round 4", "304", "3/4", 120, 6, null, null],
  [1, "large", "B-32", "bi-metal", "round 6", "304", "3/4", 115, 12.5, null, null],
  [1, "large", "B-32", "bi-metal", "flat 6x1", "316", "2/3", 95, 3.6, null, null],
  [2, "small", "B-31", "bi-metal", "round 2-1/2", "304", "4/6", 125, 2.5, null, null],
  [3, "large", "B-32", "bi-metal", "round 5", "316", "3/4", 100, 10.6, null, null],
  [6, "large", "B-32", "bi-metal", "round 5", "4140", "3/4", 250, 2.2, null, null],
  [6, "large", "B-32", "bi-metal", "round 7", "4140", "2/3", 235, 4.8, null, null],
  [7, "large", "B-32", "bi-metal", "round 6", "4140", "3/4", 245, 3.1, null, null],
  [8, "large", "B-33", "bi-metal", "round 4", "4140", "3/4", 255, 1.5, null, null],
  [9, "small", "B-34", "bi-metal", "flat 6x1", "1018", "2/3", 280, 0.62, null, null],
  [9, "small", "B-34", "bi-metal", "tube 6x0.5", "A36", "4/6", 295, 1, null, null],
  [10, "large", "B-33", "bi-metal", "W12x50", "A992", "4/6", 285, 1.9, null, null],
  [13, "large", "B-33", "bi-metal", "round 4", "A36", "3/4", null, 1.4, null, null],
  [14, "large", "C-07", "carbide", "round 5", "17-4PH", "3/4", 225, 2.1, null, null],
  [14, "large", "C-07", "carbide", "round 7", "17-4PH", "2/3", 210, 4.7, null, null],
  [15, "large", "C-07", "carbide", "round 6", "17-4PH", "3/4", 215, 2.9, null, null],
  [16, "large", "C-07", "carbide", "round 4-1/2", "17-4PH", "3/4", 225, 1.7, null, null],
  [16, "large", "C-07", "carbide", "round 8", "17-4PH", "2/3", 205, 6.4, null, null],
  [17, "small", "B-34", "bi-metal", "square 3", "4140", "4/6", 245, 1.2, null, "the motor laboured"],
  [20, "large", "B-35", "bi-metal", "round 6", "304", "3/4", 115, 21, "x", "new blade, half the feed"],
  [20, "large", "B-35", "bi-metal", "round 4", "304", "3/4", 120, 348, null, "off the stop watch"],
  [21, "large", "B-35", "bi-metal", "round 5", "304", "3/4", 115, "9.8 min", null, null],
  [22, "large", "B-35", "bi-metal", null, "304", "3/4", 115, 4.4, null, "size not written down"],
];
export const charted = 19;
export const firstCut = 6;
/** The rows that formulas read: on the try-it page there are no tables that grow. */
export const mostCuts = 500;
const lastCut = firstCut + cuts.length - 1;

const heads = [
  "date",
  "saw",
  "blade number",
  "blade",
  "section",
  "material",
  "pitch",
  "band speed",
  "minutes",
  "leave out",
  "note",
];

/** One row a cut, and nothing else: what is written at the saw. */
export const cutLog: SampleSheet = {
  name: "Cuts",
  widths: [190, 75, 105, 90, 130, 100, 75, 95, 80, 80, 240],
  rows: [
    ...invented(
      "Cut log",
      note(
        "One row for each timed cut: size, grade, class of blade and minutes are needed, the rest as known. Any mark under leave out keeps a cut of a new or damaged blade out of the tuning.",
      ),
    ),
    units(null, null, null, null, null, null, "teeth/in", "ft/min", "min", null, null),
    head(...heads),
    ...formatted(
      { 0: "yyyy-mm-dd", 7: "0", 8: "General" },
      cuts.map(([day, ...cells]) => plain(firstDay + day, ...cells)),
    ),
  ],
  frozen: { rows: firstCut - 1, columns: 0 },
  inputs: [`A${firstCut}:K${lastCut}`],
  tables: [{ name: "Cuts", area: `A${firstCut - 1}:K${lastCut}` }],
  lists: [
    { area: `B${firstCut}:B${firstCut + mostCuts - 1}`, words: ["small", "large"] },
    { area: `D${firstCut}:D${firstCut + mostCuts - 1}`, words: bladeClasses },
    { area: `F${firstCut}:F${firstCut + mostCuts - 1}`, words: someGrades, free: true },
  ],
  room: firstCut + mostCuts,
  print: { area: `A1:K${lastCut}`, pages: "wide", turned: true },
};

/** Blades of the log: those in use, then those of an offer on trial. */
// prettier-ignore
const blades: readonly (readonly [string, string, string, number, number, string, number])[] = [
  ["B-27", "in use", "bi-metal", 180, 3100, "worn", 3],
  ["B-28", "in use", "bi-metal", 180, 3600, "worn", 3],
  ["B-29", "in use", "bi-metal", 180, 4400, "worn", 3.1],
  ["B-30", "in use", "bi-metal", 180, 2700, "teeth lost", 3],
  ["B-31", "in use", "bi-metal", 180, 3300, "worn", 2.9],
  ["B-34", "in use", "bi-metal", 180, 3800, "worn", 3],
  ["P-1", "offer P", "bi-metal", 260, 4600, "worn", 3.3],
  ["P-2", "offer P", "bi-metal", 260, 5900, "worn", 3.3],
  ["P-3", "offer P", "bi-metal", 260, 5100, "worn", 3.4],
  ["P-4", "offer P", "bi-metal", 260, 4200, "still in use", 3.3],
];
export const firstBlade = 6;
export const inUse = { from: firstBlade, to: firstBlade + 5 };
export const onTrial = { from: firstBlade + 6, to: firstBlade + blades.length - 1 };
const endings = ["worn", "broke", "teeth lost", "still in use", "pulled"];

/** One row a blade. */
export const bladeLog: SampleSheet = {
  name: "Blades",
  widths: [190, 100, 90, 80, 95, 110, 95],
  rows: [
    ...invented(
      "Blade log",
      note("One row for each blade: the area that it cut, and why it came off. Blades still in use count too."),
    ),
    units(null, null, null, "money", "in²", null, "in²/min"),
    head("blade number", "name", "class", "price", "area cut", "why", "rate held"),
    ...formatted(
      { 3: "0", 4: "#,##0", 6: "0.0" },
      blades.map((line) => plain(...line)),
    ),
  ],
  frozen: { rows: firstBlade - 1, columns: 0 },
  inputs: [`A${firstBlade}:G${onTrial.to}`],
  tables: [{ name: "BladeLog", area: `A${firstBlade - 1}:G${onTrial.to}` }],
  lists: [
    { area: `C${firstBlade}:C${onTrial.to}`, words: bladeClasses },
    { area: `F${firstBlade}:F${onTrial.to}`, words: endings },
  ],
  print: { area: `A1:G${onTrial.to}`, pages: "one", turned: false },
};
