/** Which materials a prefix word speaks of. */
export type Scope = "any" | "UNS" | "W.-Nr." | "aluminium" | "copper";

export interface Stripped {
  readonly rest: string;
  readonly scope: Scope;
}

/** "EN" stands before AW, AC, GJ, MC and numbers only: the EN of EN8, EN19 and EN31 is part of the name. */
const prefixes: readonly (readonly [RegExp, Scope])[] = [
  [/^UNS[\s:-]*(?=[A-Z]\d{5})/i, "UNS"],
  [
    /^(?:W\.?[\s-]*NR?\.?|WERKSTOFF(?:[\s-]*NR\.?|NUMMER)?|MAT(?:ERIAL)?\.?(?:[\s-]*NR\.?)?|DIN(?:\s+EN)?|EN)[\s.:-]*(?=\d\.\d{4})/i,
    "W.-Nr.",
  ],
  [/^AA[\s-]*(?=\d)/i, "aluminium"],
  [/^EN[\s-]*(?=AW|AC)/i, "aluminium"],
  [/^CDA[\s-]*(?=C?\d)/i, "copper"],
  [/^(?:AISI|SAE|ASTM|ASME|JIS|DIN|TYPE|ALLOY|GRADE)\b[\s:.-]*/i, "any"],
  [/^(?:AISI|SAE)(?=\d)/i, "any"],
  [/^EN[\s-]*(?=GJ|MC|\d{4})/i, "any"],
  [/^S(?=A[\s-]?\d{2,3}\b)/i, "any"],
];

/** How the prefixes begin: a quick look that spares the index, built from two thousand designations at load, the patterns. */
const beginnings = new Set([
  "UN",
  "W",
  "W.",
  "W-",
  "W ",
  "WN",
  "WE",
  "MA",
  "DI",
  "EN",
  "AA",
  "CD",
  "AI",
  "SA",
  "AS",
  "JI",
  "TY",
  "AL",
  "GR",
]);

/**
 * A designation without the word of the body that gave it (AISI, UNS, W.-Nr. and the like), and which materials that word
 * speaks of.
 * @param text designation as typed [text]
 * @returns the rest [text] and its scope; the text itself where no such word leads it
 * @source common practice, no source
 */
export function stripPrefix(text: string): Stripped {
  const scope = !beginnings.has(text.slice(0, 2).toUpperCase())
    ? undefined
    : prefixes.find(([pattern]) => pattern.test(text));
  return scope === undefined ? { rest: text, scope: "any" } : { rest: text.replace(scope[0], ""), scope: scope[1] };
}
