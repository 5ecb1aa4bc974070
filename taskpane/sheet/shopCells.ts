import { quantities, type Units } from "../../src/quantities";
import { shopLabels, type LabelKind } from "../../functions/shop/labels";
import type { Contents } from "./sheet";

const unit = (kind: LabelKind, units: Units): string => {
  if (kind.is === "number") return quantities[kind.quantity][units].unit;
  return kind.is === "length" ? quantities.length[units].unit : kind.is === "choice" ? kind.choices.join(" or ") : "";
};

/** The shop block, ready to fill in: label, value (blank: the default holds), and what it means. */
export const shopCells = (units: Units): Contents => [
  [{ text: "Units" }, { text: units }, { text: "governs every number of this block" }],
  ...shopLabels.map(({ label, kind, otherwise, help }) => [
    { text: label },
    { text: "" },
    { text: [unit(kind, units), help, `blank: ${otherwise}`].filter((t) => t !== "").join("; ") },
  ]),
];
