import { formatted, head, invented, label, note, plain, someGrades, text, type SampleSheet } from "./sheet";
import { shopBlock } from "./shop";

/** An invented month of one saw: size, grade, pieces, length of a piece. */
const book: readonly (readonly [size: string, grade: string, pieces: number, length: number])[] = [
  ["round 7", "17-4PH", 60, 6],
  ["round 4", "4140", 220, 4],
  ["round 6", "304", 90, 8],
  ["flat 6x1", "A36", 160, 20],
  ["square 3", "1045", 140, 5],
  ["round 5", "N07718", 24, 3],
  ["round 3 bundle 2x2", "1018", 600, 2.5],
  ["round 8", "D2", 12, 4],
];
const first = 8;
const last = first + book.length - 1;
const hour = last + 2;
const table = hour + 3;
/** Heading, jobs, the whole each way and with the cheaper, four orders, two limits, verdict. */
const end = table + book.length + 9;
/** A longer order book, or more pitches to order, fills rows below. */
const room = end + 12;
const column = (name: string): string => `${name}${first}:${name}${last}`;
/** What the table says in its last row. */
const verdict = `=INDEX(R${table}:R${room},MATCH("verdict",A${table}:A${room},0))`;

/** The order book of a month with bi-metal and with carbide, and the verdict over all of it. */
export const mix: SampleSheet = {
  name: "Mix",
  widths: [195, 265, 80, 90, 110, 100, 100, 110, 110, 110, 100, 100, 110, 110, 95, 95, 110, 330],
  rows: [
    ...invented("Bi-metal or carbide for a month's order book"),
    label("The verdict over all jobs"),
    text(3, verdict),
    plain(),
    head("Size", "Grade", "Pieces", "Length, in"),
    ...formatted(
      { 2: "0", 3: "0.0" },
      book.map((row) => plain(...row)),
    ),
    plain(),
    label("a saw hour is worth", 72),
    plain(),
    note(
      "Each job with both classes of blade on the saw of the sheet Shop, at its prices, lives and rate factors; then the whole, what to order, and the limits of price and life.",
    ),
    ...formatted(
      {
        2: "#,##0",
        3: "#,##0",
        4: "#,##0",
        5: "#,##0",
        6: "#,##0",
        7: "0.00",
        8: "#,##0.00",
        9: "#,##0",
        10: "#,##0",
        11: "#,##0",
        12: "0.00",
        13: "#,##0.00",
        14: "0.0",
        15: "#,##0.00",
      },
      [
        head(`=SAW.JOBMIX(${column("A")},${column("B")},${column("C")},B${hour},${shopBlock},${column("D")})`),
        ...Array.from({ length: end - table }, () => plain()),
      ],
    ),
  ],
  frozen: { rows: 3, columns: 1 },
  inputs: [`A${first}:D${last}`, `B${hour}`],
  tables: [{ name: "MonthBook", area: `A${first - 1}:D${last}` }],
  lists: [{ area: `B${first}:B${last}`, words: someGrades, free: true }],
  spills: [`A${table}:R${end}`],
  merged: [`A5:H5`],
  print: { area: `A1:R${end}`, pages: "wide", turned: true },
};
