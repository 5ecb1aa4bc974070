import type { SeriesFamily } from "./seriesFamily";

/** European shapes beside those of EN 10365, millimetres. Rows as in seriesFamily.ts. */
// prettier-ignore
export const furtherEuropeanSections: readonly SeriesFamily[] = [
  {
    name: "T",
    kind: "tee",
    source: "en10055",
    key: 1,
    cells: [1, 2, 3, 4, 5, 6],
    area: 7,
    slope: 0,
    rows: `
30,30,30,4,4,4,2,2.26
35,35,35,4.5,4.5,4.5,2.25,2.97
40,40,40,5,5,5,2.5,3.77
50,50,50,6,6,6,3,5.66
60,60,60,7,7,7,3.5,7.94
70,70,70,8,8,8,4,10.6
80,80,80,9,9,9,4.5,13.6
100,100,100,11,11,11,5.5,20.9
120,120,120,13,13,13,6.5,29.6
140,140,140,15,15,15,7.5,39.9
`,
  },
  {
    name: "UAP",
    kind: "channel",
    source: "uap",
    key: 1,
    cells: [1, 2, 3, 4, 5],
    slope: 0,
    rows: `
80,80,45,5,8,8
100,100,50,5.5,8.5,8.5
130,130,55,6,9.5,9.5
150,150,65,7,10.25,10.25
175,175,70,7.5,10.75,10.75
200,200,75,8,11.5,11.5
220,220,80,8,12.5,12.5
250,250,85,9,13.5,13.5
300,300,100,9.5,16,16
`,
  },
];
