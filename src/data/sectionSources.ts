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
  as3679: "AS/NZS 3679.1, dimensions and masses as in a producer's catalogue of 2019",
  as3679w: "AS/NZS 3679.2",
  as3679l: "AS/NZS 3679.1, radii and thicknesses as rolled from memory, confirmed by masses and moments of inertia",
  jis: "JIS G 3192, and GB/T 11263 with the same outlines; radii of the I beams from memory, confirmed by the masses",
  ks: "KS D 3502, older radii",
  is808: "IS 808 as revised",
  sp6: "SP:6(1), the older series; channels from memory, confirmed by the masses",
  gb706: "GB/T 706; radii from memory, confirmed by the masses",
  gb706l: "GB/T 706, and GOST 8509 for further thicknesses; radii by leg from memory, confirmed by the masses",
  gost8239: "GOST 8239-89",
  gost8240: "GOST 8240-97",
  en10055: "EN 10055, from memory, confirmed by published areas",
  uap: "French standard channels UAP, from memory, confirmed by published masses",
} as const;

export type SectionSource = keyof typeof sectionSources;
