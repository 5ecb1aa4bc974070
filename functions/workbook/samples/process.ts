import { columnName } from "../../formula/cellAddress";
import { formatted, head, invented, label, note, plain, someGrades, units, type SampleSheet } from "./sheet";

const grades = [
  "A36",
  "1045",
  "4140",
  "4140 HT",
  "D2",
  "304",
  "17-4PH",
  "GCI-40",
  "6061",
  "C36000",
  "N07718",
  "Ti-6Al-4V",
] as const;
export const saws = ["small", "medium", "large"] as const;
const firstGrade = 19;
const lastGrade = firstGrade + grades.length - 1;
const sheetColumns = ["pitch", "band speed", "chip thickness", "rate low", "rate", "rate high", "minutes"];

/** The name of the block with one column for each saw. */
export const sawsBlock = "Saws";

/** Three invented saws, and what holds each of them back. */
export const process: SampleSheet = {
  name: "Process",
  widths: [250, 130, 130, 150, 95, 95, 95, 90, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented("Saws and settings"),
    head("shop block", ...saws, "unit"),
    plain("Units", "inch", null, null),
    plain("Saw", ...saws),
    plain("Motor power", 1.5, 5, 12, "hp"),
    plain("Band width", 1.06, 1.34, 2.13, "in"),
    plain("Minimum band speed", 65, 50, 33, "ft/min"),
    plain("Maximum band speed", 260, 330, 490, "ft/min"),
    plain("Maximum feed", 10, 20, 40, "in/min"),
    plain("Band tension", 29, 36, 43, "ksi"),
    plain("Guide gap", 3, 3, 3, "in"),
    plain("Maximum width", 10, 16, 26, "in"),
    plain(),
    note(
      "Minutes of a 7 in round, bi-metal, for each grade on each saw: one formula fills the grid. Beside it the running sheet on the medium saw, with the low and high of each rate: what stands behind them, the card says.",
    ),
    units(null, "min", "min", "min", "teeth/in", "ft/min", "in/1000", "in²/min", "in²/min", "in²/min", "min"),
    head("round 7, bi-metal", ...saws, ...sheetColumns),
    ...formatted(
      { 1: "0.0", 2: "0.0", 3: "0.0", 5: "0", 6: "0.000", 7: "0.00", 8: "0.00", 9: "0.00", 10: "0.0" },
      grades.map((grade, i) => {
        const r = firstGrade + i;
        const grid =
          i === 0
            ? [
                `=SAW.CUTDATA("round 7 in",$A$${firstGrade}:$A$${lastGrade},"bi-metal","minutes",,${sawsBlock},$B$18:$D$18)`,
                null,
                null,
              ]
            : [null, null, null];
        return plain(
          grade,
          ...grid,
          ...sheetColumns.map(
            (_, c) => `=SAW.CUTDATA("round 7 in",$A${r},"bi-metal",${columnName(4 + c)}$18,,${sawsBlock},"medium")`,
          ),
        );
      }),
    ),
    plain(),
    head("a cut as it runs now", "pitch", "band speed, ft/min", "minutes", "verdict"),
    ...[
      ["2/3", 95, 18],
      ["2/3", 95, 40],
      ["2/3", 190, 18],
    ].map((cut, i) =>
      plain(
        "round 7, 17-4PH",
        ...cut,
        `=SAW.CUTCHECK("round 7 in","17-4PH","bi-metal",B${33 + i},C${33 + i},D${33 + i},,${sawsBlock},"medium")`,
      ),
    ),
    plain(),
    head("order book of a week", "minutes a cut", "cuts"),
    plain("17-4PH", 18.5, 60),
    plain("4140", 6.5, 110),
    plain("A36", 3.2, 150),
    label("two saws, hours each", 32),
    ...formatted(
      { 1: "0.00" },
      ["hours needed", "share", "expected wait", "hours short"].map((show) =>
        plain(
          show,
          `=SAW.WORKLOAD($B$38:$B$40,$C$38:$C$40,$B$41,2,"${show}")`,
          null,
          show === "expected wait" ? "min, mean wait for a saw when jobs come at random" : null,
        ),
      ),
    ),
    ...formatted({ 1: "0" }, [plain("pieces of 17-4PH in these hours", "=SAW.THROUGHPUT(B38,B41,0.9)")]),
    plain(),
    head("bars to pull", "stock", "piece, in", "quantity", "bars", "pieces per bar", "remnant", "yield"),
    ...formatted({ 4: "0", 5: "0", 6: "0.0", 7: "0.0 %" }, [
      plain(
        "round 7, 17-4PH",
        "20 ft",
        10,
        60,
        ...["bars", "pieces per bar", "remnant", "yield"].map(
          (show) => `=SAW.BARS($B49,$C49,$D49,0.065,0.25,4,,"${show}")`,
        ),
      ),
    ]),
  ],
  frozen: { rows: 2, columns: 1 },
  inputs: ["B5:D14", `A${firstGrade}:A${lastGrade}`, "B33:D35", "A38:C40", "B41", "B49:D49"],
  names: { [sawsBlock]: "A5:D14" },
  tables: [
    { name: "SawBlock", area: "A4:E14" },
    { name: "RunningCuts", area: "A32:E35" },
    { name: "OrderBook", area: "A37:C40" },
  ],
  spills: [`B${firstGrade}:D${lastGrade}`],
  lists: [
    { area: "B5", words: ["inch", "metric"] },
    { area: `A${firstGrade}:A${lastGrade}`, words: someGrades, free: true },
  ],
  print: { area: "A1:N49", pages: "wide", turned: true },
};
