import type { Item } from "./item";

/**
 * The results of ITEM by their names in the worksheet.
 * @param input item, a description line that is read [-]
 * @returns size, material [text], length [mm], quantity [-], words not read [text]; a field that the line leaves open is its refusal
 * @source definition
 */
export function itemRow({ item }: { readonly item: Item }): Pick<Item, "size" | "material" | "length" | "quantity" | "unread"> {
  const { size, material, length, quantity, unread } = item;
  return { size, material, length, quantity, unread };
}
