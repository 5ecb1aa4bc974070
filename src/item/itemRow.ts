import type { Text } from "../phrase";
import type { Item } from "./item";
import { readAs } from "./readAs";

/**
 * The results of ITEM by their names in the worksheet.
 * @param input description, a line that is read [-]
 * @returns size, material [text], length [mm], quantity [-], words not read, how it was read [text]; a field that the line leaves open is its refusal
 * @source definition
 */
export function itemRow({
  description,
}: {
  readonly description: Item;
}): Pick<Item, "size" | "material" | "length" | "quantity"> & { readonly wordsNotRead: string; readonly readAs: Text } {
  const { size, material, length, quantity, unread } = description;
  return { size, material, length, quantity, wordsNotRead: unread, readAs: readAs(description) };
}
