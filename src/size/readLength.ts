import { InputError } from "../errors";
import { quantities, type Units } from "../quantities";
import { normaliseSize } from "./normaliseSize";
import { sizeNumber, type SizeNumber } from "./sizeNumber";
import { spoiledText } from "./spoiledText";

/** Unit -> system, and how many millimetres. */
const units: ReadonlyMap<string, readonly [system: "inch" | "metric", mm: number]> = new Map(
  (
    [
      ["inch", 304.8, "' ft feet foot"],
      ["inch", 25.4, '" in inch inches'],
      ["metric", 1000, "m meter meters metre metres mtr mtrs"],
      ["metric", 10, "cm centimeter centimeters centimetre centimetres"],
      ["metric", 1, "mm millimeter millimeters millimetre millimetres"],
    ] as const
  ).flatMap(([system, mm, words]) => words.split(" ").map((word) => [word, [system, mm]] as const)),
);

interface Part {
  readonly number: SizeNumber;
  readonly system: "inch" | "metric" | "none";
  readonly mm: number;
}

/**
 * Reads a length: a number in the default unit, or a text such as 20 ft, 8'-6", 12 ft 6 in, 6 m, 1 m 50 cm, 9-1/4. A fraction means inches, and
 * so does a bare number behind feet.
 * @param value as it stands in the cell [-]
 * @param defaultUnit unit of a bare number: in or mm [text]
 * @returns length [mm]
 * @throws InputError "invalid": not a length, inches of a foot or more behind feet, negative, over 1 km
 * @source definition (1 ft = 12 in = 304.8 mm)
 */
export function readLength(value: string | number, defaultUnit: Units): number {
  const length =
    typeof value === "number" ? value * quantities.length[defaultUnit].factor : textLength(value, defaultUnit);
  if (length < 0) throw new InputError("invalid", "length", "a length cannot be negative");
  if (!(length <= quantities.length.most))
    throw refuse("{text} is not a length, or longer than a kilometre", String(value));
  return length;
}

function refuse(problem: string, text: string): InputError {
  return new InputError("invalid", "length", problem, { text });
}

function textLength(text: string, defaultUnit: Units): number {
  const plain = normaliseSize(text.slice(0, 200));
  if (plain === "") throw refuse("no length given; for example 20 ft, 8'-6\", 6 m", text);
  if (text.length > 120) throw refuse("a length has at most 120 characters", "");
  const spoiled = spoiledText(plain);
  if (spoiled === "error") throw refuse("the cell holds the Excel error {text}", plain.toUpperCase());
  if (spoiled === "date")
    throw refuse(
      '"{text}" is a date: Excel has changed a fraction such as 3/4. Format the cell as Text and type the length again',
      text.trim(),
    );
  if (/^-[\d.]/.test(plain)) throw refuse("a length cannot be negative", text);
  return sumParts(lengthParts(plain, text.trim()), text.trim(), defaultUnit);
}

/** Numbers with their units, one after the other; a space, dash or comma may stand between. */
function lengthParts(plain: string, typed: string): readonly Part[] {
  const parts: Part[] = [];
  const unit = / ?([a-z]+\.?|["'])? ?[-,]? ?/y;
  for (let at = 0; at < plain.length;) {
    if (!/^(?:\d|[.,]\d)/.test(plain.slice(at, at + 2)))
      throw refuse('cannot read "{text}" as a length; write for example 20 ft, 8\'-6", 6 m', typed);
    const number = sizeNumber(plain, at, "length");
    unit.lastIndex = number.end;
    const [all, word] = unit.exec(plain) as unknown as [string, string | undefined];
    const known = word === undefined ? undefined : units.get(word.replace(".", ""));
    if (word !== undefined && known === undefined)
      throw refuse('do not know the length unit "{text}"; write ft, in, m, cm or mm', word);
    parts.push({ number, system: known?.[0] ?? "none", mm: known?.[1] ?? 0 });
    at = number.end + all.length;
  }
  return parts;
}

function sumParts(parts: readonly Part[], typed: string, defaultUnit: Units): number {
  let [total, before]: [number, Part | undefined] = [0, undefined];
  for (const part of parts.map((each, i) => bare(each, parts[i - 1], defaultUnit))) {
    if (part.number.fraction && part.system === "metric")
      throw refuse("{text}: fractions are only read as inches; write metric lengths as decimals", typed);
    if (before !== undefined && (part.system !== before.system || part.mm >= before.mm)) {
      throw refuse(
        'cannot add up "{text}"; write feet before inches, metres before centimetres, and only one system',
        typed,
      );
    }
    // 12' (144"): the length twice, not 24 ft.
    if (before !== undefined && part.number.value * part.mm >= before.mm * (1 - 1e-9))
      throw refuse(
        '"{text}": inches behind feet must be less than 12, and centimetres or millimetres less than a metre',
        typed,
      );
    total += part.number.value * part.mm;
    before = part;
  }
  return total;
}

function bare(part: Part, before: Part | undefined, defaultUnit: Units): Part {
  if (part.system !== "none") return part;
  if (before !== undefined && before.mm !== 304.8) return { ...part, mm: Infinity };
  return before !== undefined || part.number.fraction || defaultUnit === "inch"
    ? { ...part, system: "inch", mm: 25.4 }
    : { ...part, system: "metric", mm: 1 };
}
