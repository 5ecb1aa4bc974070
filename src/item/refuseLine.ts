import { itemConstants as k } from "../data/itemConstants";
import { InputError } from "../errors";
import { compactDesignation } from "../material/compactDesignation";
import { materialIndex } from "../material/materialIndex";
import { normaliseSize } from "../size/normaliseSize";
import { spoiledText } from "../size/spoiledText";

/**
 * Refuses what is no line at all: an empty cell, a date that a fraction was turned into, an error value, a text that is too long.
 * @param description as it stands in the cell [text]
 * @returns nothing; it only refuses [-]
 * @throws InputError "invalid": with the cure
 * @source definition
 */
export function refuseLine(description: string): void {
  if (description.length > k.longestLine.value)
    throw new InputError("invalid", "item", "a description has at most {longest} characters", {
      longest: String(k.longestLine.value),
    });
  const plain = normaliseSize(description);
  if (plain === "") throw new InputError("invalid", "item", 'no description given; for example "4140 round 3 x 12 ft"');
  const spoiled = spoiledText(plain);
  if (spoiled === "error")
    throw new InputError("invalid", "item", "the cell holds the Excel error {error}", { error: plain.toUpperCase() });
  // 65-45-12 is a ductile iron.
  if (spoiled === "date" && !materialIndex().has(compactDesignation(plain)))
    throw new InputError(
      "invalid",
      "item",
      '"{text}" is a date: Excel has changed a fraction such as 3/4. Format the cell as Text and type it again',
      { text: description.trim() },
    );
}
