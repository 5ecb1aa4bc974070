import { joinedBefore, joinedBehind, wordMeanings, wordStops, type Stop } from "../data/wordMeanings";
import { knownWord } from "./knownWord";
import { plainSigns } from "./plainSigns";
import type { WordRow } from "./wordIndex";
import { wordUnits, type WordUnit } from "./wordUnits";

/** A line whose foreign words have become the English words that the readers know. */
export interface Translation {
  readonly text: string;
  /** Languages of its words, the likeliest ones. */
  readonly languages: ReadonlySet<string>;
  /** A word of channels or beams with the number behind it. */
  readonly series: string | undefined;
  /** A word that names no plain metal bar. */
  readonly stop: { readonly kind: Stop; readonly word: string } | undefined;
}

/** A shorter word is a word of a language only beside another one of it. */
const shortestSure = "abcd".length;

/**
 * Puts a line into the words that the readers know. A word of several meanings takes that of the language of the words beside it; one
 * that stays open is left as it is.
 * @param description the line [text]
 * @returns the line in English words, its languages, and a word that names goods, a plastic or another shape [-]
 * @source src/data/lineWords.ts
 */
export function translateLine(description: string): Translation {
  const units = wordUnits(plainSigns(description));
  const languages = likeliest(units);
  let [text, stop, series]: [string, Translation["stop"], string | undefined] = ["", undefined, undefined];
  units.forEach((unit, i) => {
    const meaning = meaningOf(unit, languages) ?? "";
    const next = units[i + 1]?.text ?? "";
    if (rolled.has(meaning)) series ??= unit.text + (/^ ?\d+/.exec(next)?.[0] ?? "");
    const kind = stopOf(meaning);
    if (kind !== undefined && !isOfBar(units, i)) stop ??= { kind, word: unit.text };
    text += written(unit, kind === undefined ? meaning : "", text, next);
  });
  return { text, languages, stop, series };
}

/** The English of a word with the spaces it needs; the word itself where it means nothing here. */
function written(unit: WordUnit, meaning: string, before: string, next: string): string {
  // diám. is diam, an English word.
  if (meaning === "" && isAccented(unit)) return unit.word;
  if (meaning === "" || !(unit.asian || isPlaced(meaning, unit.word, before, next)))
    return unit.asian ? ` ${unit.text} ` : unit.text;
  const [first, last] = [/[\s(]$|^$/.test(before), /^[\s).,:=]|^$/.test(next)].map((parted) => (parted ? "" : " "));
  return `${first!}${english(meaning, before)}${last!}`;
}

const isAccented = ({ text, word, asian }: WordUnit): boolean =>
  !asian && word.length >= shortestSure && /[^\0-\x7f]/.test(text) && knownWord(word) !== undefined;

/** Signs of its own, accents, or an abbreviation without vowels make a word sure of its language; so does its length. */
const isSure = ({ text, word, asian }: WordUnit): boolean =>
  asian ||
  /\p{L}[^\0-\x7f]|[^\0-\x7f]\p{L}/u.test(text) ||
  (/^[^aeiouy]{3,}$/.test(word) && knownWord(word) === undefined) ||
  /[а-я]{2}/.test(word) ||
  (word.length >= shortestSure && knownWord(word) === undefined);
const isShared = (language: string): boolean => language === "any" || language === "en";

/** The languages that most words speak for. */
function likeliest(units: readonly WordUnit[]): ReadonlySet<string> {
  const votes = new Map<string, number>();
  for (const unit of units) {
    if (!isSure(unit)) continue;
    for (const language of new Set(unit.rows.map((row) => row.language)))
      if (!isShared(language)) votes.set(language, (votes.get(language) ?? 0) + 1);
  }
  const most = Math.max(...votes.values(), 1);
  return new Set([...votes].flatMap(([language, count]) => (count === most ? [language] : [])));
}

function meaningOf(unit: WordUnit, languages: ReadonlySet<string>): string | undefined {
  const english = knownWord(unit.word) !== undefined;
  const sure = isSure(unit);
  const fitting = unit.rows.filter(({ language, meaning }) =>
    isShared(language) ? !english || stopOf(meaning) !== undefined : languages.has(language) || (sure && !english),
  );
  const near = fitting.filter(({ language }) => languages.has(language));
  const meanings = new Set((near.length > 0 ? near : fitting).map(({ meaning }: WordRow) => meaning));
  return meanings.size === 1 ? [...meanings][0] : undefined;
}

function stopOf(meaning: string): Stop | undefined {
  return meaning
    .split("+")
    .map((part) => wordStops.get(part))
    .find((kind) => kind !== undefined);
}

const bars = /^(?:steel|steels|bronze|brass|rod|stock|bar|bars|iron)$/;

/** Bearing bronze and spring steel are metals. */
function isOfBar(units: readonly WordUnit[], i: number): boolean {
  return units[i]!.rows.every(({ meaning }) => meaning === "goods") && bars.test(units[i + 2]?.word ?? "");
}

/** St 37-2, St 52.3. */
const steel = /^\.? ?(?:3[357]|4[45]|5[02]|60|70)(?:[.-]\d)?(?!\d)/;

/** Joined to a number, a word must be one that is written so: 8szt, Ø60; Q235B and 40Х stay whole. */
function isPlaced(meaning: string, word: string, before: string, next: string): boolean {
  const parts = meaning.split("+");
  // St 37 is a steel.
  if (meaning === "pcs" && word === "st" && steel.test(next) && !/^\d{1,4} $/.test(before)) return false;
  if (/^\d/.test(next)) return !/\d$/.test(before) && joinedBefore.has(parts[0]!.split(" ")[0]!);
  return (
    !/[\d"']$/.test(before) ||
    joinedBehind.has(meaning) ||
    /^[^\dA-Za-z]/.test(before.slice(-1)) ||
    !/^[\p{L}]/u.test(next)
  );
}

const rolled: ReadonlySet<string> = new Set(["channel", "I beam", "H beam"]);

const counted = /(?:^|[\s,;(])\d{1,4} ?$/;

/** A bar behind a number counts. */
function english(meaning: string, before: string): string {
  if (meaning === "bars" || (meaning === "length or bars" && counted.test(before)))
    return counted.test(before) ? "bars" : "bar";
  return meaning
    .split("+")
    .map((part) => wordMeanings.get(part) ?? "")
    .filter((word) => word !== "")
    .join(" ");
}
