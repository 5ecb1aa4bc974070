import { alloyWords } from "../data/alloyWords";
import {
  conditionWords,
  countLabels,
  countWords,
  familyWords,
  fillWords,
  gradeMarks,
  lengthLabels,
  lengthTails,
  otherShapes,
  otherSizeWords,
  plainWords,
  randomWords,
  referenceLabels,
  referenceTails,
  tableless,
} from "../data/itemWords";
import {
  ignoredWords,
  materialWords,
  phrases,
  scheduleWords,
  shapeWords,
  tagWords,
  unitWords,
} from "../data/sectionWords";

const sizeWords: ReadonlySet<string> = new Set([
  ...[shapeWords, tagWords, unitWords, scheduleWords].flatMap((words) => [...words.keys()]),
  ...ignoredWords,
  ...otherSizeWords,
  ...phrases.flatMap(([phrase]) => phrase.split(" ")),
]);
const lineWords: ReadonlySet<string> = new Set([
  ...[plainWords, familyWords].flatMap((words) => [...words.keys()]),
  ...[
    countWords,
    countLabels,
    lengthLabels,
    lengthTails,
    randomWords,
    referenceLabels,
    referenceTails,
    otherShapes,
    conditionWords,
    gradeMarks,
    materialWords,
    fillWords,
    alloyWords,
    tableless,
  ].flatMap((words) => [...words]),
]);

/**
 * Whose word this is: the size reader's ("size"), another word of order lines ("line"), or nobody's.
 * @param word in small letters [text]
 * @returns "size", "line" or undefined [text]
 * @source common practice, no source
 */
export function knownWord(word: string): "size" | "line" | undefined {
  if (sizeWords.has(word)) return "size";
  return lineWords.has(word) ? "line" : undefined;
}
