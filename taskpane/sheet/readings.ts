import { attempt } from "../../functions/kinds/refusal";
import { section } from "../../functions/kinds";
import { Memo } from "../../functions/bind/memo";
import { sentence } from "../../functions/kinds/sentence";
import { InputError } from "../../src/errors";
import { quantities, type Quantity, type Units } from "../../src/quantities";
import type { Shape } from "../../src/section/shape";

export type Answer<T> = { readonly value: T } | { readonly problem: string };

/** What `read` gives, or the one sentence why not. */
export function answer<T>(units: Units, read: () => T): Answer<T> {
  const found = attempt(read);
  if ("value" in found) return found;
  return { problem: found.refusal instanceof InputError ? sentence(found.refusal, units) : found.refusal.message };
}

const memo = new Memo(100);

/** Reads a size as the functions do. */
export const readSize = (text: string, units: Units): Answer<Shape> =>
  text.trim() === ""
    ? { problem: "Type a size, for example round 7, flat 6x1 or W12x50." }
    : answer(units, () => section.read([text], 0, { units, memo, shop: undefined }, "section"));

/** Three digits are what a label needs. */
export const brief = (core: number, quantity: Quantity, units: Units): string =>
  String(Number((core / quantities[quantity][units].factor).toPrecision(3)));

export const unitOf = (quantity: Quantity, units: Units): string => quantities[quantity][units].unit;

/** "2.14 in²/min". */
export const measured = (core: number, quantity: Quantity, units: Units): string =>
  `${brief(core, quantity, units)} ${unitOf(quantity, units)}`.trim();
