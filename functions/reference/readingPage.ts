import { alloyWords } from "../../src/data/alloyWords";
import { itemConstants } from "../../src/data/itemConstants";
import { tableless } from "../../src/data/itemWords";
import { lineWords } from "../../src/data/lineWords";
import { wordMeanings, wordStops } from "../../src/data/wordMeanings";
import { table } from "./reference";

const languageNames: Readonly<Record<string, string>> = {
  any: "several",
  en: "English",
  de: "German",
  nl: "Dutch",
  sv: "Swedish",
  fr: "French",
  es: "Spanish",
  pt: "Portuguese",
  it: "Italian",
  pl: "Polish",
  cs: "Czech",
  hu: "Hungarian",
  tr: "Turkish",
  ru: "Russian",
  zh: "Chinese",
  ja: "Japanese",
  ko: "Korean",
  id: "Indonesian",
  vi: "Vietnamese",
};

const spoken = (meaning: string): string => {
  const stop = wordStops.get(meaning);
  if (stop !== undefined) return `${meaning} (no size is read)`;
  return wordMeanings.get(meaning) === "" ? "read over" : meaning;
};

const rules = (): readonly string[] => [
  "- A number without a unit takes the unit that the line writes; else the units given; else that of its words, grade and series. Where nothing decides, ITEM reads the line in both units and refuses what differs.",
  "- A word that nobody reads, beside a solid whose second number is well below the first or right beside the one number of the size, refuses the size and is named.",
  "- Goods, plastics, glass and wood are no metal bars: no size is read.",
  `- A number behind ${[...alloyWords].slice(0, 6).join(", ")} and the like belongs to the alloy.`,
  "- A gauge of a tube is its wall by the Birmingham table.",
  `- A line has at most ${String(itemConstants.longestLine.value)} characters and ${String(itemConstants.mostAtoms.value)} words, numbers and signs.`,
  "- Accents, capitals, ä or ae, ß or ss, Turkish İ and ı, full width letters, Φ and Ф for Ø, х between figures: all the same.",
  `- Series without a table here are refused by their name: ${[...tableless].map((word) => word.toUpperCase()).join(", ")}.`,
  "",
];

/** docs/reading.md: how a line of an order list is read, with every word of other languages, made from the data. */
export function readingPage(): string {
  const rows = lineWords.rows
    .trim()
    .split("\n")
    .map((row) => row.split(","));
  const languages = [...new Set(rows.map(([language]) => language!))];
  return [
    "# How a line is read",
    "",
    "Made by `npm run generate` from the data (src/data/lineWords.ts, wordMeanings.ts). ITEM and QUOTE read a whole line: size, grade, length, quantity. What is not certain is refused, with its readings.",
    "",
    ...rules(),
    "A star takes every word that begins so, a dash every compound that ends so. Words are written without accents.",
    "",
    ...languages.flatMap((language) => [
      `## ${languageNames[language] ?? language}`,
      "",
      ...table(
        ["meaning", "words"],
        [...new Set(rows.filter(([of]) => of === language).map(([, , meaning]) => meaning!))].map((meaning) => [
          spoken(meaning),
          rows
            .filter(([of, , means]) => of === language && means === meaning)
            .map(([, word, , mark]) => (mark === "seen" ? word! : `${word!}°`))
            .join(" · "),
        ]),
      ),
      "",
    ]),
    "° from memory; the others were seen in public stock lists.",
    "",
  ].join("\n");
}
