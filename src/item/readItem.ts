import { InputError } from "../errors";
import { itemConstants as k } from "../data/itemConstants";
import { findMaterial } from "../material/findMaterial";
import type { Material } from "../material/material";
import type { Units } from "../quantities";
import { readSection } from "../section/readSection";
import { attemptField } from "./attemptField";
import { eitherUnit } from "./eitherUnit";
import type { Item } from "./item";
import { itemOf } from "./itemOf";
import { itemRefusal } from "./itemRefusal";
import { lineUnits } from "./lineUnits";
import { openLine } from "./openLine";
import { readLine, type BareUnit } from "./readLine";
import { refuseLine } from "./refuseLine";
import { tellRefusal } from "./tellRefusal";

/**
 * Reads one description cell of an order list: size, material, length, quantity, and the words not read, in any order of words and many
 * languages. Every field is certain, or refused alone with the candidates. A bare number takes the unit that the line writes; else the
 * unit given; else the one that the line's words, grade and series speak for; else the line is read in both, and what differs is refused.
 * @param description as it stands in the cell [text]
 * @param units unit of bare numbers; undefined where none is given [text]
 * @param own materials of the shop block [-]
 * @returns the fields; length [mm], quantity [-]
 * @throws InputError "invalid": an empty cell, a date, an error value, more than 200 characters, or more than 60 words, numbers and signs
 * @source common practice, no source
 */
export function readItem(description: string | number, units: Units | undefined, own: readonly Material[]): Item {
  if (typeof description === "number") return numberItem(description, units ?? "inch", own);
  refuseLine(description);
  const open = openLine(description);
  if (open.atoms.length > k.mostAtoms.value)
    throw new InputError("invalid", "item", "a description has at most {most} words, numbers and signs", {
      most: String(k.mostAtoms.value),
    });
  const { written, mixed, hinted } = lineUnits(open);
  const read = (decided: Units, from: BareUnit["from"]): Item =>
    readLine(open, { units: decided, from, mixed, given: units }, own);
  const decide = (): Item => {
    if (written !== undefined) return read(written, "line");
    if (units !== undefined) return read(units, "given");
    return hinted === undefined ? eitherUnit(read("inch", "both"), read("metric", "both")) : read(hinted, "words");
  };
  return told(decide(), description, written ?? units ?? hinted ?? "inch");
}

/** The item with its refusals as they are told: each names the line, and proposes nothing that is refused. */
function told(item: Item, line: string, units: Units): Item {
  const isGood = (proposed: string): boolean =>
    !(attemptField(() => readSection(proposed, units)) instanceof InputError);
  const tell = <T>(field: T | InputError): T | InputError =>
    field instanceof InputError ? tellRefusal(field, line, isGood) : field;
  const fields = { section: tell(item.section), grade: tell(item.grade), quantity: tell(item.quantity) };
  return itemOf({
    ...fields,
    length: tell(item.length),
    unread: item.unread,
    notes: item.notes,
  });
}

/** A number alone can be a grade, as in a column of materials; it is never a size. */
function numberItem(number: number, units: Units, own: readonly Material[]): Item {
  const none = (field: string): InputError =>
    itemRefusal("{number} is only a number: the line gives no {field}", { number: String(number), field });
  return itemOf({
    section: attemptField(() => readSection(number, units)),
    grade: attemptField(() => findMaterial(number, own)),
    length: none("length"),
    quantity: none("quantity"),
    unread: "",
    notes: [],
  });
}
