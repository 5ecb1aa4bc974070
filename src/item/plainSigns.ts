/** Full width letters and figures stand this far behind the plain ones. */
const wide = /[\uff01-\uff5e]/g;
const signs: readonly (readonly [RegExp, string])[] = [
  [/\u3000/g, " "],
  [/[Φφϕ⌀∅￠ø]/g, "Ø"],
  [/(?<!\p{L})[Фф](?!\p{L})/gu, "Ø"],
  // Between figures the Cyrillic letter is the sign of multiplication; in 40Х it is the steel's.
  [
    /(?<=\d["']? )[хХχ](?= [\d.,Ø])|(?<=\d[\d"'мm]{0,3})[хХχ](?=(?:Ø|\d[\d.,]*|[.,]\d+) ?(?:[^\p{L}\d]|мм|mm|м(?!\p{L})|[xхХ×]|т(?!\p{L})|$))/gu,
    "x",
  ],
  // 40X круг: the Latin letter for the Cyrillic one. Ç4140: the steel (çelik) joined to its number.
  [/(?<=(?<![\d.,])(?:15|20|30|3[58]|4[05]|50))X(?= ?[а-яА-Я]|(?<=[а-яА-Я].*)(?: (?!\d)|$))/g, "Х"],
  [/(?<!\p{L})[Çç](?=\d{4}(?!\d))/gu, ""],
  // 20钢管: a tube of steel 20.
  [/(?<![\d.])([1-6][05])钢/g, "$1#钢"],
  // Steel 20 of GOST 1050.
  [/(?<!\p{L})(?:сталь|ст\.?) ?(\d{1,2})(?![\d.xх×]|,\d|\s?мм)/giu, "ст$1"],
  [/[㎜]/g, "mm"],
  [/[㎝]/g, "cm"],
  [/[、。]/g, ", "],
  [/[・·•¦|]/g, " "],
  [/№/g, " no "],
  [/[∟∠]/g, " l "],
  [/[≈~～]/g, " "],
];

/**
 * A line with the signs of other keyboards in their plain form: full width letters, Φ and Ф for a diameter, х for x between figures.
 * @param description as typed [text]
 * @returns the same line [text]
 * @source common practice, no source
 */
export function plainSigns(description: string): string {
  const narrow = description
    .normalize("NFC")
    .replace(wide, (sign) => String.fromCharCode(sign.charCodeAt(0) - ("！".charCodeAt(0) - "!".charCodeAt(0))));
  return signs.reduce((text, [pattern, plain]) => text.replace(pattern, plain), narrow);
}
