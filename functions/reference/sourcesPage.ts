import type { Constant } from "../../src/data/constant";
import { cuttingConstants, widthChip, usualBands } from "../../src/data/cuttingConstants";
import { groups } from "../../src/data/groups";
import { constantTables } from "./constantTables";
import { comparisonRows } from "./comparison";
import { table } from "./reference";
import { plainNumber } from "../kinds/sentence";
import { words } from "../kinds/words";

const spread = (low: number, nominal: number, high: number): string =>
  `${plainNumber(nominal)} (${plainNumber(low)}-${plainNumber(high)})`;

type Rows = readonly (readonly string[])[];

/** A table of constants; `more` are rows of what is no single number. */
const constantTable = (constants: Readonly<Record<string, Constant>>, more: Rows): readonly string[] =>
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

/** The constants of everything but the cut, table by table. */
const otherConstants = (): readonly string[] =>
  constantTables
    .filter(({ constants }) => constants !== cuttingConstants)
    .flatMap(({ title, constants }) => [`## Constants: ${title}`, "", ...constantTable(constants, []), ""])
    .slice(0, -1);

const cuttingRows = (): Rows => [
  [
    "chip by mean width",
    widthChip.map(([w, f]) => `${f} at ${w} mm`).join(", "),
    "derived",
    "straight in the logarithm of the width, flat outside; low confidence",
  ],
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
];

const groupRows = (): Rows =>
  groups.map((g) => {
    const bi = g.blades["bi-metal"];
    const bands =
      bi === undefined
        ? ["not suitable", "-"]
        : [
            spread(bi.speed.low / 1000, bi.speed.nominal / 1000, bi.speed.high / 1000),
            spread(bi.chip.low * 1000, bi.chip.nominal * 1000, bi.chip.high * 1000),
          ];
    const { speed, chip } = g.blades.carbide;
    return [
      g.name,
      g.letter,
      `${g.kc11} / ${g.mc}`,
      String(g.chipVolume),
      String(g.maximumHardness),
      ...bands,
      spread(speed.low / 1000, speed.nominal / 1000, speed.high / 1000),
      spread(chip.low * 1000, chip.nominal * 1000, chip.high * 1000),
    ];
  });

/** docs/sources.md: every constant of the cutting model and every cutting group, with its mark. */
export function sourcesPage(): string {
  const bases = [...new Set(groups.flatMap((g) => [g.basis.force, g.basis.hardness, g.basis.ratio, g.basis.bands]))];
  return [
    "# Sources",
    "",
    "Made by `npm run generate` from the data. Marks: **read** in the named source; **memory** of a source that was not read again; **common practice**, no source; **derived** from the formulas; **judgement**, chosen so that the model behaves, fitted to nothing.",
    "",
    "## Constants of the cutting model",
    "",
    ...constantTable(cuttingConstants, cuttingRows()),
    "",
    ...otherConstants(),
    "",
    "## Cutting groups",
    "",
    "Band speed in m/min and mean chip thickness in µm, nominal (low-high). The letter is the ISO 513 one as shops sort it.",
    "",
    ...table(
      [
        "group",
        "letter",
        "kc1.1 [N/mm²] / mc",
        "chip volume",
        "hardness to [HB]",
        "bi-metal speed",
        "bi-metal chip",
        "carbide speed",
        "carbide chip",
      ],
      groupRows(),
    ),
    "",
    "## Compared with a tables book",
    "",
    "Predicted carbide rates of solid rounds of 4, 7 and 10 in, no saw described, beside the area rates that a German vocational tables book prints for band sawing. The book states neither class of blade nor size nor band speed, so the table is a comparison, not a validation; groups outside are left outside and named.",
    "",
    ...table(["group", "grade", "predicted [cm²/min]", "tables book [cm²/min]", "verdict"], comparisonRows()),
    "",
    "Where the values of the groups come from:",
    "",
    ...bases.map((b) => `- ${b}`),
    "",
  ].join("\n");
}
