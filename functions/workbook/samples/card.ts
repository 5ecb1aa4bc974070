import { formatted, head, plain, text, title, note, type SampleCell, type SampleRow, type SampleSheet } from "./sheet";
import { bladeClasses, someGrades } from "./sheet";
import { saws, sawsBlock } from "./process";

/** One result of the job's running sheet. */
const show = (name: string): string => `=SAW.CUTDATA($B$4,$B$5,$B$6,"${name}",,${sawsBlock},$B$7)`;
const wide = (label: string, cell: SampleCell, lines: number): SampleRow => text(lines, label, cell);
const firstText = 22;
const texts: readonly SampleRow[] = [
  wide("what limits", show("limit"), 2),
  wide("change first", show("change first"), 2),
  wide("new blade", show("break-in"), 2),
  wide("notes", show("notes"), 4),
  wide("what stands behind it", show("basis"), 8),
  wide("cautions", show("cautions"), 8),
];

/** What hangs at the saw for one job: one page, every number of it computed. */
export const card: SampleSheet = {
  name: "Card",
  widths: [150, 115, 115, 115, 225],
  rows: [
    title("Operator's card (invented data)"),
    note("Filled cells are typed; every number below is computed from them and from the saw on the sheet Process."),
    plain("job", "example 17, 12 pieces"),
    plain("size", "round 7"),
    plain("grade", "17-4PH"),
    plain("blade", "bi-metal"),
    plain("saw", "medium"),
    plain(),
    head("set", "low", "nominal", "high", "unit"),
    ...formatted({ 2: "0" }, [plain("band speed", null, show("band speed"), null, "ft/min")]),
    ...formatted({ 1: "0.000", 2: "0.000", 3: "0.000" }, [
      plain("feed", "=C11*B16/C16", show("feed"), "=C11*D16/C16", "in/min, mean of the way down"),
    ]),
    ...formatted({ 1: "General", 2: "General", 3: "General" }, [
      plain("pitch", null, show("pitch"), null, "teeth per inch"),
    ]),
    ...formatted({ 2: "0.0" }, [plain("teeth", null, show("teeth"), null, "in the cut, on the mean width")]),
    ...formatted({ 2: "0.00" }, [plain("bite", null, show("bite"), null, "thou, rate / band speed")]),
    ...formatted({ 2: "0.000" }, [plain("chip thickness", null, show("chip thickness"), null, "thou")]),
    ...formatted({ 1: "0.00", 2: "0.00", 3: "0.00" }, [
      plain("removal rate", show("rate low"), show("rate"), show("rate high"), "in²/min"),
    ]),
    ...formatted({ 1: "0.0", 2: "0.0", 3: "0.0" }, [
      plain("minutes", show("minutes low"), show("minutes"), show("minutes high"), "min a cut, cutting only"),
    ]),
    ...formatted({ 2: "0.0" }, [plain("power at motor", null, show("power at motor"), null, "hp")]),
    ...formatted({ 2: "0" }, [plain("feed force", null, show("feed force"), null, "lbf")]),
    note("Nominal is the middle figure, not a promise; what stands behind low and high is said below."),
    plain(),
    ...texts,
    plain(),
    head("timed at the saw", "date", "operator", "band", "minutes"),
    ...[1, 2, 3].map((cut) => ({ ...plain(`cut ${cut}`, null, null, null, null), height: 28 })),
  ],
  inputs: ["B3:B7", "B30:E32"],
  merged: ["B3:C3", "A20:E20", ...texts.map((_, i) => `B${firstText + i}:E${firstText + i}`)],
  lists: [
    { area: "B5", words: someGrades, free: true },
    { area: "B6", words: bladeClasses },
    { area: "B7", words: saws },
  ],
  print: { area: "A1:E32", pages: "one", turned: false },
};
