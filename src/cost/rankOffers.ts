import { InputError } from "../errors";
import type { Text } from "../phrase";
import { bladeCost } from "./bladeCost";
import { breakEvenAt } from "./breakEvenAt";
import { cheapestBetween } from "./cheapestBetween";
import type { OfferedBlade } from "./offeredBlade";

interface OffersInput {
  readonly offers: readonly OfferedBlade[];
  readonly sawHourValue: number;
  readonly areaPerMonth: number | undefined;
}

interface Ranked {
  readonly rank: number;
  readonly name: string;
  readonly costPerArea: number;
  readonly costPerMonth: number | InputError;
  readonly saving: number;
  readonly breakEvenPrice: number | InputError;
  readonly bestFrom: Text;
  readonly bestTo: Text;
  readonly safetyMargin: Text;
}

/** An offer with a rebate from some number of blades on stands twice: as one blade, and as that many. */
const priced = (offer: OfferedBlade): readonly OfferedBlade[] => {
  if (offer.rebate === 0) return [offer];
  const less = { ...offer, price: offer.price * (1 - offer.rebate) };
  return offer.rebateFrom <= 1 ? [less] : [offer, { ...less, name: `${offer.name}, from ${offer.rebateFrom}` }];
};

const hourValue = (value: number): Text =>
  value === Infinity
    ? "no limit"
    : { template: "{value}", facts: { value: { number: value, quantity: "moneyPerHour" } } };

/** Where the winner's life or rate alone would make it cost what the second does. */
function fall(winner: OfferedBlade, second: number, sawHourValue: number): Text {
  const { life, rate } = breakEvenAt({ offer: winner, sawHourValue, change: winner.change, cost: second });
  const named = [
    ["life", life],
    ["rate", rate],
  ].filter((each): each is [string, number] => typeof each[1] === "number");
  return {
    template: `stays first down to ${named.map(([name]) => `${name} {${name}}`).join(", or ")}`,
    facts: Object.fromEntries(named.map(([name, value]) => [name, { number: value, quantity: "ownArea" as const }])),
  };
}

/**
 * Ranks blades by cost per area, c = w·H + price/life. Saving and break-even price are against the first offer as listed,
 * the blade in use; best from and to are the saw hour values between which an offer is the cheapest of all.
 * @param input offers: name, price [money], life [area], rate [area/min], change [min], rebate [-] from a number of blades; sawHourValue w [money/h]; areaPerMonth [area]
 * @returns rows, cheapest first: rank [-], name [text], costPerArea [money/area], costPerMonth [money], saving [money/area], breakEvenPrice [money], bestFrom, bestTo and safetyMargin [text]
 * @source cost per area as in bladeCost; breakEvenAt, cheapestBetween
 */
export function rankOffers({ offers, sawHourValue, areaPerMonth }: OffersInput): readonly Ranked[] {
  const all = offers
    .flatMap(priced)
    .map((offer) => ({ offer, cost: bladeCost({ blade: offer, sawHourValue, change: offer.change }) }));
  const first = all[0]!.cost;
  const ranked = [...all].sort((a, b) => a.cost - b.cost);
  const blades = all.map((a) => a.offer);
  return ranked.map(({ offer, cost }, i) => {
    const between = cheapestBetween({ blade: offer, all: blades });
    const second = ranked[1];
    return {
      rank: ranked.findIndex((r) => r.cost >= cost * (1 - 1e-9)) + 1,
      name: offer.name,
      costPerArea: cost,
      costPerMonth:
        areaPerMonth === undefined
          ? new InputError("none", "areaPerMonth", "{parameter} is not given")
          : cost * areaPerMonth,
      saving: first - cost,
      breakEvenPrice: breakEvenAt({ offer, sawHourValue, change: offer.change, cost: first }).price,
      bestFrom: between === undefined ? "never the cheapest" : hourValue(between.from),
      bestTo: between === undefined ? "never the cheapest" : hourValue(between.to),
      safetyMargin: i > 0 || second === undefined ? "" : fall(offer, second.cost, sawHourValue),
    };
  });
}
