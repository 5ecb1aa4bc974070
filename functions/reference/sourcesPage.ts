import type { Constant } from "../../src/data/constant";
import { cuttingConstants, madePitches, pitchPoints, speedPoints, usualBands } from "../../src/data/cuttingConstants";
import { groups, type BladeRow, type Group } from "../../src/data/groups";
import { symptomSources } from "../../src/data/symptomSources";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { plainNumber } from "../kinds/sentence";
import { words } from "../kinds/words";
import { constantTables } from "./constantTables";
import { compared, summary, type Compared } from "./comparison";
import { publishedPage, publishedRates, publishedSources } from "./published";
import { table } from "./reference";

/** Three significant digits, as they are read. */
const three = (x: number): string => String(Number(x.toPrecision(3)));

type Rows = readonly (readonly string[])[];

/** A table of constants; `more` are rows of what is no single number. */
const constantTable = (constants: Readonly<Record<string, Constant>>, more: Rows = []): readonly string[] =>
  table(
    ["constant", "value", "mark", "basis"],
    [
      ...Object.entries(constants).map(([name, c]) => [
        words(name),
        `${plainNumber(c.value)} ${c.unit}`,
        c.mark,
        c.basis,
      ]),
      ...more,
    ],
  );

/** What of the cutting model is no single number. */
const cuttingRows = (): Rows => [
  [
    "usual band by overall width",
    usualBands
      .map(
        (b) => `${b.width} × ${b.thickness} mm, kerf ${b.kerf}${b.upTo === Infinity ? " above" : ` to ${b.upTo} mm`}`,
      )
      .join("; "),
    "judgement",
    "kerfs: common practice",
  ],
  ["pitches made, bi-metal", madePitches["bi-metal"].join(" "), "common practice", "no source"],
  [
    "pitches made, carbide",
    madePitches.carbide.join(" "),
    "common practice",
    "finer carbide is taken when it is typed",
  ],
];

/** The constants of everything but the cut, table by table. */
const otherConstants = (): readonly string[] =>
  constantTables
    .filter(({ constants }) => constants !== cuttingConstants)
    .flatMap(({ title, constants }) => section(`Constants: ${title}`, constantTable(constants)));

const widthTables = (): readonly string[] => [
  ...table(
    ["mean width [in]", ...pitchPoints.map((p) => String(p.width))],
    [
      ["pitch", ...pitchPoints.map((p) => p.value)],
      ["mark", ...pitchPoints.map((p) => p.mark)],
    ],
  ),
  "",
  ...table(
    ["mean width [in]", ...speedPoints.map((p) => String(p.width))],
    [
      ["factor on the band speed", ...speedPoints.map((p) => String(p.value))],
      ["mark", ...speedPoints.map((p) => p.mark)],
    ],
  ),
];

const bladeCells = (row: BladeRow | undefined): readonly string[] =>
  row === undefined
    ? ["-", "-", "-"]
    : [plainNumber(row.speed / 1000), plainNumber(row.bite * 1000), String(row.spread)];

const groupTable = (): readonly string[] =>
  table(
    ["group", "letter", "kc1.1 [N/mm²] / mc", "R", "HB0", "bi-metal v", "bite", "S", "carbide v", "bite", "S"],
    groups.map((g) => [
      g.name,
      g.letter,
      `${g.kc11} / ${g.mc}`,
      String(g.chipVolume),
      String(g.maximumHardness),
      ...bladeCells(g.blades["bi-metal"]),
      ...bladeCells(g.blades.carbide),
    ]),
  );

const basisRows = (): readonly (readonly string[])[] =>
  groups.flatMap((g) =>
    (["bi-metal", "carbide"] as const).flatMap((blade) => {
      const row = g.blades[blade];
      if (row === undefined) return [];
      const { speed, bite } = row.basis;
      return [[g.name, blade, `${speed.mark}: ${speed.text}`, `${bite.mark}: ${bite.text}`, row.basis.spread]];
    }),
  );

const gradeRows = (): readonly (readonly string[])[] =>
  builtInMaterials().flatMap(({ key, name, group, bandSpeed, biteFactor }) =>
    bandSpeed === undefined || group === undefined
      ? []
      : [
          [
            key,
            name,
            group.name,
            three(bandSpeed.value / 304.8),
            `${bandSpeed.basis.mark}: ${bandSpeed.basis.text}`,
            biteFactor === undefined ? "" : String(biteFactor.value),
            biteFactor === undefined ? "" : `${biteFactor.basis.mark}: ${biteFactor.basis.text}`,
          ],
        ],
  );

const comparedRow = ({ published: p, group, low, nominal, high, inside }: Compared): readonly string[] => [
  group,
  p.grade,
  `${p.section} in`,
  `${p.blade}${p.pitch === "" ? "" : ` ${p.pitch}`}`,
  `${three(low)} / ${three(nominal)} / ${three(high)} ${p.unit}/min`,
  `${p.low}-${p.high} ${p.unit}/min (${p.printed})`,
  inside ? "inside" : "outside",
  p.source,
];

const summed = (title: string, some: readonly Compared[]): readonly string[] => {
  const { mean, scatter, inside } = summary(some);
  return [title, String(some.length), mean.toFixed(3), `×/÷ ${scatter.toFixed(2)}`, `${inside} of ${some.length}`];
};

const comparedHeads = [
  "group",
  "grade",
  "section",
  "blade",
  "predicted low / nominal / high",
  "published",
  "its middle lies",
  "calibrated on",
];

/** The published comparison, by group. */
function comparison(): readonly string[] {
  const rows = compared();
  const of = (source: keyof typeof publishedSources) => rows.filter((r) => r.published.source === source);
  const order = new Map<string, number>(groups.map((g, i) => [g.name, i]));
  const byGroup = [...rows].sort((a, b) => order.get(a.group)! - order.get(b.group)!);
  return [
    `The model is calibrated on all ${publishedRates.length} rates below: that it gives them back shows that it fits them, not that it is right elsewhere. Groups that are not named here have no published rate behind them.`,
    "",
    ...table(comparedHeads, byGroup.map(comparedRow)),
    "",
    "Predicted against the geometric middle of what is printed:",
    "",
    ...table(
      ["calibrated on", "rows", "geometric mean", "scatter", "middle between low and high"],
      [
        summed("the cutting chart: tool and stainless steel, bi-metal", of("chart")),
        summed("the tables book: carbide", of("book")),
        summed("all", rows),
      ],
    ),
    "",
    ...Object.entries(publishedSources).map(([name, text]) => `- ${name}: ${text}`),
    `- band speeds of ${publishedPage.speeds.length} grades, and pitch and speed by size: ${publishedPage.source}`,
  ];
}

const named = (of: (group: Group) => boolean): string =>
  groups
    .filter(of)
    .map((g) => g.name)
    .join(", ");

const intro =
  "Made by `npm run generate` from the data. Marks: **read** in the named source; **memory** of a source that was not read again; **common practice**, no source; **derived** from the formulas; **judgement**, chosen so that the model behaves, fitted to nothing. How the numbers are used: [method.md](method.md).";
const widths =
  "Straight in the logarithm of the width between the points. Pitch: the first line goes on down below 0.25 in, above 24 in it stays. Factor: flat outside. Read: Machinery's Handbook, 31st ed., p. 1245.";
const groupWords = (): string =>
  `Band speed v in m/min at 4 in (100 mm) of mean width, with coolant; bite in µm; S is the spread of the rate, ×/÷. Above the hardness HB0 the speed is taken back. The letter is the ISO 513 one as shops sort it. Bulky: ${named((g) => g.bulky)} (magnesium is in it). Cut dry as a rule: ${named((g) => g.dry)}, and magnesium.`;
const gradeWords =
  "Bi-metal, ft/min at 4 in of mean width, annealed or normalised; the factor stands on the group's bite. Every other grade takes its group's.";

const section = (title: string, ...parts: readonly (string | readonly string[])[]): readonly string[] => [
  `## ${title}`,
  ...parts.flatMap((part) => ["", ...(typeof part === "string" ? [part] : part)]),
  "",
];

/** docs/sources.md: every constant of the cutting model, every group and grade, with its mark, and what is published beside it. */
export function sourcesPage(): string {
  const bases = [...new Set(groups.flatMap((g) => [g.basis.force, g.basis.hardness, g.basis.ratio]))];
  return [
    "# Sources",
    "",
    intro,
    "",
    ...section("Constants of the cutting model", constantTable(cuttingConstants, cuttingRows())),
    ...section("Pitch and band speed by the mean width of the work", widths, widthTables()),
    ...section(
      "Cutting groups",
      groupWords(),
      groupTable(),
      "Where speeds, bites and spreads come from:",
      table(["group", "blade", "band speed", "bite", "spread"], basisRows()),
      "And the other values of the groups:",
      bases.map((b) => `- ${b}`),
    ),
    ...section(
      "Grades with a band speed or a bite of their own",
      gradeWords,
      table(["key", "grade", "group", "speed", "mark", "bite ×", "mark"], gradeRows()),
    ),
    ...otherConstants(),
    ...section(
      "What goes wrong",
      "Symptoms, causes, checks and remedies of CUTCHECK are common practice without a source, their weights judgement, but for these facts:",
      table(["fact", "source", "how far it was read"], symptomSources),
    ),
    ...section("Beside what is published", comparison()),
  ].join("\n");
}
