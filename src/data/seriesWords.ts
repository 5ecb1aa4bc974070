import { australianSections } from "./sectionsAu";
import { chineseSections } from "./sectionsCn";
import { furtherEuropeanSections } from "./sectionsEu";
import { indianSections } from "./sectionsIn";
import { japaneseSections, koreanSections } from "./sectionsJp";
import { russianParallel, russianSections } from "./sectionsRu";
import type { SeriesFamily } from "./seriesFamily";

export const seriesFamilies: readonly SeriesFamily[] = [
  ...australianSections,
  ...japaneseSections,
  ...koreanSections,
  ...indianSections,
  ...chineseSections,
  ...russianSections,
  ...russianParallel,
  ...furtherEuropeanSections,
];

/**
 * Words of sizes and the tables they name, by how many numbers stand behind them; with other counts, or nothing found, the
 * word means what it means without these tables. seriesText.ts makes the words of one standard: JIS H becomes jish.
 */
// prettier-ignore
const entries: readonly (readonly [words: string, counts: string, tables: string])[] = [
  ["ub", "12", "AU UB"], ["uc", "12", "AU UC"], ["wb", "12", "AU WB;ISWB"], ["wc", "12", "AU WC"], ["pfc", "12", "AU PFC"],
  ["ea", "23", "AU EA"], ["ua", "3", "AU UA"],
  ["h beam", "24", "JIS H;KS H"], ["jish", "24", "JIS H"], ["ksh", "24", "KS H"], ["gbh hw hm hn", "24", "GB H"],
  ["i", "1", "GB I;GOST I"], ["i jisi ksi", "4", "JIS I"], ["gbi", "12", "GB I"], ["gosti", "1", "GOST I"],
  ["c u channel jisc ksc", "4", "JIS C"], ["gbc", "12", "GB C"], ["gbu", "1", "GB C;GOST У"], ["gostu", "12", "GOST У"], ["gostp", "12", "GOST П"],
  ["jisl ksl", "23", "JIS L"], ["gbl gostl", "23", "GB L"], ["isa", "23", "ISA"], ["l", "3", "JIS L;GB L;ISA"],
  ["ismb", "12", "ISMB"], ["islb", "12", "ISLB"], ["iswb", "12", "ISWB"], ["ishb", "12", "ISHB"], ["ismc", "12", "ISMC"], ["mc", "1", "ISMC"],
  ["uap", "1", "UAP"], ["t tee", "1", "T"],
];

/** Word and count of numbers, such as "h 4" -> tables; with 0 none, for each word that is known. */
export const seriesWords: ReadonlyMap<string, readonly SeriesFamily[]> = new Map(
  entries.flatMap(([words, counts, tables]) => {
    const named = tables.split(";");
    const families = seriesFamilies.filter(({ name }) => named.includes(name));
    const keys = words.split(" ").flatMap((word) => Array.from(`0${counts}`, (count) => `${word} ${count}`));
    return keys.map((key): readonly [string, readonly SeriesFamily[]] => [key, key.endsWith(" 0") ? [] : families]);
  }),
);
