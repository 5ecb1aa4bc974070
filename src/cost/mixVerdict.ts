import { costConstants } from "../data/costConstants";
import { cuttingConstants } from "../data/cuttingConstants";
import { InputError, type Measured } from "../errors";
import type { Text } from "../phrase";
import { minutesPerHour, type Quantity } from "../quantities";
import type { Spent, WeighedMix } from "./weighMix";

/** Minutes with their low and high. */
type Bounded = Spent & { readonly low: number; readonly high: number };

export type MixSums = Omit<WeighedMix, "biMetal" | "carbide"> & {
  readonly biMetal: Bounded;
  readonly carbide: Bounded;
  /** Rows that are not counted. */
  readonly leftOut: number;
};

const equality = costConstants.tie.value;
const said = (number: number, quantity: Quantity): Measured => ({
  number,
  quantity,
  digits: cuttingConstants.saidDigits.value,
});
const hours = (minutes: number): Measured => said(minutes / minutesPerHour, "hours");

/** Carbide for every job against bi-metal for every job. */
function comparison({ biMetal, carbide }: MixSums): Text {
  const saving = biMetal.cost - carbide.cost;
  const freed = biMetal.minutes - carbide.minutes;
  const isEqual = Math.abs(saving) <= equality * biMetal.cost;
  const money = isEqual
    ? "costs the same as bi-metal"
    : saving > 0
      ? `saves {saving} of {cost}`
      : `costs {saving} more than {cost}`;
  const time = freed >= 0 ? "frees {freed}" : "takes {freed} more";
  return {
    template: `Carbide wherever it can ${money} and ${time}: {ch} ({cl} to {cu}) and {cb} blades against {bh} ({bl} to {bu}) and {bb} blades of bi-metal.`,
    facts: {
      saving: said(Math.abs(saving), "money"),
      cost: said(biMetal.cost, "money"),
      freed: hours(Math.abs(freed)),
      ch: hours(carbide.minutes),
      cl: hours(carbide.low),
      cu: hours(carbide.high),
      cb: said(carbide.blades, "ratio"),
      bh: hours(biMetal.minutes),
      bl: hours(biMetal.low),
      bu: hours(biMetal.high),
      bb: said(biMetal.blades, "ratio"),
    },
  };
}

function limit({ highestPrice, lifeShare }: MixSums): Text {
  if (lifeShare instanceof InputError) return "No carbide price is low enough and no life long enough.";
  const life = said(lifeShare, "ratio");
  if (highestPrice instanceof InputError)
    return {
      template: "No carbide price is low enough; it pays from {life} times the lives given on.",
      facts: { life },
    };
  return {
    template: "It pays up to a carbide price of {price}, or from {life} times the lives given on.",
    facts: { life, price: said(highestPrice, "money") },
  };
}

function mixed({ biMetal, carbide, best }: MixSums): Text {
  const isBest = ({ cost }: Spent): boolean => cost - best.cost <= equality * cost;
  if (isBest(carbide)) return "No job is cheaper with bi-metal.";
  if (isBest(biMetal)) return "No job is cheaper with carbide.";
  const freed = biMetal.minutes - best.minutes;
  return {
    template: `Each job with its cheaper class saves {saving} and ${freed >= 0 ? "frees {freed}" : "takes {freed} more"}.`,
    facts: { saving: said(biMetal.cost - best.cost, "money"), freed: hours(Math.abs(freed)) },
  };
}

/**
 * The decision over an order book as a sentence of three digits that a buyer can send.
 * @param sums minutes with low and high [min], blades [-], cost [money]; limits of price [money] and life [-]
 * @returns the sentences [text]
 * @source definition
 */
export function mixVerdict(sums: MixSums): Text {
  const left = sums.leftOut === 0 ? "" : `${sums.leftOut} ${sums.leftOut === 1 ? "row is" : "rows are"} left out.`;
  if (sums.jobs.length === sums.leftOut) return ["There is nothing to compare.", left];
  if (sums.both === 0) return ["No job can be cut with both classes, so there is nothing to choose.", left];
  return [comparison(sums), limit(sums), mixed(sums), left];
}
