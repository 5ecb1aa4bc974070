/** Where the dimensions and areas of the section tables come from. Dimensions are facts; the standards are their origin. */
// prettier-ignore
export const sectionSources = {
  a6: "ASTM A6/A6M; areas as in the AISC Manual, Part 1, version 16 values",
  aisc: "AISC Manual, Part 1, Table 1-8: tees cut from W shapes",
  en10365: "EN 10365 (also BS 4-1 for UB, UC and PFC)",
  din1025: "EN 10365 with the geometry of DIN 1025-1; flange slope 14 % from memory, confirmed by the areas",
  din1026: "EN 10365 with the geometry of DIN 1026-1",
  en10056: "EN 10056-1",
  mill: "further mill sizes with the radii of EN 10056-1; rows without a published area are calculated",
  b3610: "ASME B36.10M",
} as const;

export type SectionSource = keyof typeof sectionSources;
