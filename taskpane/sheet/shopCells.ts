import { quantities, type Units } from "../../src/quantities";
import { otherwise, shopLabels, type ShopLabel } from "../../functions/shop/labels";
import type { Contents } from "./sheet";

const unit = ({ kind }: ShopLabel, units: Units): string =>
  kind.choices?.join(" or ") ?? (kind.quantity === undefined ? "" : quantities[kind.quantity][units].unit);

/** The shop block, ready to fill in: label, value (blank: the default holds), and what it means. */
export const shopCells = (units: Units): Contents => [
  [{ text: "Units" }, { text: units }, { text: "governs every number of this block" }],
  ...shopLabels.map((row) => [
    { text: row.label },
    { text: "" },
    { text: [unit(row, units), row.help, `blank: ${otherwise(row, units)}`].filter((t) => t !== "").join("; ") },
  ]),
];
