/** Published figures of band sawing beside which the model is put: what is read from them, and what it is calibrated on. */

const handbook =
  "Machinery's Handbook, 31st ed., p. 1245: bimetal band saw speeds for 4 in material with coolant (read; grades paired with speeds by their order)";

/** Where the published rates come from, and how near to them the model must be. */
export const publishedSources = {
  chart:
    "operating manual of a 550 mm horizontal band saw, standard cutting chart, sec. 7.3: 6 in round, normalised, bi-metal 3/4 (read)",
  book: "German vocational tables book, sawing page: area rates of band sawing; class of blade, size and speed are not stated (read)",
  trade: "trade figure, common practice, no source",
  "running in":
    "operating manual of a small horizontal band saw: rate while a band is run in, 30-35 cm²/min on this steel (read), at half the feed (common practice)",
} as const;

export interface PublishedRate {
  readonly source: keyof typeof publishedSources;
  readonly section: string;
  readonly grade: string;
  /** What the source prints. */
  readonly printed: string;
  readonly blade: "bi-metal" | "carbide";
  /** Empty: the pitch that the model chooses. */
  readonly pitch: string;
  readonly low: number;
  readonly high: number;
  readonly unit: "in²" | "cm²";
}

// prettier-ignore
const rateRows = [
  ["chart", "round 6", "304", "304", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "303", "303", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "310", "310", "bi-metal", "3/4", 1, 2, "in²"],
  ["chart", "round 6", "AISI 317L", "317", "bi-metal", "3/4", 1, 2, "in²"],
  ["chart", "round 6", "316", "316", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "321", "321", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "410", "410", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "416", "416", "bi-metal", "3/4", 4, 6, "in²"],
  ["chart", "round 6", "430", "430", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "440C", "440C", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "420", "420", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "T1", "T1", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "T15", "T15", "bi-metal", "3/4", 1, 2, "in²"],
  ["chart", "round 6", "M1", "M1", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "M2", "M2", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "A2", "A2", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "D2", "D2", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "D7", "D7", "bi-metal", "3/4", 1, 2, "in²"],
  ["chart", "round 6", "O1", "O1", "bi-metal", "3/4", 4, 5, "in²"],
  ["chart", "round 6", "O6", "O6", "bi-metal", "3/4", 5, 6, "in²"],
  ["chart", "round 6", "W1", "W1", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "H13", "H13", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "H21", "H21", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "S1", "S1", "bi-metal", "3/4", 3, 4, "in²"],
  ["chart", "round 6", "S5", "S5", "bi-metal", "3/4", 2, 3, "in²"],
  ["chart", "round 6", "L6", "L6", "bi-metal", "3/4", 4, 5, "in²"],
  ["book", "round 7", "A36", "structural and carbon steel", "carbide", "", 170, 220, "cm²"],
  ["book", "round 7", "1045", "structural and carbon steel", "carbide", "", 170, 220, "cm²"],
  ["book", "round 7", "4140", "heat-treatable steel", "carbide", "", 130, 180, "cm²"],
  ["book", "round 7", "4140 HT", "heat-treatable and case-hardening steel", "carbide", "", 80, 180, "cm²"],
  ["book", "round 7", "430", "stainless steel", "carbide", "", 80, 120, "cm²"],
  ["book", "round 7", "304", "stainless steel", "carbide", "", 80, 120, "cm²"],
  ["book", "round 7", "GCI-30", "cast iron", "carbide", "", 80, 120, "cm²"],
  ["book", "round 7", "65-45-12", "cast iron", "carbide", "", 80, 120, "cm²"],
  ["book", "round 7", "6061", "aluminium", "carbide", "", 230, 280, "cm²"],
  ["book", "round 7", "C36000", "brass", "carbide", "", 130, 180, "cm²"],
  ["trade", "round 7", "17-4PH", "17-4PH", "bi-metal", "", 2, 2.5, "in²"],
  ["trade", "round 7", "17-4PH", "17-4PH", "carbide", "", 8, 11, "in²"],
  ["running in", "round 4", "A36", "steel of 410-510 N/mm², average sizes, solid", "bi-metal", "", 60, 70, "cm²"],
] as const;

/** Published removal rates [in²/min or cm²/min]; all of them are what the model is calibrated on. */
export const publishedRates: readonly PublishedRate[] = rateRows.map(
  ([source, section, grade, printed, blade, pitch, low, high, unit]) => ({
    source,
    section,
    grade,
    printed,
    blade,
    pitch,
    low,
    high,
    unit,
  }),
);

/** Band speeds of grades [ft/min], and pitches and speed factors by size, of one page. */
export const publishedPage = {
  source: handbook,
  // prettier-ignore
  speeds: [
    ["304", 120],
    ["1008", 320],
    ["1015", 320],
    ["1018", 300],
    ["1020", 320],
    ["1025", 320],
    ["1026", 300],
    ["1030", 330],
    ["1035", 310],
    ["1040", 270],
    ["1045", 220],
    ["1060", 200],
    ["1095", 185],
    ["1117", 340],
    ["1137", 290],
    ["1141", 280],
    ["1144", 280],
    ["1215", 400],
    ["4130", 270],
    ["4140", 250],
    ["4150", 200],
    ["4340", 220],
    ["5160", 220],
    ["6150", 210],
    ["8620", 240],
    ["9310", 175],
    ["52100", 160],
    ["12L14", 425],
    ["A36", 270],
    ["W1", 225],
    ["O1", 200],
    ["H11", 190],
    ["H13", 190],
    ["L6", 190],
    ["A2", 180],
    ["S7", 125],
    ["M2", 100],
    ["M42", 100],
    ["T1", 100],
    ["D2", 90],
    ["Ti grade 2", 80],
    ["Ti-6Al-4V", 70],
    ["Ti-6242", 75],
  ],
  /** Width of a square [in], pitch, factor on the band speed. */
  // prettier-ignore
  sizes: [
    [0.25, "10/14", 1.15],
    [0.75, "6/10", 1.12],
    [1.25, "4/6", 1.1],
    [4, "3/4", 1],
    [8, "2/3", 0.88],
  ],
  /** Share of the speed that is left without coolant. */
  dry: [0.5, 0.7],
} as const;
