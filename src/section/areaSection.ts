import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Section } from "./section";
import { sizeNumber } from "../size/sizeNumber";

const areaAlone = /^area ?(?=[\d.,])/;
const squares: ReadonlyMap<string, readonly [factor: number, printed: string]> = new Map([
  ["in2", [25.4 ** 2, "in2"]],
  ["sqin", [25.4 ** 2, "in2"]],
  ["cm2", [100, "cm2"]],
  ["sqcm", [100, "cm2"]],
  ["mm2", [1, "mm2"]],
  ["sqmm", [1, "mm2"]],
]);

/**
 * Reads "area 38.5", a section of which only the area is known, with in2, cm2 or mm2 behind it if wanted.
 * @param plain the size, normalised [text]
 * @param defaultUnit inch: in², metric: cm² [text]
 * @returns the section [mm²]; undefined where the text is another size
 * @throws InputError "invalid": not one number, or out of range
 * @source definition
 */
export function areaSection(plain: string, defaultUnit: Units): Section | undefined {
  const start = areaAlone.exec(plain);
  if (start === null) return undefined;
  const number = sizeNumber(plain, start[0].length, "section");
  const rest = plain.slice(number.end).replace(/[ .^]/g, "");
  const square = squares.get(rest === "" ? (defaultUnit === "inch" ? "in2" : "cm2") : rest);
  if (square === undefined || number.fraction) {
    throw new InputError(
      "invalid",
      "section",
      'an area is written alone, as a decimal number: "area 38.5", with in2, cm2 or mm2 behind it if wanted',
    );
  }
  const [factor, unit] = square;
  const area = number.value * factor;
  if (area < 0.01 || area > 16e6)
    throw new InputError("invalid", "section", "an area of {number} {unit} is out of range", {
      number: number.text,
      unit,
    });
  const text = `area ${number.value} ${unit}`;
  const note = rest === "" ? `${text}, ${unit} assumed` : text;
  return {
    text,
    note,
    area,
    pieces: 1,
    rows: 1,
    columns: 1,
    nested: false,
    pieceArea: area,
    hollow: false,
    mitre: 0,
    outline: undefined,
  };
}
