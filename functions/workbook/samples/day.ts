import { columnName } from "../../formula/cellAddress";
import { formatted, head, invented, label, note, plain, type SampleSheet } from "./sheet";

/** An invented morning: job, minutes, due in hours from now, pitch. */
const jobs: readonly (readonly [job: string, minutes: number, due: number | null, blade: string])[] = [
  ["shafts 4140", 95, 3, "3/4"],
  ["plates A36", 150, 6, "2/3"],
  ["rings 304", 60, 8, "3/4"],
  ["beams", 120, 4, "4/6"],
  ["rounds 17-4PH", 170, 8, "2/3"],
  ["angle", 35, null, "4/6"],
  ["tube", 80, 5, "4/6"],
  ["blocks D2", 110, 8, "3/4"],
  ["repair job", 20, 1, "3/4"],
  ["bundle 1018", 130, 8, "4/6"],
];
const saws = 2;
const first = 5;
const last = first + jobs.length - 1;
const ask = last + 2;
const table = ask + 4;
/** Heading, jobs, a row for each saw, the sums. */
const end = table + jobs.length + saws + 1;
const column = (name: string): string => `${name}${first}:${name}${last}`;
/** Half hours from now, one column each. */
const halves = Array.from({ length: 16 }, (_, i) => i / 2);
const firstBar = 10;
const bars = (row: number): readonly string[] =>
  halves.map((_, i) => {
    const from = `${columnName(firstBar + i)}$${table}`;
    return `=IF($A${row}="","",IF($E${row}>${from},IF($D${row}<${from}+0.5,"█",""),""))`;
  });
const noCells = Array.from({ length: firstBar - 1 }, () => null);

/** A day's plan by saw, with a bar for each job. */
export const day: SampleSheet = {
  name: "Day",
  widths: [235, 80, 150, 80, 80, 80, 70, 80, 80, 420, ...halves.map(() => 30)],
  rows: [
    ...invented("The day's plan by saw"),
    head("Job", "Minutes", "Due, h", "Blade"),
    ...formatted(
      { 1: "0", 2: "0.0" },
      jobs.map((job) => plain(...job)),
    ),
    plain(),
    label("saws", saws),
    label("hours that they run", 8),
    label("minutes to change a blade", 12),
    note(
      "Least lateness first, then the earliest finish, then the fewest changes of blade; a bar stands for half an hour.",
    ),
    ...formatted({ 0: "0", 1: "0", 3: "0.00", 4: "0.00", 5: "0.0", 6: "0.00", 8: "0" }, [
      head(
        `=SAW.SAWPLAN(${column("A")},${column("B")},${column("C")},${column("D")},B${ask},B${ask + 1},B${ask + 2})`,
        ...noCells,
        ...halves,
      ),
      ...Array.from({ length: end - table }, (_, i) => plain(null, ...noCells, ...bars(table + 1 + i))),
    ]),
  ],
  frozen: { rows: 3, columns: 0 },
  inputs: [`A${first}:D${last}`, `B${ask}:B${ask + 2}`],
  tables: [{ name: "DayJobs", area: `A${first - 1}:D${last}` }],
  spills: [`A${table}:J${end}`],
  print: { area: `A1:Z${end}`, pages: "wide", turned: true },
};
