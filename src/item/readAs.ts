import { InputError } from "../errors";
import type { Text } from "../phrase";

/** What was read of a line, each part given or refused. */
interface Read {
  readonly size: string | InputError;
  readonly material: string | InputError;
  /** [mm] */
  readonly length: number | InputError;
  /** Pieces [-]. */
  readonly quantity: number | InputError;
  readonly notes: readonly string[];
}

/**
 * How a line was read, in one line: size, grade, length, quantity, and everything that was assumed.
 * @param read fields; a refused one is left out [-]
 * @returns text with its measured facts; empty where nothing was read [text]
 * @source definition
 */
export function readAs({ size, material, length, quantity, notes }: Read): Text {
  const pieces = quantity instanceof InputError ? "" : `${String(quantity)} ${quantity === 1 ? "piece" : "pieces"}`;
  const texts = [size, material].map((text) => (text instanceof InputError ? "" : text));
  const parts = [...texts, length instanceof InputError ? "" : "{length}", pieces].filter((part) => part !== "");
  if (parts.length === 0) return "";
  return {
    template: [...parts, ...notes].join(" · "),
    facts: length instanceof InputError ? {} : { length: { number: length, quantity: "length" } },
  };
}
