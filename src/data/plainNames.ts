/**
 * Plain names and the material that is taken for them: judgement, the commonest stock of that name, and the slower one to
 * cut where two are as common. The match says which was taken.
 */
export const plainNames: ReadonlyMap<string, string> = new Map(
  (
    [
      ["mild steel", "a36"],
      ["structural steel", "a36"],
      ["hot rolled steel", "a36"],
      ["hot rolled", "a36"],
      ["HRS", "a36"],
      ["low carbon steel", "1018"],
      ["cold rolled steel", "1018"],
      ["cold rolled", "1018"],
      ["cold drawn steel", "1018"],
      ["CRS", "1018"],
      ["medium carbon steel", "1045"],
      ["alloy steel", "4140-ann"],
      ["tool steel", "d2"],
      ["high speed steel", "m2"],
      ["HSS", "m2"],
      ["bearing steel", "52100"],
      ["stainless", "304"],
      ["stainless steel", "304"],
      ["duplex", "2205"],
      ["duplex stainless", "2205"],
      ["cast iron", "gci-40"],
      ["grey iron", "gci-40"],
      ["gray iron", "gci-40"],
      ["grey cast iron", "gci-40"],
      ["gray cast iron", "gci-40"],
      ["ductile iron", "dci-65-45-12"],
      ["nodular iron", "dci-65-45-12"],
      ["malleable iron", "mal-32510"],
      ["aluminium", "al-6061"],
      ["aluminum", "al-6061"],
      ["brass", "c36000"],
      ["naval brass", "c46400"],
      ["bronze", "c93200"],
      ["bearing bronze", "c93200"],
      ["phosphor bronze", "c51000"],
      ["tin bronze", "c90500"],
      ["manganese bronze", "c86300"],
      ["silicon bronze", "c65500"],
      ["aluminium bronze", "c95400"],
      ["aluminum bronze", "c95400"],
      ["copper", "c11000"],
      ["titanium", "ti-6al-4v"],
      ["pure titanium", "ti-2"],
      ["CP titanium", "ti-2"],
      ["magnesium", "az31b"],
      ["nickel", "alloy200"],
      ["zirconium", "zr-702"],
      ["tungsten heavy alloy", "w-90"],
    ] as const
  ).map(([name, key]) => [name.toUpperCase().replace(/ /g, ""), key]),
);

/** Dual certificates: one piece that meets both designations, cut as the row on the right. */
// prettier-ignore
export const dualCertificates: readonly (readonly [first: string, second: string, key: string])[] = [
  ["304", "304l", "304l"],
  ["316", "316l", "316l"],
  ["a36", "a572-50", "a572-50"],
  ["a36", "s275jr", "a36"],
  ["a572-50", "a992", "a992"],
  ["a572-50", "s355j2", "a572-50"],
  ["a572-50", "a588", "a588"],
  ["a106-b", "a53-b", "a106-b"],
  ["a106-b", "a333-6", "a106-b"],
  ["a500-b", "a500-c", "a500-c"],
  ["a105", "a350-lf2", "a350-lf2"],
];
