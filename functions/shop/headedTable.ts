import * as z from "zod/mini";
import { InputError, orRefusal } from "../../src/errors";
import type { OfferedBlade, UnreadOffer } from "../../src/cost/offeredBlade";
import { readLength } from "../../src/size/readLength";
import { refuseSwapped } from "../kinds/blade";
import { shopConstants as k } from "../../src/data/shopConstants";
import { number } from "../kinds";
import { unkept, type Kind, type Reading } from "../kinds/kind";
import { cellSchema } from "../kinds/schema";
import { CellError, isBlank, type Cell, type Range } from "../kinds/cell";

/** One record of a headed table: where it stands, and its cells by label; blank cells are left out. */
interface TableRecord {
  readonly where: string;
  readonly cells: ReadonlyMap<string, Cell>;
}

const fold = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.trim().replace(/\s+/g, " ").toLowerCase() : "";
const refuse = (parameter: string, problem: string, facts: Readonly<Record<string, string>> = {}): InputError =>
  new InputError("invalid", parameter, problem, facts);

/** The same table with its labels across: cells of a row become cells of a column. */
const turned = (range: Range): Range =>
  Array.from({ length: Math.max(...range.map((r) => r.length)) }, (_, c) => range.map((r) => r[c] ?? null));

function checkLabels(heads: readonly Cell[], labels: readonly string[], parameter: string): readonly string[] {
  const folded = heads.map(fold);
  for (const [i, label] of folded.entries()) {
    if (isBlank(heads[i], false)) continue;
    if (!labels.includes(label))
      throw refuse(parameter, '{parameter}: "{label}" is not a label of the table; it knows {labels}', {
        label: label === "" ? "a number" : label.slice(0, 40),
        labels: labels.join(", "),
      });
    if (folded.indexOf(label) !== i) throw refuse(parameter, '{parameter}: "{label}" stands twice', { label });
  }
  return folded;
}

/**
 * Reads a table whose labels stand across its first row or down its first column, in any order. A label that is unknown or
 * stands twice is refused by name, and so is a value without one: nothing is read by its position.
 */
export function readHeadedTable(range: Range, labels: readonly string[], parameter: string): readonly TableRecord[] {
  const known = (cells: readonly (Cell | undefined)[]): number => cells.filter((c) => labels.includes(fold(c))).length;
  const [across, down] = [known(range[0]!), known(range.map((r) => r[0]))];
  if (across + down === 0)
    throw refuse(parameter, "{parameter}: no label found in the first row or column; it knows {labels}", {
      labels: labels.join(", "),
    });
  const isAcross = across >= down;
  const [heads, ...lines] = isAcross ? range : turned(range);
  const folded = checkLabels(heads!, labels, parameter);
  return lines.flatMap((line, i): TableRecord[] => {
    const given = line.map((cell, at) => ({ cell, at })).filter(({ cell }) => !isBlank(cell, false));
    const stray = given.find(({ at }) => (folded[at] ?? "") === "");
    const where = `${isAcross ? "row" : "column"} ${i + 2}`;
    if (stray !== undefined) throw refuse(parameter, "{parameter}: {where} has a value without a label", { where });
    return given.length === 0 ? [] : [{ where, cells: new Map(given.map(({ cell, at }) => [folded[at]!, cell])) }];
  });
}

const reading: Reading = { units: "inch", memo: unkept, shop: undefined };
const inOffer = <T>(kind: Kind<T>) => z.optional(cellSchema(kind, reading, ""));

/** What the table of offers may hold, by the kinds of the same values elsewhere. A length that is a number is in feet, as the price per foot wants. */
const offerShape = z.object({
  name: z.optional(z.union([z.string(), z.number()], "is not text")),
  price: inOffer(number("money")),
  length: z.optional(z.union([z.number().check(z.positive("must be more than 0")), z.string()], "is not a length")),
  "price per foot": inOffer(number("money")),
  rebate: inOffer(number("share", { most: k.marginTo.value })),
  "rebate from": inOffer(number("count", { least: 1 })),
  "change minutes": inOffer(number("minutes")),
  "kerf cost": inOffer(number("money")),
  life: inOffer(number("ownArea")),
  rate: inOffer(number("ownArea")),
});
type OfferRecord = z.infer<typeof offerShape>;

const offerLabels = Object.keys(offerShape.shape);

/** A number with its money sign, or with a decimal comma, that came in as text: what is meant by it. */
function writtenNumber(cell: Cell | undefined): { readonly given: string; readonly meant: string } | undefined {
  if (typeof cell !== "string") return undefined;
  const found = /^[^\d]{0,5}(\d{1,3}(?:[., '](?=\d{3}(?:\D|$))\d{3})*|\d+)(?:[.,](\d{1,2}))?[^\d]{0,5}$/.exec(
    cell.trim(),
  );
  if (found === null) return undefined;
  const [, whole, part] = found;
  // 1.500 may be one and a half, or fifteen hundred.
  if (part === undefined && /^\d{1,3}[.,]\d{3}$/.test(whole!)) return undefined;
  return {
    given: cell.trim().slice(0, 40),
    meant: whole!.replace(/\D/g, "") + (Number(part ?? 0) === 0 ? "" : `.${part!}`),
  };
}

/** Reads one record's cells by the shape; what it refuses becomes one sentence naming offer and label. */
function parseOffer({ cells }: TableRecord, where: string, parameter: string): OfferRecord {
  const error = [...cells].find(([, cell]) => cell instanceof CellError);
  if (error !== undefined)
    throw refuse(parameter, "{parameter}: {label} of {where} is {error}", {
      label: error[0],
      where,
      error: (error[1] as CellError).code,
    });
  const parsed = offerShape.safeParse(Object.fromEntries(cells));
  if (parsed.success) return parsed.data;
  const issue = parsed.error.issues[0]!;
  const meant = writtenNumber(cells.get(String(issue.path[0])));
  if (meant !== undefined)
    throw refuse(parameter, "{parameter}: {label} of {where} is text, {given}: write {meant}", {
      label: String(issue.path[0]),
      where,
      ...meant,
    });
  throw refuse(parameter, "{parameter}: {label} of {where} {issue}", {
    label: String(issue.path[0]),
    where,
    issue: issue.message.trim(),
  });
}

function feet(length: string | number, where: string, parameter: string): number {
  const bare = typeof length === "number" ? length > k.longestBandFeet.value : !/[a-z'"″′”’]/i.test(length);
  if (bare)
    throw refuse(
      parameter,
      "{parameter}: length {length} of {where} needs its unit: write it as 15 ft, 186 in or 4720 mm",
      { where, length: String(length).slice(0, 40) },
    );
  return typeof length === "number" ? length : readLength(length, "inch") / 304.8;
}

/** The price of a blade: as given, or from its length and the price per foot. */
function priceOf({ price, length, "price per foot": perFoot }: OfferRecord, where: string, parameter: string): number {
  if (price !== undefined && perFoot !== undefined)
    throw refuse(parameter, "{parameter}: {where} gives a price and a price per foot; give one", { where });
  if (price !== undefined) return price;
  if (length === undefined || perFoot === undefined)
    throw refuse(parameter, "{parameter}: {where} gives no price, nor both length and price per foot", { where });
  return feet(length, where, parameter) * perFoot;
}

/** What an offer is called: its name, or where it stands. */
const nameOf = ({ cells, where }: TableRecord): string => {
  const name = cells.get("name");
  return typeof name === "string" || typeof name === "number" ? String(name).trim() : where;
};

function offerOf(record: TableRecord, change: number, parameter: string): OfferedBlade {
  // By its name: a row counted from the table's heading is not the sheet's.
  const where = nameOf(record);
  const parsed = parseOffer(record, where, parameter);
  const { life, rate, rebate = 0 } = parsed;
  const price = priceOf(parsed, where, parameter);
  if (life === undefined || rate === undefined)
    throw refuse(parameter, "{parameter}: {where} gives no {label}", {
      where,
      label: life === undefined ? "life" : "rate",
    });
  if (parsed["rebate from"] !== undefined && rebate === 0)
    throw refuse(parameter, "{parameter}: {where} says rebate from, but no rebate", { where });
  refuseSwapped(life, rate, `${parameter} ${where}`);
  return {
    name: where,
    price,
    life,
    rate,
    change: parsed["change minutes"] ?? change,
    kerf: parsed["kerf cost"] ?? 0,
    rebate,
    rebateFrom: parsed["rebate from"] ?? 1,
  };
}

/** A cell that cannot be read spoils its own offer only. */
function readOffer(record: TableRecord, change: number, parameter: string): OfferedBlade | UnreadOffer {
  const offer = orRefusal(() => offerOf(record, change, parameter));
  return offer instanceof InputError ? { name: nameOf(record), refusal: offer } : offer;
}

/** Reads the table of offers: name; price, or length and price per foot; rebate and from how many; change minutes; kerf cost; life; rate. */
export function readOffers(range: Range, change: number, parameter: string): readonly (OfferedBlade | UnreadOffer)[] {
  const records = readHeadedTable(range, offerLabels, parameter);
  if (records.length === 0) throw refuse(parameter, "{parameter} holds labels but no offer");
  return records.map((record) => readOffer(record, change, parameter));
}
