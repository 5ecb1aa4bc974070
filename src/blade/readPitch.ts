import { madePitches } from "../data/cuttingConstants";
import { InputError } from "../errors";
import type { Pitch } from "./pitch";

const finest = 32;
const coarsest = 0.5;

/** 6.10 and 0.6667: a variable pitch typed with a point, or divided by the sheet. 0.75 is a pitch of its own. */
const isSlip = (teeth: number): boolean =>
  teeth !== 0.75 &&
  madePitches["bi-metal"].some((made) => {
    const [coarse, fine] = made.split("/");
    return teeth === Number(`${coarse!}.${fine!}`) || Math.abs(teeth - Number(coarse) / Number(fine)) < 0.004;
  });

const make = (text: string, coarse: number, fine: number): Pitch => ({
  text,
  coarse,
  fine,
  mean: 50.8 / (coarse + fine),
});

/**
 * Reads a tooth pitch in teeth per inch: "3/4" is variable, from 3 to 4; a number, or "4", is straight.
 * Mean pitch p = 25.4 / ((coarse + fine) / 2). Below one tooth per inch write decimals: "0.75/1.25".
 * @param value the cell: text, or a number of teeth per inch [1/in]
 * @returns coarse and fine end [1/in], mean pitch [mm]
 * @throws InputError "invalid": not a pitch, coarser than 0.5 or finer than 32 teeth per inch, a variable pitch without its slash, or a date
 * @source definition; limits: ISO 4875-2:2006 pitches run from 32 to 0.75 teeth per inch (from memory); straight pitches: common practice, no source
 */
export function readPitch(value: string | number): Pitch {
  if (typeof value === "number" && Number.isInteger(value) && value >= 10959 && value <= 73050)
    throw new InputError(
      "invalid",
      "pitch",
      "{value} looks like a date: Excel changed a pitch such as 3/4. Format the cell as Text and type it again",
      { value: String(value) },
    );
  const text = String(value)
    .trim()
    .replace(/\s*\/\s*/, "/")
    .replace(/,/g, ".");
  const match = /^(\d*\.?\d+)(?:\/(\d*\.?\d+))?(?:\s*(?:tpi|teeth per inch))?$/i.exec(text);
  if (match === null)
    throw new InputError(
      "invalid",
      "pitch",
      'cannot read "{value}"; write teeth per inch, such as "3/4" for variable or 4 for straight',
      { value: text.slice(0, 30) },
    );
  const ends = [Number(match[1]), Number(match[2] ?? match[1])];
  const [coarse, fine] = [Math.min(...ends), Math.max(...ends)];
  if (coarse < coarsest || fine > finest)
    throw new InputError(
      "invalid",
      "pitch",
      '"{value}" is not a pitch that bands are made in: from 0.5 to 32 teeth per inch',
      { value: text },
    );
  if (match[2] === undefined && isSlip(coarse))
    throw new InputError(
      "invalid",
      "pitch",
      '"{value}" is not a straight pitch that bands are made in; write a variable one as text with a slash, such as "6/10"',
      { value: text.slice(0, 30) },
    );
  return make(coarse === fine ? String(coarse) : `${coarse}/${fine}`, coarse, fine);
}
