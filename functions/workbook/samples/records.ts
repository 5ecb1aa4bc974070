import { columnName } from "../../formula/cellAddress";
import { charted, firstBlade, firstCut, inUse, onTrial } from "./logs";
import { formatted, head, invented, label, note, plain, units, type SampleChart, type SampleSheet } from "./sheet";

const quotes: readonly (readonly [size: string, grade: string, blade: string, pieces: number, saw: string])[] = [
  ["round 5", "304", "bi-metal", 20, "large"],
  ["round 6", "4140", "bi-metal", 20, "large"],
  ["round 7", "17-4PH", "carbide", 12, "large"],
  ["round 4", "Ti-6Al-4V", "bi-metal", 6, "small"],
];
const firstQuote = 6;
const shown = ["price line", "minutes low", "minutes", "minutes high", "read as"];
const quote = (r: number, block: string, show: string): string =>
  `=SAW.QUOTE($A${r},$C${r},$D${r},${block},$B${r},6,$E${r},"${show}")`;

const lifeHead = firstQuote + quotes.length + 2;
const lifeShown = ["mean", "low", "high", "spread", "blades", "blades more"];
const lives = ({ from, to }: typeof inUse, column: string): string => `Blades!$${column}$${from}:$${column}$${to}`;

const oddsHead = lifeHead + 4;
const odds = (show: string): string =>
  `=SAW.BLADEODDS($B$${oddsHead + 1}:$D$${oddsHead + 1},$B$${oddsHead + 2}:$D$${oddsHead + 2},${lives(inUse, "E")},${lives(onTrial, "E")},$B$${oddsHead + 3},${lives(inUse, "F")},${lives(onTrial, "F")},12,"${show}")`;

const pointHead = oddsHead + 9;
const firstPoint = pointHead + 1;
const lastPoint = pointHead + charted;
const cutData = (row: number, block: string, show: string): string =>
  `=SAW.CUTDATA(Cuts!$E$${row},Cuts!$F$${row},Cuts!$D$${row},"${show}",Cuts!$G$${row},${block},Cuts!$B$${row})`;
const point = (i: number) => {
  const row = firstCut + i;
  return plain(
    `=Cuts!$E$${row}`,
    `=Cuts!$F$${row}`,
    cutData(row, "Block", "minutes"),
    cutData(row, "Tuned", "minutes"),
    `=Cuts!$I$${row}`,
    cutData(row, "Tuned", "minutes low"),
    cutData(row, "Tuned", "minutes high"),
  );
};
const line = lastPoint + 2;

const barHead = line + 4;
const bladeCount = onTrial.to - firstBlade + 1;
const lastRow = barHead + bladeCount;
const bar = (i: number) => {
  const row = firstBlade + i;
  return plain(
    `=Blades!$A$${row}`,
    `=IF(Blades!$F$${row}="still in use",0,Blades!$E$${row})`,
    `=Blades!$E$${row}-B${barHead + 1 + i}`,
  );
};

const timed: SampleChart = {
  kind: "lines",
  title: "Minutes timed against minutes predicted",
  says: "Each timed cut as a point over what the tuned model predicts for it; dashes are low and high. Most points lie between the dashes, near the line.",
  across: "minutes predicted, tuned",
  up: "minutes",
  ends: { across: 15, up: 18 },
  over: `I${pointHead}:Q${pointHead + 20}`,
  series: [
    ...(["circle", "dash", "dash"] as const).map((points, i) => ({
      name: `${columnName(4 + i)}${pointHead}`,
      across: `D${firstPoint}:D${lastPoint}`,
      up: `${columnName(4 + i)}${firstPoint}:${columnName(4 + i)}${lastPoint}`,
      points,
    })),
    { name: `A${line}`, across: `D${line + 1}:D${line + 2}`, up: `E${line + 1}:E${line + 2}` },
  ],
};
const bladeLives: SampleChart = {
  kind: "stacked columns",
  title: "Area that each blade cut",
  says: "One column for each blade, the blades in use first and then those of the offer; a blade still in use has another colour, its column will grow.",
  across: "blade",
  up: "area cut, in²",
  over: `I${barHead}:Q${barHead + 18}`,
  series: ["B", "C"].map((column) => ({
    name: `${column}${barHead}`,
    across: `A${barHead + 1}:A${lastRow}`,
    up: `${column}${barHead + 1}:${column}${lastRow}`,
  })),
};

/** What the logs change: quotes before and after, blade lives, an offer weighed, and the charts' cells. */
export const records: SampleSheet = {
  name: "Records",
  widths: [185, 105, 110, 110, 90, 95, 95, 95, 95, 95, 420, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented(
      "The shop's own numbers",
      note(
        "The same quotes with the block as it is typed, and with the tuned rows: low and high draw together, and the line says from how many cuts.",
      ),
    ),
    units(null, null, null, null, null, "money", "money", "min", "min", "min"),
    head(
      "size",
      "material",
      "blade",
      "pieces",
      "saw",
      "price before",
      "price after",
      "minutes low",
      "minutes",
      "minutes high",
      "read as",
    ),
    ...formatted(
      { 5: "0.00", 6: "0.00", 7: "0.0", 8: "0.0", 9: "0.0" },
      quotes.map((cells, i) =>
        plain(
          ...cells,
          quote(firstQuote + i, "Block", "price line"),
          ...shown.map((show) => quote(firstQuote + i, "Tuned", show)),
        ),
      ),
    ),
    plain(),
    note(
      "Mean blade life in in², what cost per area needs; 80 % lie between low and high. Blades more: until the mean is known to 10 %.",
    ),
    head("blades", ...lifeShown),
    ...formatted(
      { 1: "#,##0", 2: "#,##0", 3: "#,##0", 4: "0.00", 5: "0", 6: "0" },
      (
        [
          ["in use", inUse],
          ["offer P", onTrial],
        ] as const
      ).map(([name, rows]) =>
        plain(name, ...lifeShown.map((show) => `=SAW.BLADELIFE(${lives(rows, "E")},${lives(rows, "F")},"${show}")`)),
      ),
    ),
    plain(),
    head("is the offer cheaper", "price", "life, not used", "rate"),
    ...formatted({ 1: "0", 3: "0.0" }, [plain("in use", 180, null, 3), plain("offer P", 260, null, 3.3)]),
    label("a saw hour is worth", 72),
    ...formatted({ 1: "0.00" }, [plain("likely, 0 to 1", odds("likely"))]),
    plain("verdict", odds("verdict")),
    plain(),
    note(
      "The cuts of the log that the chart shows: minutes before and after tuning, timed, and the tuned low and high.",
    ),
    units(null, null, "min", "min", "min", "min", "min"),
    head("cut", "grade", "before", "predicted, tuned", "timed", "low", "high"),
    ...formatted(
      { 2: "0.00", 3: "0.00", 4: "0.00", 5: "0.00", 6: "0.00" },
      Array.from({ length: charted }, (_, i) => point(i)),
    ),
    plain(),
    label("as predicted"),
    ...formatted({ 3: "0", 4: "0" }, [plain("line in the chart", null, null, 0, 0), plain("", null, null, 15, 15)]),
    plain(),
    head("blade", "came to its end", "still in use"),
    ...formatted(
      { 1: "#,##0", 2: "#,##0" },
      Array.from({ length: bladeCount }, (_, i) => bar(i)),
    ),
  ],
  frozen: { rows: 2, columns: 0 },
  inputs: [
    `A${firstQuote}:E${firstQuote + quotes.length - 1}`,
    `B${oddsHead + 1}:D${oddsHead + 2}`,
    `B${oddsHead + 3}`,
  ],
  charts: [timed, bladeLives],
  print: { area: `A1:Q${lastRow + 6}`, pages: "wide", turned: true },
};
