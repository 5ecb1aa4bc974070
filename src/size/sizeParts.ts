import { ignoredWords, materialWords, scheduleWords, shapeWords, tagWords, unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { nearestWord } from "./nearestWord";
import type { Token } from "./sizeTokens";

/** The bar of a size, sorted: which words name its shape, and its numbers with the separators between them. */
export interface Parts {
  readonly shapes: readonly string[];
  /** number, x and dash tokens. */
  readonly numbers: readonly Token[];
  /** Name of a pipe schedule, as in pipeSchedules.ts. */
  readonly schedule: string | undefined;
  readonly cold: boolean;
  /** "flat" beside another shape says how it lies. */
  readonly flat: boolean;
}

const scheduleMarks: ReadonlySet<string> = new Set(["sch", "sched", "schedule"]);
const coldWords: ReadonlySet<string> = new Set(["cold", "cf", "cw"]);

/**
 * Sorts the tokens of a bar. Finish, process and product words are read over; every other word must be known.
 * @param tokens of the bar, without orientation, bundle, turn and mitre [-]
 * @returns shape words, numbers, schedule [-]
 * @throws InputError "invalid": a material, a word that is not known, a tag or schedule without its number
 * @source common practice, no source
 */
export function sizeParts(tokens: readonly Token[]): Parts {
  refuseGrade(tokens);
  const piped = tokens.some(({ kind, text }) => kind === "word" && shapeWords.get(text) === "pipe");
  const cold = tokens.some(({ kind, text }) => kind === "word" && coldWords.has(text));
  const shapes: string[] = [];
  const numbers: Token[] = [];
  let [schedule, pending]: [string | undefined, string] = [undefined, ""];
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    const scheduled = scheduleAt(tokens, i, piped);
    if (token.kind === "number") {
      numbers.push(pending === "" ? token : { ...token, tag: pending });
      pending = "";
    } else if (token.kind !== "word") numbers.push(token);
    else if (scheduled !== undefined) {
      schedule = scheduled.name;
      i += scheduled.length - 1;
    } else if (isTag(tokens, i)) pending = placeTag(tokens, i, numbers);
    else if (shapeWords.has(token.text)) shapes.push(token.text);
    else refuseUnknown(token.text, tokens[i + 1]);
  }
  const named = splitFlat(shapes);
  return { shapes: named.shapes, flat: named.flat, numbers, schedule, cold };
}

/** Beside another shape the last "flat" says how the bar lies. */
function splitFlat(words: readonly string[]): Pick<Parts, "shapes" | "flat"> {
  if (words.length < 2) return { shapes: words, flat: false };
  const others = words.filter((word) => shapeWords.get(word) !== "bar");
  const plain = others.every((word) => shapeWords.get(word) === "flat") && others[others.length - 1] !== "flat";
  const at = others.length > 1 && !plain ? others.lastIndexOf("flat") : -1;
  return at < 0 ? { shapes: words, flat: false } : { shapes: others.filter((_, i) => i !== at), flat: true };
}

/** Gives a tag to the number before it, or returns it for the number that follows. */
function placeTag(tokens: readonly Token[], i: number, numbers: Token[]): string {
  const tag = tagWords.get(tokens[i]!.text)!;
  const before = numbers[numbers.length - 1];
  if (before?.kind !== "number" || before.tag !== "" || aloneAfter(tokens, i)) return tag;
  numbers[numbers.length - 1] = { ...before, tag };
  return "";
}

/** A number follows that has no tag of its own: the tag in front belongs to it. */
function aloneAfter(tokens: readonly Token[], i: number): boolean {
  return tokens[i + 1]?.kind === "number" && !(tokens[i + 2]?.kind === "word" && tagWords.has(tokens[i + 2]!.text));
}

/** W and WT are tags only behind a number and not before one; elsewhere they name rolled shapes. */
function isTag(tokens: readonly Token[], i: number): boolean {
  const { text } = tokens[i]!;
  if (!tagWords.has(text)) return false;
  return !shapeWords.has(text) || (tokens[i - 1]?.kind === "number" && tokens[i + 1]?.kind !== "number");
}

function scheduleAt(
  tokens: readonly Token[],
  i: number,
  piped: boolean,
): { readonly name: string; readonly length: number } | undefined {
  const { kind, text } = tokens[i]!;
  if (kind !== "word") return undefined;
  const name = scheduleWords.get(text);
  if (name !== undefined) return { name, length: 1 };
  return scheduleMarks.has(text) || (text === "s" && piped) ? numberedSchedule(tokens.slice(i, i + 3)) : undefined;
}

function numberedSchedule([word, next, letter]: readonly Token[]): { readonly name: string; readonly length: number } {
  const name = next?.kind === "word" ? scheduleWords.get(next.text) : undefined;
  if (name !== undefined) return { name, length: 2 };
  if (next?.kind !== "number")
    throw new InputError("invalid", "section", '"{word}" needs its number, for example Sch 40', { word: word!.text });
  return letter?.kind === "word" && letter.text === "s"
    ? { name: `${next.text}s`, length: 3 }
    : { name: next.text, length: 2 };
}

/** 4140 round 3: a bare whole number of three or four figures before the shape, with the dimensions after it. */
function refuseGrade(tokens: readonly Token[]): void {
  const rest = tokens.filter(({ kind, text }) => kind !== "word" || !ignoredWords.has(text));
  const [grade, word] = rest;
  if (grade?.kind !== "number" || grade.unit !== "" || !/^\d{3,4}$/.test(grade.text)) return;
  if (word?.kind !== "word" || !shapeWords.has(word.text) || !rest.slice(2).some(({ kind }) => kind === "number"))
    return;
  const after = rest
    .flatMap(({ kind, text }) => (kind === "number" ? [text] : kind === "x" ? ["x"] : []))
    .slice(1)
    .join("");
  throw new InputError(
    "invalid",
    "section",
    '"{grade}" before "{word}" looks like a grade; the material goes into its own cell, the size here is only "{word} {size}"',
    {
      grade: grade.text,
      word: word.text,
      size: after,
    },
  );
}

function refuseUnknown(word: string, next: Token | undefined): void {
  if (ignoredWords.has(word)) return;
  if (materialWords.has(word))
    throw new InputError(
      "invalid",
      "section",
      '"{word}" is a material; it goes into its own cell, the size says only shape and dimensions',
      { word },
    );
  if (unitWords.get(word) === "ga")
    throw new InputError(
      "invalid",
      "section",
      "gauge sizes are not read (several gauge tables exist); give the wall in inches or mm",
    );
  if (word.length <= 3 && next?.kind === "number" && /^\d{2,4}$/.test(next.text)) {
    throw new InputError(
      "invalid",
      "section",
      'do not know "{word}"; if it is a grade, the material goes into its own cell',
      { word: word + next.text },
    );
  }
  const near = nearestWord(word, [...shapeWords.keys(), "bundle", "nested", "mitre", "schedule", "upright", "diamond"]);
  if (near === undefined) throw new InputError("invalid", "section", 'unknown word "{word}"', { word });
  throw new InputError("invalid", "section", 'unknown word "{word}"; did you mean "{near}"?', { word, near });
}
