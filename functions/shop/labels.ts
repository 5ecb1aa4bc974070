import { cuttingConstants } from "../../src/data/cuttingConstants";
import { shopConstants as k } from "../../src/data/shopConstants";
import { quantities, type Quantity, type Units } from "../../src/quantities";
import { defaultShop } from "../../src/shop/defaultShop";
import type { Shop } from "../../src/shop/shop";
import { choice, length, number, pitchList } from "../kinds";
import type { Kind } from "../kinds/kind";
import { plainNumber } from "../kinds/sentence";

export interface ShopLabel {
  readonly label: string;
  /** Name of the field of Shop, or of Shop.prices or Shop.lives, that it fills. */
  readonly key: string;
  /** The kind that reads the same value where it is an argument. */
  readonly kind: Kind<unknown>;
  /** What holds when the label is missing or blank, where the shop has no value for it then. */
  readonly none: string;
  readonly help: string;
  /** May be followed by the name of a cutting group or a grade. */
  readonly special?: true;
  /** TUNE gives it: the name may be followed by a class of blade, and a number alone in its row holds for every saw. */
  readonly byBlade?: true;
}

const row = (label: string, key: string, kind: Kind<unknown>, none: string, help: string): ShopLabel => ({
  label,
  key,
  kind,
  none,
  help,
});
const special = (label: ShopLabel): ShopLabel => ({ ...label, special: true });
const tuned = (label: ShopLabel): ShopLabel => ({ ...label, special: true, byBlade: true });
const between = (quantity: Quantity, from: { readonly value: number }, to: { readonly value: number }): Kind<number> =>
  number(quantity, { least: from.value, most: to.value });
const minutes = number("minutes");
const money = number("money");
const share = number("share");
const speed = number("bandSpeed");
const size = number("size");
/** The speed that nonferrous metals are held to on a saw of unknown speed. */
const printedSpeed = (units: Units): string => {
  const { factor, unit } = quantities.bandSpeed[units];
  return `${String(Math.round(cuttingConstants.generalTopSpeed.value / factor))} ${unit}`;
};

/** Every label of the shop block once: the reader, the docs and the block that the pane inserts come from this table. */
// prettier-ignore
export const shopLabels: readonly ShopLabel[] = [
  row("Hourly cost", "hourlyCost", number("moneyPerHour"), "none", "what an hour of the saw costs, with its operator unless Operator cost is given"),
  row("Operator cost", "operatorCost", number("moneyPerHour"), "in Hourly cost, or unattended", "what an hour of the operator costs"),
  row("Operator share", "operatorShare", share, "", "share of the operator's time that the saw takes"),
  row("Set-up minutes", "setupMinutes", minutes, "", "once per order line"),
  row("Load minutes", "loadMinutes", minutes, "", "per bar or bundle loaded"),
  row("Handling minutes", "handlingMinutes", minutes, "", "per cut: approach, return, index, clamp"),
  row("Blade change minutes", "changeMinutes", minutes, "", "per blade"),
  row("Availability", "availability", share, "", "share of the paid time that the saw can run"),
  row("Minimum charge", "minimumCharge", money, "", "lowest price of an order line"),
  row("Margin", "margin", number("share", { most: k.marginTo.value }), "", "share of the price, not a mark-up on cost"),
  row("Motor power", "motorPower", number("power"), "no limit", "rated power of the band motor"),
  row("Drive efficiency", "driveEfficiency", share, "", "share of the motor's power that reaches the band"),
  row("Idle power", "idlePower", number("power"), "from the motor's size", "power taken by the running band with no work in it"),
  row("Minimum band speed", "minimumBandSpeed", speed, "no limit", "slowest speed of the saw"),
  row("Maximum band speed", "maximumBandSpeed", speed, `no limit; ${printedSpeed("inch")} (${printedSpeed("metric")}) in nonferrous metals`, "fastest speed of the saw"),
  row("Maximum feed", "maximumFeed", number("feed"), "no limit", "fastest feed of the saw"),
  row("Maximum feed force", "maximumFeedForce", number("force"), "no limit", "highest force the feed can give"),
  row("Feed mode", "feedMode", choice("constant rate", "constant feed"), "", "constant rate: the saw slows the feed where the work is wide"),
  row("Maximum width", "maximumWidth", size, "no limit", "widest work that the saw takes"),
  row("Maximum height", "maximumHeight", size, "no limit", "highest work that the saw takes"),
  row("Guide gap", "guideGap", size, "", "from the work to the guides, both sides together"),
  row("Band width", "bandWidth", between("size", k.bandWidthFrom, k.bandWidthTo), "from the work's width", "width of the band, tooth tips to back"),
  row("Band thickness", "bandThickness", between("size", k.bandThicknessFrom, k.bandThicknessTo), "from the work's width", "thickness of the band's back"),
  row("Band tension", "bandTension", between("stress", k.bandTensionFrom, k.bandTensionTo), "", "tensile stress in the band"),
  row("Wheel diameter", "wheelDiameter", between("size", k.wheelFrom, k.wheelTo), "none", "of the band wheels, for what bends the band"),
  row("Band length", "bandLength", length(), "none", "once round the wheels, for marks that repeat each turn"),
  row("Kerf", "kerf", between("size", k.kerfFrom, k.kerfTo), "from the band", "width of the slot"),
  row("Pitches stocked", "pitchesStocked", pitchList, "every pitch that is made", "pitches to choose from, such as 2/3, 3/4, 4/6"),
  row("Coolant", "coolant", choice("flood", "mist", "dry"), "flood; dry for magnesium", "how the cut is cooled"),
  row("Saw condition", "sawCondition", choice("good", "worn"), "", "worn: old, light or loose"),
  tuned(row("Rate factor", "rateFactor", between("ratio", k.rateFactorFrom, k.rateFactorTo), "", "own rate divided by the predicted one; TUNE gives it")),
  tuned(row("Rate spread", "rateSpread", between("ratio", k.rateSpreadFrom, k.rateFactorTo), "by group and blade", "low and high are the rate divided and multiplied by it; TUNE gives it")),
  row("Break-in area", "breakInArea", number("area"), "", "area cut at reduced feed with each new blade"),
  row("Break-in feed share", "breakInFeedShare", share, "", "share of the feed during break-in"),
  row("Bi-metal price", "prices.bi-metal", money, "none", "price of one bi-metal blade"),
  special(row("Bi-metal life", "lives.bi-metal", number("area"), "none", "area one bi-metal blade cuts")),
  row("Carbide price", "prices.carbide", money, "none", "price of one carbide blade"),
  special(row("Carbide life", "lives.carbide", number("area"), "none", "area one carbide blade cuts")),
  row("Material price", "materialPrice", number("pricePerMass"), "none", "price of the bar"),
  row("Scrap price", "scrapPrice", number("pricePerMass"), "", "what chips and ends bring"),
  row("Charge material", "chargeMaterial", choice("yes", "no"), "", "yes: QUOTE adds the bar of the pieces at the material price"),
  row("Density", "density", between("density", k.densityFrom, k.densityTo), "none", "for CUTCOST, which knows no material"),
  row("Trim", "trim", length({ zeroIsValue: true }), "", "squared off the front of each bar"),
  row("Grip", "grip", length({ zeroIsValue: true }), "", "end of the bar that the vice must keep"),
  row("Stock length", "stockLength", length(), "none", "length of the bars"),
  row("Useful remnant", "usefulRemnant", length(), "no remnant is credited", "shortest end that goes back to stock"),
  row("Remnant discount", "remnantDiscount", share, "", "share of a useful remnant's value that QUOTE does not credit"),
  row("Test pieces", "testPieces", number("count", { whole: true }), "", "sawn more than ordered, per line"),
  row("Reject share", "rejectShare", number("share", { most: k.rejectTo.value }), "", "share of the pieces sawn that are scrapped"),
];

/** What holds when a label is missing or blank, in words: the shop's own default, so that it stands once. */
export function otherwise({ key, kind, none }: ShopLabel, units: Units): string {
  const held: unknown = none === "" ? defaultShop[key as keyof Shop] : none;
  if (typeof held !== "number" || kind.quantity === undefined) return String(held);
  const { factor, unit } = quantities[kind.quantity][units];
  return held === 0 ? "0" : `${plainNumber(held / factor)} ${unit}`.trim();
}
