import { InputError } from "../errors";
import type { Item } from "./item";

/**
 * The fields of a line with their texts.
 * @param fields section, grade, length [mm], quantity [-], each given or refused; words not read [text]; notes on how it was read [text]
 * @returns the item [-]
 * @source definition
 */
export function itemOf({ section, grade, ...rest }: Omit<Item, "size" | "material">): Item {
  return {
    ...rest,
    size: section instanceof InputError ? section : section.text,
    section,
    material: grade instanceof InputError ? grade : grade.name,
    grade,
  };
}
