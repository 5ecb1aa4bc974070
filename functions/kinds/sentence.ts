import type { Fact, InputError } from "../../src/errors";
import type { Text } from "../../src/phrase";
import { quantities, type Units } from "../../src/quantities";
import { words } from "./words";

/** At most five significant digits: a sentence is read, not calculated with. */
export const plainNumber = (x: number, digits = 5): string => String(Number(x.toPrecision(digits)));

/** A fact in the caller's units, for example "2.5 in"; text as it is. */
const printFact = (fact: Fact, units: Units): string => {
  if (typeof fact === "string") return fact;
  const { factor, unit } = quantities[fact.quantity][units];
  const number = plainNumber(fact.number / factor, fact.digits);
  return unit === "" || unit === "°" ? number + unit : `${number} ${unit}`;
};

/** Puts the facts into a template, in the caller's units. */
const fill = (template: string, facts: Readonly<Record<string, Fact>>, units: Units): string =>
  template.replace(/\{(\w+)\}/g, (hole, key: string) => {
    const fact = facts[key];
    return fact === undefined ? hole : printFact(fact, units);
  });

/** A text result as the cell shows it. */
export function printText(text: Text, units: Units): string {
  if (typeof text === "string") return text;
  if ("template" in text) return fill(text.template, text.facts, units);
  return text
    .map((t) => printText(t, units))
    .filter((t) => t !== "")
    .join(" ");
}

/** The one sentence of a refusal, in the caller's units. Nothing else in the project makes one. */
export function sentence(refusal: InputError, units: Units): string {
  const name = words(refusal.parameter);
  const text = fill(refusal.problem, { ...refusal.facts, parameter: name }, units);
  return refusal.problem.includes("{parameter}") || name === "" ? text : `${name}: ${text}`;
}
