const table = (rows: string): ReadonlyMap<number, string> =>
  new Map(rows.split(" ").map((row) => [Number(row.split(":")[0]), row.split(":")[1]!] as const));

/** Manufacturers' standard gauge for steel sheet: gauge -> thickness [in]. From memory. */
export const sheetWalls = table(
  "7:0.1793 8:0.1644 9:0.1495 10:0.1345 11:0.1196 12:0.1046 13:0.0897 14:0.0747 15:0.0673 16:0.0598 17:0.0538 18:0.0478 19:0.0418 20:0.0359 22:0.0299 24:0.0239 26:0.0179",
);

/** Birmingham wire gauge, used for tube: gauge -> wall [in]. From memory. */
export const bwgWalls = table(
  "1:0.300 2:0.284 3:0.259 4:0.238 5:0.220 6:0.203 7:0.180 8:0.165 9:0.148 10:0.134 11:0.120 12:0.109 13:0.095 14:0.083 15:0.072 16:0.065 17:0.058 18:0.049 19:0.042 20:0.035 22:0.028 24:0.022",
);
