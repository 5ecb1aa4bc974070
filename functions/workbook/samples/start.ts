import { label, plain, text, title, type SampleRow, type SampleSheet } from "./sheet";

const all: readonly SampleRow[] = [
  plain(),
  label("The add-in"),
  text(
    2,
    "The functions whose names begin with SAW come from the Excel add-in Kerfsheet. Your administrator deploys it, or you load its manifest as its README.md says under In Excel. Then press Ctrl+Alt+F9 once: every cell is calculated anew.",
  ),
  text(
    2,
    "Without the add-in you see the results as they were saved. After you change an input, the cells that depend on it show #NAME?: close the workbook without saving, or get the add-in.",
  ),
  plain(),
  label("What the numbers are worth"),
  text(
    2,
    "Rates and minutes are estimates: nominal is the middle figure. For steels and stainless with bi-metal about 80 % of published cases or more fall between low and high; elsewhere low and high are judgement; where a block is tuned, they hold about 80 % of the shop's own cuts. Blade life is never predicted; it is yours to fill in, and the largest uncertainty in every cost.",
  ),
  plain(),
  label("Cautions"),
  text(
    2,
    "Guards shut, blade guides close to the work. Lock out the saw before changing a band or clearing a jam. Gloves for handling bands, off when the saw runs. Eye and hearing protection.",
  ),
  text(
    2,
    "Chips are sharp and hot; some metals' chips burn (magnesium, titanium, zirconium) and some are toxic (beryllium, lead): follow the safety data sheet.",
  ),
  text(2, "The machine's manual, local codes and a qualified person come before anything in this workbook."),
];

/** The first sheet of a workbook: what it is, what it needs, what to beware of. */
export const start = (
  what: string,
  why: string,
  sheets: readonly (readonly [name: string, says: string])[],
): SampleSheet => ({
  name: "Start",
  widths: [150, 620],
  rows: [
    title(`${what}: a sample workbook`),
    text(2, `${why} The service centre, its saws, prices and jobs are invented.`),
    {
      ...plain("filled like this", "cells for you to fill, on every sheet; all other cells follow them"),
      style: "legend",
    },
    plain(),
    ...sheets.map(([name, says]) => text(says.length > 100 ? 2 : 1, name, says)),
    ...all,
  ],
  merged: [2, ...all.flatMap((row, i) => (row.style !== "text" ? [] : [5 + sheets.length + i]))].map(
    (r) => `A${r}:B${r}`,
  ),
  print: { area: `A1:B${4 + sheets.length + all.length}`, pages: "one", turned: false },
});
