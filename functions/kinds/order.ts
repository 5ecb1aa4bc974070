import { InputError } from "../../src/errors";
import type { Item, OrderItem } from "../../src/item/item";
import { readItem } from "../../src/item/readItem";
import type { Units } from "../../src/quantities";
import { readSection } from "../../src/section/readSection";
import type { Section } from "../../src/section/section";
import type { Kind } from "./kind";
import { withProfile } from "./size";
import { renamed, textual } from "./text";

/** A description line of an order list. */
export const description: Kind<Item> = textual(
  "description",
  "a description line, such as RND 3-1/2 4140 x 20 ft",
  (value, { units, unitsAssumed, shop }, parameter) =>
    renamed(parameter, () => readItem(value, unitsAssumed === true ? undefined : units, shop?.ownMaterials ?? [])),
  ({ units, unitsAssumed, shop }) =>
    shop === undefined || shop.ownMaterials.length === 0 ? (unitsAssumed === true ? "open" : units) : undefined,
);

/** "12 pcs" before a size is a quantity to order, not a stack cut at once. */
const counted = /\b(?:pcs?|pieces?|off|ea)\b/i;

/** A text that is a size and nothing else; undefined where it says more, or is none. */
const onlySize = (value: string | number, units: Units): Section | undefined => {
  if (counted.test(String(value))) return undefined;
  try {
    return readSection(value, units);
  } catch (refusal) {
    if (refusal instanceof InputError) return undefined;
    throw refusal;
  }
};

/** A size, or a whole description line: a size alone is read by the size reader, so that it means what it means everywhere. */
export const orderItem: Kind<OrderItem> = textual(
  "order item",
  "a size, or a description line such as RND 3-1/2 4140 x 20 ft",
  (value, { units, shop, memo }, parameter) => {
    const size = onlySize(value, units);
    const missing = (what: string): InputError =>
      new InputError("invalid", what, what === "material" ? "{parameter} is empty" : "{parameter} is empty or 0");
    if (size !== undefined)
      return {
        shape: withProfile(size, memo),
        grade: missing("material"),
        length: missing("length"),
        notes: size.note.split(", ").slice(1),
      };
    const {
      section: read,
      grade,
      length: long,
      notes,
    } = renamed(parameter, () => readItem(value, units, shop?.ownMaterials ?? []));
    return { shape: read instanceof InputError ? read : withProfile(read, memo), grade, length: long, notes };
  },
  ({ units, shop }) => (shop === undefined || shop.ownMaterials.length === 0 ? units : undefined),
);
