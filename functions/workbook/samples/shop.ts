import { head, invented, plain, type SampleCell, type SampleSheet } from "./sheet";

/** One saw of the invented service centre. */
const values: readonly (readonly [label: string, value: SampleCell, comment: string])[] = [
  ["Units", "inch", "of the numbers below"],
  ["Hourly cost", 72, "saw and operator"],
  ["Set-up minutes", 10, "per order line"],
  ["Load minutes", 6, "per bar or bundle"],
  ["Handling minutes", 1.5, "per cut"],
  ["Blade change minutes", 12, ""],
  ["Minimum charge", 35, "per order line"],
  ["Margin", 0.25, "of the price"],
  ["Motor power", 7.5, "hp"],
  ["Maximum band speed", 350, "ft/min"],
  ["Maximum feed", 20, "in/min"],
  ["Band width", 1.34, "in"],
  ["Kerf", 0.065, "in"],
  ["Coolant", "flood", ""],
  ["Break-in area", 60, "in²"],
  ["Bi-metal price", 180, ""],
  ["Bi-metal life", 6000, "in²"],
  ["Bi-metal life duplex and PH stainless", 2500, "in²"],
  ["Carbide price", 420, ""],
  ["Carbide life", 15000, "in²"],
  ["Carbide life duplex and PH stainless", 7000, "in²"],
  ["Carbide life 1018", 1500, "in², cut in bundles"],
  ["Material price", 1.1, "per lb"],
  ["Scrap price", 0.15, "per lb"],
  ["Trim", 0.25, "in"],
  ["Grip", 4, "in"],
  ["Stock length", "20 ft", ""],
  ["Useful remnant", 24, "in"],
];
const start = 5;
const end = start + values.length - 1;

/** The block's name, as formulas on the other sheets take it. */
export const shopBlock = "Shop";

/** The cell beside a label. */
export const shopCell = (label: string): string => `Shop!$B$${start + values.findIndex(([l]) => l === label)}`;

export const shop: SampleSheet = {
  name: "Shop",
  widths: [285, 110, 150],
  rows: [...invented("The shop block"), head("label", "value", "comment"), ...values.map((row) => plain(...row))],
  frozen: { rows: start - 1, columns: 0 },
  inputs: [`B${start}:B${end}`],
  names: { [shopBlock]: `A${start}:C${end}` },
  tables: [{ name: "ShopBlock", area: `A${start - 1}:C${end}` }],
  lists: [
    { area: `B${start}`, words: ["inch", "metric"] },
    { area: shopCell("Coolant").replace(/Shop!|\$/g, ""), words: ["flood", "mist", "dry"] },
  ],
  print: { area: `A1:H${end}`, pages: "one", turned: false },
};
