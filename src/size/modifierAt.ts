import { InputError } from "../errors";
import { bundleAt } from "./bundleAt";
import type { Modifier } from "./modifier";
import type { Token } from "./sizeTokens";

const angles: ReadonlyMap<string, "turn" | "mitre"> = new Map([
  ["rot", "turn"],
  ["rotate", "turn"],
  ["rotated", "turn"],
  ["miter", "mitre"],
  ["mitre", "mitre"],
  ["mitered", "mitre"],
  ["mitred", "mitre"],
]);
const degreeWords: ReadonlySet<string> = new Set(["deg", "degs", "degree", "degrees"]);

/**
 * The orientation, bundle, turn or mitre that begins at a token.
 * @param tokens of a size [-]
 * @param i which token [-]
 * @returns the modifier, or undefined [-]
 * @throws InputError "invalid": an angle or a bundle without its numbers
 * @source common practice, no source
 */
export function modifierAt(tokens: readonly Token[], i: number): Modifier | undefined {
  const { kind, text } = tokens[i]!;
  if (kind === "lie") return { kind, lie: text, length: 1 };
  if (kind === "word" && text === "nested") return { kind: "nested", length: 1 };
  return angleAt(tokens, i) ?? bundleAt(tokens, i);
}

/** rot 30, rotated by 30 deg, mitre 45, miter at 45 deg, 45 deg miter. */
function angleAt(tokens: readonly Token[], i: number): Modifier | undefined {
  const token = tokens[i]!;
  if (token.kind === "number") return isDegree(tokens[i + 1]) ? namedBehind(token, tokens[i + 2]) : undefined;
  const kind = token.kind === "word" ? angles.get(token.text) : undefined;
  if (kind === undefined) return undefined;
  const before = ["by", "at"].includes(tokens[i + 1]?.text ?? "") ? 2 : 1;
  const angle = tokens[i + before];
  if (angle?.kind !== "number")
    throw new InputError("invalid", "section", '"{word}" needs its angle in degrees, for example {word} 30', {
      word: token.text,
    });
  return { kind, degrees: angle.value, length: before + (isDegree(tokens[i + before + 1]) ? 2 : 1) };
}

function isDegree(token: Token | undefined): boolean {
  return token?.kind === "word" && degreeWords.has(token.text);
}

function namedBehind(angle: Token, word: Token | undefined): Modifier {
  const kind = word?.kind === "word" ? angles.get(word.text) : undefined;
  if (kind !== undefined) return { kind, degrees: angle.value, length: 3 };
  throw new InputError("invalid", "section", 'say what the angle is: "mitre {degrees}" or "rot {degrees}"', {
    degrees: angle.text,
  });
}
