import { InputError } from "../../src/errors";
import type { Cell } from "./cell";
import type { Kind, Reading } from "./kind";
import { wrongType } from "./number";

export const readText = (cell: Cell | undefined, parameter: string): string => {
  if (typeof cell === "string") return cell.trim();
  throw new InputError(
    "invalid",
    parameter,
    typeof cell === "boolean" ? "{parameter} is TRUE or FALSE, not text" : "{parameter} is a number, not text",
  );
};

/** Any text. */
export const text: Kind<string> = {
  name: "text",
  width: 1,
  zeroIsValue: false,
  says: () => "text",
  read: (cells, at, _, parameter) => readText(cells[at], parameter),
};

/** One of a fixed list of words, read without regard to case. */
export const choice = <const W extends string>(...choices: readonly W[]): Kind<W> => ({
  name: "choice",
  width: 1,
  zeroIsValue: false,
  choices,
  says: () => choices.map((c) => `"${c}"`).join(" or "),
  read: (cells, at, _, parameter) => {
    const given = readText(cells[at], parameter).toLowerCase();
    const found = choices.find((c) => c.toLowerCase() === given);
    if (found === undefined)
      throw new InputError("invalid", parameter, '{parameter} must be {choices}; it is "{given}"', {
        choices: choices.map((c) => `"${c}"`).join(" or "),
        given: given.slice(0, 40),
      });
    return found;
  },
});

/** A mark: any cell but blank, 0 and FALSE. */
export const mark: Kind<boolean> = {
  name: "mark",
  width: 1,
  zeroIsValue: false,
  says: () => "anything as a mark; blank, 0 or FALSE: none",
  read: (cells, at) => cells[at] !== false,
};

/** A cell that may hold text or a number and is read by a core reader, kept by the memo. */
export const textual = <T>(
  name: string,
  says: string,
  read: (value: string | number, reading: Reading, parameter: string) => T,
  keyed: (reading: Reading) => string | undefined,
): Kind<T> => ({
  name,
  width: 1,
  zeroIsValue: false,
  says: () => says,
  read: (cells, at, reading, parameter) => {
    const cell = cells[at];
    if (typeof cell !== "string" && typeof cell !== "number") throw wrongType(cell ?? null, parameter, `a ${name}`);
    const by = keyed(reading);
    return by === undefined
      ? read(cell, reading, parameter)
      : reading.memo.get(name, by, cell, () => read(cell, reading, parameter));
  },
});

/** A name of any kind, a number among them. */
export const label: Kind<string> = textual(
  "text",
  "text, or a number",
  (value) => String(value).trim(),
  () => undefined,
);

/** A readers' refusal carries the reader's own name of the value; here it gets the argument's. */
export const renamed = <T>(parameter: string, read: () => T): T => {
  try {
    return read();
  } catch (refusal) {
    if (refusal instanceof InputError && refusal.parameter !== "" && refusal.parameter !== parameter)
      throw new InputError(refusal.reason, parameter, refusal.problem, refusal.facts);
    throw refusal;
  }
};
