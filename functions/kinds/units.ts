import { quantities, type Quantity, type Units } from "../../src/quantities";

/** Units whose sign would be read as the word "in". */
const spoken: Readonly<Record<string, string>> = {
  in: "inches",
  "in²": "square inches",
  "in²/min": "square inches per minute",
  "in/min": "inches per minute",
};

/** What a cell that holds a number of a quantity holds, in words: "number in mm", "amount per hour", "number". */
export function numberWords(quantity: Quantity, units: Units, kind = "number"): string {
  const { unit } = quantities[quantity][units];
  if (unit === "") return kind;
  if (unit.startsWith("per ")) return `amount ${unit}`;
  return `${kind} in ${spoken[unit] ?? unit}`;
}
