import { InputError } from "../errors";
import { spoiledText } from "./spoiledText";

/**
 * Refuses what is no size at all, by what has happened to it: an empty cell, a number, a date that a fraction was turned into, an error
 * value, a text that is too long.
 * @param text as it stands in the cell [text]
 * @param plain the same, normalised [text]
 * @returns nothing; it only refuses [-]
 * @throws InputError "invalid": with the cure
 * @source spreadsheet date serials 10959 to 73050 are the days from 1930 to 2099
 */
export function refuseSpoiled(text: string | number, plain: string): void {
  if (typeof text === "number") return refuseNumber(text);
  if (plain === "") {
    throw new InputError(
      "invalid",
      "section",
      'no size given; for example "round 7", "flat 6x1", "W12x50". Put the size in quotes: W12 or HEB200 without them is the address of a cell',
    );
  }
  if (text.length > 120) throw new InputError("invalid", "section", "a size has at most 120 characters");
  const spoiled = spoiledText(plain);
  if (spoiled === "error")
    throw new InputError("invalid", "section", "the cell holds the Excel error {error}", {
      error: plain.toUpperCase(),
    });
  if (spoiled === "date") {
    throw new InputError(
      "invalid",
      "section",
      '"{text}" is a date: Excel has changed a fraction such as 3/4. Format the cell as Text and type the size again',
      { text: text.trim() },
    );
  }
  if (/^\d{5}$/.test(plain)) refuseNumber(Number(plain));
}

function refuseNumber(number: number): never {
  const facts = { number: String(number) };
  if (Number.isInteger(number) && number >= 10959 && number <= 73050) {
    throw new InputError(
      "invalid",
      "section",
      "{number} is a date serial number: Excel turned the size (for example 3/4) into a date. Format the cell as Text and type it again, or write 0.75",
      facts,
    );
  }
  throw new InputError("invalid", "section", "{number} is only a number: round {number}, or area {number}", facts);
}
