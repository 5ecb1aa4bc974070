import { cutData } from "../../src/cutting/cutData";
import type { BladeClass } from "../../src/blade/bladeClass";
import type { Material } from "../../src/material/material";
import type { Quantity, Units } from "../../src/quantities";
import type { Shape } from "../../src/section/shape";
import { defaultShop } from "../../src/shop/defaultShop";
import { printText } from "../../functions/kinds/sentence";
import { element, row } from "../controls/element";
import { answer, brief, measured, unitOf } from "../sheet/readings";

/** Low, nominal and high of one value. */
interface Spread {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

const spreadRow = (label: string, quantity: Quantity, { low, nominal, high }: Spread, units: Units): HTMLElement =>
  row(`${label}, ${unitOf(quantity, units)}`, ...[low, nominal, high].map((x) => brief(x, quantity, units)));

/** What a sawyer sets and sees. */
const settings = (value: ReturnType<typeof cutData>, units: Units): HTMLElement =>
  element(
    "p",
    {},
    "Band speed ",
    element("strong", {}, measured(value.bandSpeed, "bandSpeed", units)),
    `, feed ${measured(value.feed, "feed", units)}, pitch `,
    element("strong", {}, printText(value.pitch, units)),
    `, ${brief(value.teeth, "count", units)} teeth, bite ${measured(value.bite, "chip", units)}, chip ${measured(value.chipThickness, "chip", units)}.`,
  );

/** One class of blade in this grade and size: what to order and set, and what to expect from low to high. */
export function cutTable(shape: Shape, material: Material, blade: BladeClass, units: Units): HTMLElement {
  const cut = answer(units, () => cutData({ section: shape, material, blade, shop: defaultShop, pitch: undefined }));
  const title = element("h4", {}, blade);
  if ("problem" in cut) return element("div", {}, title, element("p", {}, cut.problem));
  const { value } = cut;
  const head = element(
    "tr",
    {},
    element("td"),
    ...["low", "nominal", "high"].map((h) => element("th", { scope: "col" }, h)),
  );
  const rows = [
    spreadRow("removal rate", "areaRate", { low: value.rateLow, nominal: value.rate, high: value.rateHigh }, units),
    spreadRow(
      "minutes of cutting",
      "minutes",
      { low: value.minutesLow, nominal: value.minutes, high: value.minutesHigh },
      units,
    ),
  ];
  const notes = printText([value.limit, value.notes, value.basis], units);
  return element(
    "div",
    {},
    title,
    settings(value, units),
    element(
      "table",
      { class: "spread", "aria-label": `${blade}: low, nominal, high` },
      element("thead", {}, head),
      element("tbody", {}, ...rows),
    ),
    element("p", { class: "quiet" }, notes),
  );
}
