import { unitWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { sizeNumber } from "./sizeNumber";

/** A piece of a size string. "lie" says how the bar lies; "dash" stands between two numbers without making a fraction. */
export interface Token {
  readonly kind: "number" | "word" | "x" | "dash" | "lie";
  readonly text: string;
  readonly value: number;
  readonly fraction: boolean;
  /** in, mm, cm; ft, ', m, ga (known in order to be refused); lb; or none. */
  readonly unit: string;
  /** od, id, wall, or none. */
  readonly tag: string;
}

const letters = /[a-z]+(?:&[a-z]+)*/y;
const initials = /[a-z](?:[./][a-z])+(?![a-z])\.?/y;
const unit = / ?([a-z]+|["'#])(?:\/(?:ft|lf|m)(?![a-z]))?/y;

/**
 * Cuts a plain size into numbers (with their units), words, separators and dashes. An x separates only where it stands alone: XXS is a word.
 * @param text plain text, as normaliseSize gives it [text]
 * @returns tokens [-]
 * @throws InputError "invalid": unreadable number or character, negative number
 * @source common practice, no source
 */
export function sizeTokens(text: string): readonly Token[] {
  const tokens: Token[] = [];
  for (let at = 0; at < text.length;) {
    const character = text.charAt(at);
    if (/[0-9]/.test(character) || (/[.,]/.test(character) && /[0-9]/.test(text.charAt(at + 1)))) {
      const [token, end] = numberToken(text, at);
      tokens.push(token);
      at = end;
    } else if (/[a-z]/.test(character)) {
      at = wordTokens(text, at, tokens);
    } else {
      if (character === "-") dash(text, at, tokens);
      else if (!skipped(text, at))
        throw new InputError("invalid", "section", 'cannot read the character "{character}"', {
          character: String.fromCodePoint(text.codePointAt(at)!),
        });
      at += 1;
    }
  }
  return tokens;
}

function plain(kind: Token["kind"], text: string): Token {
  return { kind, text, value: 0, fraction: false, unit: "", tag: "" };
}

/** Spaces; commas and semicolons of a list; a point, colon or equals sign after a word; the point at the end of a sentence. */
function skipped(text: string, at: number): boolean {
  const character = text.charAt(at);
  if (" ,;".includes(character)) return true;
  if (character === "." && at + 1 === text.length) return true;
  return ".:=".includes(character) && /[a-z] ?$/.test(text.slice(Math.max(0, at - 2), at));
}

function numberToken(text: string, at: number): readonly [Token, number] {
  const { value, fraction, text: written, end } = sizeNumber(text, at, "section");
  unit.lastIndex = end;
  const found = unit.exec(text);
  const known = found === null ? undefined : unitWords.get(found[1]!);
  const token: Token = { kind: "number", text: written, value, fraction, unit: known ?? "", tag: "" };
  return known === undefined ? [token, end] : [token, end + found![0].length];
}

function wordTokens(text: string, at: number, tokens: Token[]): number {
  initials.lastIndex = at;
  letters.lastIndex = at;
  const short = initials.exec(text);
  const word = short === null ? letters.exec(text)![0] : short[0].replace(/[./]/g, "");
  const end = at + (short === null ? word.length : short[0].length);
  if (/^x+$/.test(word) && !/^[- ](?:strong|heavy)/.test(text.slice(end, end + 7))) {
    for (const x of word) tokens.push(plain("x", x));
  } else if (word === "by" && tokens[tokens.length - 1]?.kind === "number") {
    tokens.push(plain("x", word));
  } else {
    tokens.push(plain("word", word));
  }
  return end;
}

/** A dash after a letter or at a distance only joins words; right before a number it is a minus sign. */
function dash(text: string, at: number, tokens: Token[]): void {
  const before = text.charAt(at - 1);
  if (tokens[tokens.length - 1]?.kind === "number" && /^ ?[0-9.]/.test(text.slice(at + 1, at + 3)))
    tokens.push(plain("dash", "-"));
  else if ((before === "" || before === " ") && /[0-9.]/.test(text.charAt(at + 1)))
    throw new InputError("invalid", "section", "a size cannot be negative");
}
