import { pointFractions, pointThousands, spaceThousands } from "../data/wordMeanings";

const number = String.raw`\d+(?:[.,]\d+)?`;
/** Notation of the trade that the readers would take for something else -> the same in plain words. */
const always: readonly (readonly [RegExp, string])[] = [
  // The thickness joined to its T, and t=3: a tee is a word before its numbers.
  [new RegExp(`(?<![\\p{L}\\d.,-])(${number}|\\.\\d+) ?t(?![\\p{L}\\d"'])`, "giu"), "$1 thk "],
  [new RegExp(`(?<=\\d ?["']? ?[x×*] ?)(${number}|\\.\\d+) ?t(?![\\p{L}\\d"'])`, "giu"), "$1 thk "],
  [/(?<![\p{L}\d])t ?[=:] ?(?=[\d.])/giu, " thk "],
  // Equal and unequal angles: three numbers, joined to their letters.
  [new RegExp(`(${number} ?[x×*] ?${number} ?[x×*] ?${number}) ?[eu]a(?![\\p{L}\\d])`, "giu"), "$1 angle"],
  // AL6061: the family joined to its number.
  [/(?<![\p{L}\d])al ?-?(?=[1-8]\d{3}(?!\d))/giu, "al "],
  // 40S std: one schedule, twice.
  [/(?<![\p{L}\d])(\d{1,3})s +std(?![\p{L}])/giu, "sch $1s"],
  // l= joined to the unit before it.
  [/(\d) ?mml ?= ?/giu, "$1 mm l="],
  // Thickness and length first: L. 35
  [/(?<![\p{L}\d])l\. ?(?=\d)/giu, "l="],
  // The unit before its number: a mm 750.
  [/(?<![\d"] ?|\p{L})mm ?(\d+(?:[.,]\d+)?)(?![\d.]| ?(?:mm|x))/giu, "$1 mm"],
  // 50x50x5/S235: the size, then the grade.
  [/(?<=[x×*] ?\d+(?:[.,]\d+)?)\/(?=\p{L}+\d{2})/giu, " "],
  [/(?<!\p{L})hollow (?=\d+(?:[.,]\d+)? ?[x×*] ?\d+(?:[.,]\d+)? ?[x×*] ?\d)/giu, "box "],
  // 5 pcs à 12,50: a price. SUS304-16Ø-200: the diameter before its sign.
  [/(?<!\p{L})(?:à|je) (?=\d+,\d\d(?![\d.,]| ?(?:mm|cm|m|["'])))/giu, "€"],
  [/(?<![\d.,])(\d+(?:[.,]\d+)?)Ø ?- ?(?=\d)/gu, " Ø$1 x "],
  // 2'500 mm; 5m20.
  [/(?<![\d.,])(\d{1,2})'(?=\d{3} ?mm(?!\p{L}))/gu, "$1"],
  [/(?<![\d.,\p{L}])(\d{1,2})m(?=\d\d(?![\d.,\p{L}]))(\d\d)/gu, "$1.$2 m"],
  // 10 to 12 ft
  [/(?<=\d ?(?:["']|mm|m|ft)?) (?:to|bis|or|oder|and|und) (?=[\d.,/-]+ ?(?:["']|mm|m|ft|in)(?!\p{L}))/gu, "-"],
  // 1, 5, 10 pcs
  [/(?<![\d.,])(\d{1,4}), (\d{1,4}),? (?=\d{1,4} pcs)/gu, "$1/$2/"],
  // Length min. 120; 50 pieces of 40 mm.
  [/(?<=length ?[:=]? ?)(?:min|max)\.? ?(?=\d)/giu, ""],
  [
    /(?<=\d ?(?:pcs|bars) )(?:de|di|da|van|of|po|a|à|á) ?(?=\d[\d.,]* ?(?:mm|cm|m|in|["'])(?!\p{L}| ?(?:dia|round|r[nd]|rod|sq|hex|flat|tube|[x×*])))/giu,
    "length ",
  ],
];

/** What a line says beside its bar: its own number, standards, the hardness of its condition, dates -> nothing, or a label that is read over. */
const asides: readonly (readonly [RegExp, string])[] = [
  [/^\s*(\d{1,4})\) (?=\S)|^\s*(0\d{2,5}) (?=\p{L})/u, "pos $1$2 "],
  [/(?<!\p{L})(?:pn|sfs|gb\/t|gb)[ -]?(?:en)? ?(?=\d{3})/giu, "iso "],
  [/(?<!\p{L})(?:mil|qq|ww)-[a-z]-[\d/a-z]+|(?<=(?<!\p{L})a\d{3})\/s?a\d{3}(?!\d)/giu, " "],
  // 4140 HT 28-32 HRC: the hardness of that condition. Any other hardness makes another steel of it, and stays.
  [
    /(?<=(?<!\p{L})(?:ht|qt) )(?:(?:2\d|3[0-6])(?: ?[-/] ?(?:2\d|3[0-6]))? ?h?rc|(?:2[5-9]|3[0-4])\d(?: ?[-/] ?(?:2[5-9]|3[0-4])\d)? ?(?:bhn|hbw?)|(?:[89]|1[01])\d\d(?: ?[-/] ?(?:[89]|1[01])\d\d)? ?(?:n\/mm[2²]|mpa))(?!\p{L})/giu,
    " ",
  ],
  [/(?<![\d.,])\d{1,2}\.\d{1,2}\.(?:20)?2\d(?![\d.,])|(?<![\d-])20\d\d-[01]\d-[0-3]\d(?!\d)/g, " "],
  [/(?<=\d )(?:req'?d?|lths?)(?!\p{L})/giu, "pcs"],
  [/(?<!\p{L})at (?=\d[\d.,/ -]* ?(?:mm|cm|m|in|ft|["'])(?!\p{L}))/giu, "length "],
  [/(?<=\d ?(?:"|mm|in)) wide(?!\p{L})/giu, ""],
  [/(?<!\p{L})(?:hollow|cored)(?: bar)?(?=.*\d.*(?<!\p{L})o\/?d.*(?<!\p{L})i\/?d)/iu, "tube"],
];
const asian = new Set(["zh", "ja", "ko"]);
const ofAsian: readonly (readonly [RegExp, string])[] = [
  // 45#: the steel, unless a channel or a beam has that number.
  [/^(?!.*(?<!\p{L})(?:u|beam)(?!\p{L}))(.*?)(?<![\d.x×])(\d\d)#/u, "$1$2号 "],
  [/^(?=.*(?<!\p{L})(?:u|beam)(?!\p{L}))(.*?\d)#/u, "$1 "],
  [/(?<![\p{L}\d.,])(\d{2,5})l(?![\p{L}\d])/giu, " length $1"],
  [/(?<![\p{L}\d])t ?(?=\d{1,2}(?:\.\d+)?(?![\p{L}\d]))/giu, " thk "],
  [/(?<![\p{L}\d])(\d+(?:\.\d+)?)Ø/gu, "Ø$1"],
];

/**
 * A line in English words with the notation of its trade and its languages made plain: 6T, 50x50x5EA, 1.1/2, 1.250 mm, 1 250 mm.
 * @param text in English words [text]
 * @param languages of its words [-]
 * @returns the same line [text]
 * @source common practice, no source
 */
export function plainNotation(text: string, languages: ReadonlySet<string>): string {
  const has = (set: ReadonlySet<string>): boolean => languages.size > 0 && [...languages].every((one) => set.has(one));
  const rules = [...asides, ...always, ...(has(asian) ? ofAsian : [])];
  let plain = rules.reduce((line, [pattern, becomes]) => line.replace(pattern, becomes), text);
  if (has(pointFractions)) plain = plain.replace(/(?<![\d.,])(\d{1,2})\.(?=\d+\/\d)/g, "$1-");
  const commaLanguages = new Set([...pointThousands, ...spaceThousands, "es"]);
  const pointed = has(commaLanguages) && [...languages].some((one) => pointThousands.has(one));
  const commas = pointed || (has(spaceThousands) && /\d,\d/.test(text));
  if (commas) plain = plain.replace(/(?<![\d.,/])([1-9]\d?)\.(\d{3})(?= ?mm(?!\p{L}))/giu, "$1$2");
  if (has(spaceThousands)) plain = plain.replace(/(?<![\d.,x×/] ?)([1-9]\d?) (\d{3})(?= ?mm(?!\p{L}))/giu, "$1$2");
  return plain;
}
