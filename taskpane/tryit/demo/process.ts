import { formatted, head, invented, note, plain, type DemoSheet } from "./sheet";

const grades = ["A36", "1045", "4140", "4140 HT", "D2", "304", "17-4PH", "GCI-40", "6061", "C36000", "N07718", "Ti-6Al-4V"] as const;
const saws = ["small", "medium", "large"] as const;
const block = "$A$5:$D$14";
const firstGrade = 19;
const sheetColumns = ["pitch", "band speed", "chip thickness", "rate low", "rate", "rate high", "minutes"];

/** Three invented saws, and what holds each of them back. */
export const process: DemoSheet = {
  name: "Process",
  widths: [190, 130, 130, 150, 95, 95, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented("Saws and settings"),
    head("shop block", ...saws),
    plain("Units", "inch", null, null),
    plain("Saw", ...saws),
    plain("Motor power", 1.5, 5, 12),
    plain("Band width", 1.06, 1.34, 2.13),
    plain("Least band speed", 65, 50, 33),
    plain("Greatest band speed", 260, 330, 490),
    plain("Greatest feed", 10, 20, 40),
    plain("Band tension", 29, 36, 43),
    plain("Guide gap", 3, 3, 3),
    plain("Greatest width", 10, 16, 26),
    plain(),
    note("Minutes of a 7 in round, bi-metal, for each grade on each saw: one formula fills the grid. Beside it the running sheet on the medium saw, one result per heading."),
    plain(null, null, null, null, "band speed in ft/min, chip in thousandths of an inch, rates in in²/min"),
    head("round 7, bi-metal", ...saws, ...sheetColumns),
    ...formatted({ 1: "0.0", 2: "0.0", 3: "0.0", 5: "0", 6: "0.000", 7: "0.00", 8: "0.00", 9: "0.00", 10: "0.0" }, grades.map((grade, i) => {
      const r = firstGrade + i;
      const grid = i === 0 ? [`=SAW.CUTDATA("round 7 in",$A$${firstGrade}:$A$${firstGrade + grades.length - 1},"bi-metal","minutes",,${block},$B$18:$D$18)`, null, null] : [null, null, null];
      return plain(grade, ...grid, ...sheetColumns.map((_, c) => `=SAW.CUTDATA("round 7 in",$A${r},"bi-metal",${String.fromCharCode(69 + c)}$18,,${block},"medium")`));
    })),
    plain(),
    head("a cut as it runs now", "pitch", "band speed", "minutes", "verdict"),
    plain("round 7, 17-4PH", "2/3", 95, 18, `=SAW.CUTCHECK("round 7 in","17-4PH","bi-metal",B33,C33,D33,${block},"medium")`),
    plain("round 7, 17-4PH", "2/3", 95, 40, `=SAW.CUTCHECK("round 7 in","17-4PH","bi-metal",B34,C34,D34,${block},"medium")`),
    plain("round 7, 17-4PH", "2/3", 190, 18, `=SAW.CUTCHECK("round 7 in","17-4PH","bi-metal",B35,C35,D35,${block},"medium")`),
    plain(),
    head("order book of a week", "minutes a cut", "cuts"),
    plain("17-4PH", 18.5, 60),
    plain("4140", 6.5, 110),
    plain("A36", 3.2, 150),
    head("two saws, hours each", 32),
    ...formatted({ 1: "0.00" }, ["hours needed", "share", "expected wait", "hours short"].map((show) => plain(show, `=SAW.WORKLOAD($B$38:$B$40,$C$38:$C$40,$B$41,2,"${show}")`))),
    plain("pieces of 17-4PH in 32 h", "=SAW.THROUGHPUT(B38,B41,0.9)"),
    plain(),
    head("bars to pull", "stock", "piece", "quantity", "bars", "pieces per bar", "remnant", "yield"),
    ...formatted({ 6: "0.0", 7: "0.0 %" }, [plain("round 7, 17-4PH", "20 ft", 10, 60, ...["bars", "pieces per bar", "remnant", "yield"].map((show) => `=SAW.BARS($B49,$C49,$D49,0.065,0.25,4,,"${show}")`))]),
  ],
};
