type Rule = readonly [
  pattern: RegExp,
  becomes: string | ((all: string, first: string, second: string, third: string) => string),
];

const gostLetters: ReadonlyMap<string, string> = new Map([
  ["у", "gostu"],
  ["п", "gostp"],
]);

const rules: readonly Rule[] = [
  // 310UC97, 310 UC 96.8; 150PFC, 380PFC 55.2
  [/(?<![\d.])(\d{3,4}) ?(ub|uc|wb|wc) ?(\d+(?:\.\d+)?)(?![\d.x])/g, "$2 $1x$3"],
  [/(?<![\d.x])(\d{2,3}) ?pfc(?![a-z]) ?(\d+\.\d+)/g, "pfc $1x$2"],
  [/(?<![\d.x])(\d{2,3}) ?pfc(?![a-z])/g, "pfc $1"],
  // JIS H, GB I, GOST I
  [/(?<![a-z])(jis|ks|gb|gost) ?([hicl])(?![a-z])[ -]?/g, "$1$2 "],
  [/гост ?(?:i|двутавр)? ?(?=\d+(?:$| ))/g, "gosti "],
  // I20a, [20a#, C 20b
  [
    /(?<![a-z])(gbi|gbc|i|c|\[) ?(\d+(?:\.\d)?) ?([abc])#?(?![a-z\d])/g,
    (_, word, depth, letter) => `gb${word === "[" ? "c" : word.slice(-1)} ${depth}x${"abc".indexOf(letter) + 1}`,
  ],
  // 20У, [16аП, гост 6,5П
  [
    /(?:(?:gost|гост) ?)?\[?(?<![\d.,x])(\d{1,2}(?:[.,]5)?)([аa]?)([уп])(?![\p{L}\d])/gu,
    (_, depth, letter, wall) => `${gostLetters.get(wall)!} ${depth.replace(",", ".")}${letter === "" ? "" : "x1"}`,
  ],
  [/\[ ?(?=\d+(?:\.\d)?#?$)/g, "gbu "],
  [/\[[ -]?(?=\d)/g, "channel "],
  [/(?<=^(?:gb[iclu]|i|c) ?\d+(?:\.\d)?)#/g, ""],
  // ISMB 300 @ 44.2 kg/m, ISA 5050x6
  [/(is(?:mb|lb|wb|hb|mc)|mc) ?(\d+) ?@ ?(\d+(?:\.\d+)?)/g, "$1 $2x$3"],
  [/isa ?(\d{2})(\d{2})(?= ?x| \d)/g, "isa $1x$2"],
  [/isa ?(\d{3})(\d{2,3})(?= ?x| \d)/g, "isa $1x$2"],
  [/(isa \d+x\d+) (?=\d)/g, "$1x"],
];

/** Reinforcing bar by its number: eighths of an inch up to 8, then the nominal diameters of ASTM A615 [in]. No. 10 is a Canadian bar too. */
const rebarInches: ReadonlyMap<string, number> = new Map([
  ["9", 1.128],
  ["11", 1.41],
  ["14", 1.693],
  ["18", 2.257],
]);

function rebar(plain: string): string {
  const number = /^(?:#|no\.? ?)(\d+) ?rebar$|^rebar ?(?:#|no\.? ?)(\d+)$/.exec(plain);
  const bar = number?.[1] ?? number?.[2] ?? "";
  const inches = /^[3-8]$/.test(bar) ? Number(bar) / 8 : rebarInches.get(bar);
  if (inches !== undefined) return `round ${inches} in`;
  return /\d ?mm/.test(plain) ? plain.replace("rebar", "round") : plain;
}

/** Key stock is a square or a flat bar. */
function keystock(plain: string): string {
  return plain.replace(/key ?(?:stock|steel)/, /\d ?x ?\d/.test(plain) ? "flat" : "square");
}

/** Most sizes hold none of these. */
const likely = /[\[уп@#]|ub|uc|wb|wc|pfc|jis|ks|gb|gost|гост|isa|(?:^| )[ic] ?\d/;

/**
 * A size with the designations of further standards in the form in which they are read: the name of the series, then its
 * numbers with x between them. 310UC97 becomes uc 310x97, GB I20a gbi 20x1, 20У gostu 20; rebar #5 a round, keystock a square.
 * @param plain text, as normaliseSize gives it [text]
 * @returns the size, unchanged where no such designation stands in it [text]
 * @source common practice, no source; the spellings of the standards in sectionSources.ts; ASTM A615 for rebar
 */
export function seriesText(plain: string): string {
  if (plain.includes("rebar")) return rebar(plain);
  if (plain.includes("key")) return keystock(plain);
  if (!likely.test(plain)) return plain;
  return rules.reduce(
    (text, [pattern, becomes]) =>
      typeof becomes === "string" ? text.replace(pattern, becomes) : text.replace(pattern, becomes),
    plain,
  );
}
