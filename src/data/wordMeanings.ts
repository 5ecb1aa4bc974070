/** Why a word ends the reading of a size: what it names is no plain metal bar. */
export type Stop = "goods" | "not metal" | "other shape";

/** Meaning of a foreign word -> the English words that the readers know; nothing for words that are read over. */
// prettier-ignore
export const wordMeanings: ReadonlyMap<string, string> = new Map([
  ...["round", "square", "flat", "hex", "octagon", "tube", "round tube", "square tube", "rect tube", "box", "angle", "tee", "plate", "bar", "bars",
    "dia", "od", "id", "wall", "mm", "cm", "m", "in", "ft", "pcs", "qty", "length", "long", "random", "cut", "welded",
    "steel", "stainless", "aluminium", "brass", "bronze", "copper", "titanium", "iron", "nickel", "tool steel"].map((word) => [word, word] as const),
  ["seamless", "seamless tube"], ["channel", "u"], ["I beam", "beam"], ["H beam", "beam"], ["keystock", "bar"], ["across", "af"], ["nominal", "dn"], ["schedule", "sch"],
  ["reference", "iso"], ["length or bars", "length"], ["pack", "bdl"], ["skip", ""],
]);

/** Meanings whose words end the reading of a size. */
export const wordStops: ReadonlyMap<string, Stop> = new Map([
  ["goods", "goods"],
  ["not metal", "not metal"],
  ["other shape", "other shape"],
  ["rebar", "other shape"],
  ["wire", "other shape"],
  ["zee", "other shape"],
]);

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Meanings that may stand joined to the number before or behind them: 8szt, 3м, 肉厚3. */
export const joinedBehind: ReadonlySet<string> = set("mm cm m in ft pcs bars wall long dia od id");
export const joinedBefore: ReadonlySet<string> = set(
  "dia wall od id length round square flat hex tube box angle channel",
);
/** Meanings of the end of a compound that decide alone, whatever stands before: every kind of Rohr is a tube. */
export const decidingEnds: ReadonlySet<string> = set("tube box plate goods wire");

/** Languages that part the thousands by a point, and those that part them by a space. */
export const pointThousands: ReadonlySet<string> = set("de nl it pt id vi tr");
export const spaceThousands: ReadonlySet<string> = set("fr pl cs sv ru hu");
/** Languages that write 1.1/2 for 1-1/2. */
export const pointFractions: ReadonlySet<string> = set("pt es");
