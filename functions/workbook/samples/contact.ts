import { formatted, head, invented, label, note, plain, units, type SampleSheet } from "./sheet";

const steps = 80;
const start = 7;
const end = start + steps + 1;

/** What the band meets on its way through a rolled shape, one formula, and its picture. */
export const contact: SampleSheet = {
  name: "Contact",
  widths: [215, 90, 90, 40, 90, 90, 90, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented(
      "The way of the band through a beam",
      note(
        "A beam lies with its flanges upright: the band meets two thin flanges nearly all the way, and the whole web at once. The teeth must suit both.",
      ),
    ),
    label("size", "W12x50"),
    ...formatted({ 1: "0.00" }, [plain("thinnest lasting contact, in", `=SAW.SECTION($B$4,"thinnest contact")`)]),
    units("in", "in", "in"),
    ...formatted({ 0: "0.00", 1: "0.00", 2: "0.00" }, [
      head(`=SAW.CONTACT($B$4,${steps},"inch")`),
      ...Array.from({ length: steps + 1 }, () => plain()),
    ]),
  ],
  frozen: { rows: start - 1, columns: 0 },
  inputs: ["B4"],
  spills: [`A${start}:C${end}`],
  charts: [
    {
      kind: "lines",
      title: "Engaged width along the travel",
      says: "The engaged width stays small while the band cuts the flanges, and jumps to the height of the beam where it meets the web in the middle of its way.",
      across: "travel of the band from the top, in",
      up: "width in the cut, in",
      over: "E7:M26",
      series: [
        { name: `B${start}`, across: `A${start + 1}:A${end}`, up: `B${start + 1}:B${end}` },
        { name: `C${start}`, across: `A${start + 1}:A${end}`, up: `C${start + 1}:C${end}` },
      ],
    },
  ],
  print: { area: "A1:N88", pages: "wide", turned: true },
};
