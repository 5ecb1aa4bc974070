import type { Quantity } from "../../src/quantities";
import type { Limits } from "../kinds/number";

/** How the cells of one label are read. */
export type LabelKind =
  | { readonly is: "number"; readonly quantity: Quantity; readonly limits: Limits }
  | { readonly is: "choice"; readonly choices: readonly string[] }
  | { readonly is: "pitches" }
  | { readonly is: "length"; readonly limits: Limits };

export interface ShopLabel {
  readonly label: string;
  /** Name of the field of Shop, or of Shop.prices or Shop.lives, that it fills. */
  readonly key: string;
  readonly kind: LabelKind;
  /** What holds when the label is missing or blank, as the docs print it. */
  readonly otherwise: string;
  readonly help: string;
  /** May be followed by the name of a cutting group or a grade. */
  readonly special?: true;
}

const n = (
  label: string,
  key: string,
  quantity: Quantity,
  otherwise: string,
  help: string,
  limits: Limits = {},
): ShopLabel => ({ label, key, kind: { is: "number", quantity, limits }, otherwise, help });
const c = (label: string, key: string, choices: readonly string[], otherwise: string, help: string): ShopLabel => ({
  label,
  key,
  kind: { is: "choice", choices },
  otherwise,
  help,
});
const l = (label: string, key: string, otherwise: string, help: string): ShopLabel => ({
  label,
  key,
  kind: { is: "length", limits: {} },
  otherwise,
  help,
});
const share: Limits = { most: 1 };
const special = (row: ShopLabel): ShopLabel => ({ ...row, special: true });

/**
 * Every label of the shop block once: the reader, the docs and the block that the pane inserts come from this table.
 * The limits of the band, its tension and the density are judgement: every usual band and metal, and no such number in the block's other units.
 */
export const shopLabels: readonly ShopLabel[] = [
  n("Hourly cost", "hourlyCost", "moneyPerHour", "none", "what an hour of the saw costs, with its operator"),
  n("Set-up minutes", "setupMinutes", "minutes", "0", "once per order line"),
  n("Load minutes", "loadMinutes", "minutes", "0", "per bar or bundle loaded"),
  n("Handling minutes", "handlingMinutes", "minutes", "0", "per cut: approach, return, index, clamp"),
  n("Blade change minutes", "changeMinutes", "minutes", "0", "per blade"),
  n("Availability", "availability", "share", "1", "share of the paid time that the saw can run", share),
  n("Minimum charge", "minimumCharge", "money", "0", "least price of an order line"),
  n("Margin", "margin", "share", "0", "share of the price, not a mark-up on cost", { most: 0.99 }),
  n("Motor power", "motorPower", "power", "no limit", "rated power of the band motor"),
  n("Drive efficiency", "driveEfficiency", "share", "0.75", "share of the motor's power that reaches the band", share),
  n("Idle power", "idlePower", "power", "from the motor's size", "power taken by the running band with no work in it"),
  n("Minimum band speed", "minimumBandSpeed", "bandSpeed", "no limit", "slowest speed of the saw"),
  n("Maximum band speed", "maximumBandSpeed", "bandSpeed", "no limit", "fastest speed of the saw"),
  n("Maximum feed", "maximumFeed", "feed", "no limit", "fastest feed of the saw"),
  n("Maximum feed force", "maximumFeedForce", "force", "no limit", "greatest force the feed can give"),
  c(
    "Feed mode",
    "feedMode",
    ["constant rate", "constant feed"],
    "constant rate",
    "constant rate: the saw slows the feed where the work is wide",
  ),
  n("Maximum width", "maximumWidth", "size", "no limit", "widest work that the saw takes"),
  n("Maximum height", "maximumHeight", "size", "no limit", "highest work that the saw takes"),
  n("Guide gap", "guideGap", "size", "75 mm", "from the work to the guides, both sides together"),
  n("Band width", "bandWidth", "size", "from the work's width", "width of the band, tooth tips to back", {
    least: 5,
    most: 150,
  }),
  n("Band thickness", "bandThickness", "size", "from the work's width", "thickness of the band's back", {
    least: 0.3,
    most: 3,
  }),
  n("Band tension", "bandTension", "stress", "250 MPa", "tensile stress in the band", { least: 50, most: 700 }),
  n("Kerf", "kerf", "size", "from the band", "width of the slot", { least: 0.3, most: 8 }),
  {
    label: "Pitches stocked",
    key: "pitchesStocked",
    kind: { is: "pitches" },
    otherwise: "every pitch that is made",
    help: "pitches to choose from, such as 2/3, 3/4, 4/6",
  },
  c("Coolant", "coolant", ["flood", "mist", "dry"], "flood; dry for magnesium", "how the cut is cooled"),
  c("Saw condition", "sawCondition", ["good", "worn"], "good", "worn: old, light or loose"),
  special(
    n("Rate factor", "rateFactor", "ratio", "1", "own rate divided by the predicted one", { least: 0.05, most: 20 }),
  ),
  n("Break-in area", "breakInArea", "area", "0", "area cut at reduced feed with each new blade"),
  n("Break-in feed share", "breakInFeedShare", "share", "0.5", "share of the feed during break-in", share),
  n("Bi-metal price", "prices.bi-metal", "money", "none", "price of one bi-metal blade"),
  special(n("Bi-metal life", "lives.bi-metal", "area", "none", "area one bi-metal blade cuts")),
  n("Carbide price", "prices.carbide", "money", "none", "price of one carbide blade"),
  special(n("Carbide life", "lives.carbide", "area", "none", "area one carbide blade cuts")),
  n("Material price", "materialPrice", "pricePerMass", "none", "price of the bar"),
  n("Scrap price", "scrapPrice", "pricePerMass", "0", "what chips and ends bring"),
  n("Density", "density", "density", "none", "for CUTCOST, which knows no material", {
    least: 1000e-9,
    most: 23_000e-9,
  }),
  l("Trim", "trim", "0", "squared off the front of each bar"),
  l("Grip", "grip", "0", "end of the bar that the vice must keep"),
  l("Stock length", "stockLength", "none", "length of the bars"),
  l("Useful remnant", "usefulRemnant", "no remnant is credited", "shortest end that goes back to stock"),
];
