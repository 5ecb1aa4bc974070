import { InputError } from "../errors";

/** A number as it stands in a text. */
export interface SizeNumber {
  readonly value: number;
  /** Written with a slash, so in inches. */
  readonly fraction: boolean;
  readonly text: string;
  /** Where the text goes on. */
  readonly end: number;
}

const mixed = /(\d+)(?: ?- ?| )(\d+)\/(\d+)/y;
const simple = /(\d+)\/(\d+)/y;
const decimal = /(\d*)(?:([.,])(\d+))?/y;
const scientific = /e[+-]?\d+/y;

/**
 * Reads the number that begins at a place of a plain text: 7, 0.5, .5, 6,5, 3/4, 7-1/2, 7 1/2.
 * @param text plain text, as normaliseSize gives it [text]
 * @param at where a digit, or a point before a digit, stands [-]
 * @param parameter named in a refusal [text]
 * @returns value [-], its text and its end
 * @throws InputError "invalid": a fraction of 1 or more, or not of halves to 64ths, division by zero, ambiguous comma, scientific notation, two points
 * @source definition; common practice for fractions
 */
export function sizeNumber(text: string, at: number, parameter: string): SizeNumber {
  const fraction = match(mixed, text, at) ?? match(simple, text, at);
  return fraction === null ? decimalNumber(text, at, parameter) : fractionNumber(text, at, fraction, parameter);
}

/** Inches are parted by halving. */
const inchParts: ReadonlySet<string> = new Set(["2", "4", "8", "16", "32", "64"]);

function match(pattern: RegExp, text: string, from: number): RegExpExecArray | null {
  pattern.lastIndex = from;
  return pattern.exec(text);
}

function fractionNumber(text: string, at: number, found: RegExpExecArray, parameter: string): SizeNumber {
  const end = at + found[0].length;
  const facts = { text: found[0] };
  const [whole, top, bottom] =
    found.length === 4
      ? [Number(found[1]), Number(found[2]), Number(found[3])]
      : [0, Number(found[1]), Number(found[2])];
  if (bottom === 0) throw new InputError("invalid", parameter, '"{text}" divides by zero', facts);
  // 60/50 and 12/05 are rather a diameter inside another, or a date.
  if (top >= bottom || !inchParts.has(found[found.length - 1]!) || /^[/.,]\d/.test(text.slice(end, end + 2))) {
    throw new InputError("invalid", parameter, '"{text}" is not a proper inch fraction; write it like 2-1/2', facts);
  }
  return { value: whole + top / bottom, fraction: true, text: found[0], end };
}

function decimalNumber(text: string, at: number, parameter: string): SizeNumber {
  const [all, whole, mark, part] = match(decimal, text, at) as unknown as [
    string,
    string,
    string | undefined,
    string | undefined,
  ];
  const end = at + all.length;
  const power = match(scientific, text, end);
  if (power !== null) {
    throw new InputError(
      "invalid",
      parameter,
      '"{text}" looks like scientific notation; write the number out in full and format the cell as Text',
      { text: all + power[0] },
    );
  }
  if (mark === "," && part?.length === 3 && Number(whole) !== 0) {
    throw new InputError(
      "invalid",
      parameter,
      '"{text}" could mean {point} or {whole}; write it with a point or without the comma',
      { text: all, point: `${whole}.${part}`, whole: whole + part },
    );
  }
  if (/^[.,]\d/.test(text.slice(end, end + 2))) {
    throw new InputError("invalid", parameter, '"{text}" is not one number: it has two points or commas', {
      text: text.slice(at, end + 2),
    });
  }
  return { value: Number(all.replace(",", ".")), fraction: false, text: all, end };
}
