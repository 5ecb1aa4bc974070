/** Which materials a prefix word speaks of. */
export type Scope = "any" | "UNS" | "W.-Nr." | "aluminium" | "copper";

export interface Stripped {
  readonly rest: string;
  readonly scope: Scope;
}

/**
 * How a prefix begins, its pattern and its scope. The beginnings spare the index, built from thousands of designations at
 * load, most of the patterns. "EN" stands before AW, AC, GJ, MC and numbers only: the EN of EN8, EN19 and EN31 is part of
 * the name.
 */
const prefixes: readonly (readonly [beginnings: string, RegExp, Scope])[] = [
  ["UN", /^UNS[\s:-]*(?=[A-Z]\d{5})/i, "UNS"],
  [
    "W,W.,W-,W ,WN,WE,MA,DI,EN",
    /^(?:W\.?[\s-]*NR?\.?|WERKSTOFF(?:[\s-]*NR\.?|NUMMER)?|MAT(?:ERIAL)?\.?(?:[\s-]*NR\.?)?|DIN(?:\s+EN)?|EN)[\s.:-]*(?=\d\.\d{4})/i,
    "W.-Nr.",
  ],
  ["AA", /^AA[\s-]*(?=\d)/i, "aluminium"],
  ["EN", /^EN[\s-]*(?=AW|AC)/i, "aluminium"],
  ["CD", /^CDA[\s-]*(?=C?\d)/i, "copper"],
  ["AI,SA,AS,JI,DI,TY,AL,GR", /^(?:AISI|SAE|ASTM|ASME|JIS|DIN|TYPE|ALLOY|GRADE)\b[\s:.-]*/i, "any"],
  ["AI,SA", /^(?:AISI|SAE)(?=\d)/i, "any"],
  ["EN", /^EN[\s-]*(?=GJ|MC|\d{4})/i, "any"],
  ["SA", /^S(?=A[\s-]?\d{2,3}\b)/i, "any"],
];

type Prefix = readonly [RegExp, Scope];

const byBeginning: ReadonlyMap<string, readonly Prefix[]> = prefixes.reduce((map, [beginnings, pattern, scope]) => {
  for (const beginning of beginnings.split(","))
    map.set(beginning, [...(map.get(beginning) ?? []), [pattern, scope] as const]);
  return map;
}, new Map<string, readonly Prefix[]>());

/**
 * A designation without the word of the body that gave it (AISI, UNS, W.-Nr. and the like), and which materials that word
 * speaks of.
 * @param text designation as typed [text]
 * @returns the rest [text] and its scope; the text itself where no such word leads it
 * @source common practice, no source
 */
export function stripPrefix(text: string): Stripped {
  const found = byBeginning.get(text.slice(0, 2).toUpperCase())?.find(([pattern]) => pattern.test(text));
  return found === undefined ? { rest: text, scope: "any" } : { rest: text.replace(found[0], ""), scope: found[1] };
}
