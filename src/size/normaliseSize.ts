const characters: ReadonlyMap<string, string> = new Map(
  (
    [
      ["\u00a0\u2002\u2003\u2007\u2008\u2009\u200a\u202f\t\r\n", " "],
      ["\u00d7\u2715\u2716\u2217*", "x"],
      ["\u2013\u2014\u2212\u2010\u2011", "-"],
      ["\u2033\u201c\u201d\u201e", '"'],
      ["\u2032\u2018\u2019\u00b4`", "'"],
      ["\u00d8\u00f8\u2300\u2205", " dia "],
      ["\u2220", " l "],
      ["\u25a1", " sq "],
      ["\u00b0", " deg "],
      ["\u2044", "/"],
      ["\u00b2", "2"],
      ["½", " 1/2"],
      ["¼", " 1/4"],
      ["¾", " 3/4"],
      ["⅛", " 1/8"],
      ["⅜", " 3/8"],
      ["⅝", " 5/8"],
      ["⅞", " 7/8"],
      ["⅓", " 1/3"],
      ["⅔", " 2/3"],
      ["\u200b\ufeff", ""],
    ] as const
  ).flatMap(([from, to]) => Array.from(from, (character) => [character, to] as const)),
);

/** The Cyrillic letter as a sign of multiplication: between figures, where no letters of a steel follow, as in 12Х18Н10Т. */
const cyrillic =
  /(?<=\d["']? )[\u0445\u0425](?= [\d.,])|(?<=\d[\d"'мm]{0,3})[\u0445\u0425](?=(?:\d[\d.,]*|[.,]\d+) ?(?:[^\p{L}\d]|мм|mm|m(?!\p{L})|м(?!\p{L})|[x\u0445\u0425×]|т(?!\p{L})|$))/gu;

/** Most sizes hold nothing that is to be replaced. */
const ordinary = /^[a-z0-9 .,/"-]*$/i;

/**
 * A size or length in plain characters: lower case, one kind of dash, quote, multiplication sign and fraction, single spaces.
 * @param text as typed or pasted [text]
 * @returns plain text [text]
 * @source common practice, no source
 */
export function normaliseSize(text: string): string {
  let plain = "";
  if (ordinary.test(text)) plain = text;
  else for (const character of text.normalize("NFC")) plain += characters.get(character) ?? character;
  return plain.replace(cyrillic, "x").toLowerCase().replace(/''/g, '"').replace(/ +/g, " ").trim();
}
