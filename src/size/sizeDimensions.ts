import { bwgWalls, sheetWalls } from "../data/gauges";
import { InputError } from "../errors";
import type { Token } from "./sizeTokens";

/**
 * The numbers of a bar, checked for the x between them.
 * @param tokens numbers, x signs and dashes [-]
 * @param dashed a dash may stand for the x, as in W12-50 [-]
 * @param gauged a gauge is the wall of a tube [-]
 * @returns numbers [-]
 * @throws InputError "invalid": a missing x or number, a length unit, a gauge
 * @source common practice, no source
 */
export function sizeDimensions(tokens: readonly Token[], dashed: boolean, gauged = false): readonly Token[] {
  // Units first: a length or a gauge behind a space would else be reported as a missing x.
  for (const token of tokens) if (token.kind === "number" && !(gauged && isGauge(token))) checkUnit(token);
  tokens.forEach((token, i) => {
    checkPair(tokens[i - 1], token);
    if (token.kind === "dash" && !dashed) {
      const pair = `${tokens[i - 1]?.text ?? ""}-${tokens[i + 1]?.text ?? ""}`;
      throw new InputError(
        "invalid",
        "section",
        '"{pair}" is unclear; use x between dimensions (6x4), or a fraction after the dash (6-1/4)',
        { pair },
      );
    }
  });
  const last = tokens[tokens.length - 1];
  if (last !== undefined && last.kind !== "number")
    throw new InputError("invalid", "section", 'the size ends with an "x"; a number is missing');
  const numbers = tokens.filter(({ kind }) => kind === "number");
  const zero = numbers.some(({ value }) => value === 0);
  if (zero) throw new InputError("invalid", "section", "every dimension must be more than zero");
  return numbers;
}

function checkPair(last: Token | undefined, token: Token): void {
  if (token.kind === "x" && last === undefined)
    throw new InputError("invalid", "section", 'the size begins with an "x"; a number is missing');
  if (token.kind === "x" && last?.kind === "x")
    throw new InputError("invalid", "section", "two x signs in a row; a number is missing between them");
  if (token.kind === "number" && last?.kind === "number" && last.tag === "" && token.tag === "") {
    throw new InputError(
      "invalid",
      "section",
      'two numbers without an x between them ("{first} {second}"); write {first}x{second}, or 1-1/4 for a fraction',
      {
        first: last.text,
        second: token.text,
      },
    );
  }
}

/** A whole number that the Birmingham table has. */
const isGauge = ({ unit, value }: Token): boolean => unit === "ga" && bwgWalls.has(value);

function checkUnit({ unit, text, value }: Token): void {
  if (unit === "'")
    throw new InputError("invalid", "section", "a single ' means feet; section sizes are written in inches or mm");
  if (unit === "ft" || unit === "m") {
    throw new InputError(
      "invalid",
      "section",
      '"{unit}" is a length unit; give the section size in inches, mm or cm. Length belongs in its own cell',
      { unit },
    );
  }
  if (unit !== "ga") return;
  const walls = [
    [sheetWalls.get(value), "steel sheet"],
    [bwgWalls.get(value), "tube (Birmingham gauge)"],
  ].flatMap(([wall, table]) => (wall === undefined ? [] : [`${wall} in as ${table}`]));
  const meaning = walls.length === 0 ? "" : `: ${text} gauge is ${walls.join(", ")}`;
  throw new InputError(
    "invalid",
    "section",
    "gauge sizes are not read (several gauge tables exist){meaning}; give the wall in inches or mm",
    { meaning },
  );
}
