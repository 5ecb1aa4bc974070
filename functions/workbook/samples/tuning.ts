import { firstCut, mostCuts } from "./logs";
import { formatted, head, invented, note, plain, type SampleCell, type SampleSheet } from "./sheet";

/** Two invented saws with their prices. */
// prettier-ignore
const typed: readonly (readonly SampleCell[])[] = [
  ["Units", "inch", null, null],
  ["Saw", "small", "large", null],
  ["Hourly cost", 62, 78, "saw and operator"],
  ["Set-up minutes", 10, 10, "per order line"],
  ["Load minutes", 6, 8, "per bar"],
  ["Handling minutes", 1.5, 2, "per cut"],
  ["Motor power", 3, 10, "hp"],
  ["Maximum feed", 12, 30, "in/min"],
  ["Band width", 1.06, 1.61, "in"],
  ["Bi-metal price", 180, 180, null],
  ["Bi-metal life", 3500, 3500, "in²"],
  ["Carbide price", 420, 420, null],
  ["Carbide life", 7000, 7000, "in²"],
  ["Stock length", "20 ft", "20 ft", null],
];
const start = 6;
const end = start + typed.length - 1;
const anchor = end + 1;
/** Groups and classes of blade in the log: each gives a factor and a spread. */
const groups = 4;
/** Rows under the typed block that belong to it: room for what TUNE gives. */
const room = 50;

const log = (column: string): string => `Cuts!$${column}$${firstCut}:$${column}$${firstCut + mostCuts - 1}`;

/** The shop block with the rows that TUNE gives under it. */
export const tuning: SampleSheet = {
  name: "Tuning",
  widths: [350, 95, 95, 130, 90, 90, 90, 90],
  rows: [
    ...invented(
      "The shop block and its tuned rows",
      note(
        "The typed rows are named Block: what TUNE takes. With the rows under them, and room to spare, they are named Tuned: what quotes take.",
      ),
    ),
    note(
      "Nothing else may stand in the rows of Tuned. Each tuned row says from how many cuts it is, and which rows of the log it left out and why.",
    ),
    head("shop block", "small", "large", "unit"),
    ...typed.map((row) => plain(...row)),
    ...formatted({ 1: "0.000" }, [
      plain(`=SAW.TUNE(${["E", "F", "D", "I", "G", "J"].map(log).join(",")},Block,${log("B")})`, null, null),
      ...Array.from({ length: 2 * groups }, () => plain()),
    ]),
  ],
  frozen: { rows: start - 1, columns: 0 },
  inputs: [`B${start}:C${end}`],
  names: { Block: `A${start}:D${end}`, Tuned: `A${start}:D${end + room}` },
  spills: [`A${anchor}:C${anchor + 2 * groups}`],
  lists: [{ area: `B${start}`, words: ["inch", "metric"] }],
  print: { area: `A1:H${anchor + 2 * groups}`, pages: "one", turned: true },
};
