import { InputError } from "../errors";
import { costConstants } from "../data/costConstants";
import { cuttingConstants } from "../data/cuttingConstants";
import type { Phrase, Text } from "../phrase";
import { bladeCost } from "./bladeCost";
import { breakEvenAt } from "./breakEvenAt";
import { cheapestBetween } from "./cheapestBetween";
import { rivalBlades } from "./rivalBlades";
import type { OfferedBlade, UnreadOffer } from "./offeredBlade";

const tie = costConstants.tie.value;

interface OffersInput {
  readonly offers: readonly (OfferedBlade | UnreadOffer)[];
  readonly sawHourValue: number;
  readonly areaPerMonth: number | undefined;
}

interface Ranked {
  readonly rank: number | undefined;
  readonly name: string;
  readonly costPerArea: number | undefined;
  readonly costPerMonth: number | InputError | undefined;
  readonly saving: number | InputError | undefined;
  readonly breakEvenPrice: number | InputError | undefined;
  readonly bestFrom: Text;
  readonly bestTo: Text;
  readonly safetyMargin: Text;
  readonly takesTheLead: Text;
  readonly monthsOfSupply: number | undefined;
  readonly note: Text;
}

interface Priced {
  readonly offer: OfferedBlade;
  readonly cost: number;
}

/** An offer with a rebate from some number of blades on stands twice: as one blade, and as that many. */
const priced = (offer: OfferedBlade): readonly OfferedBlade[] => {
  if (offer.rebate === 0) return [offer];
  const less = { ...offer, price: offer.price * (1 - offer.rebate) };
  return offer.rebateFrom <= 1
    ? [less]
    : [
        { ...offer, rebateFrom: 1 },
        { ...less, name: `${offer.name}, from ${offer.rebateFrom}` },
      ];
};

/** How long the blades last that must be bought at once for the rebate. */
const suppliedMonths = (
  { rebate, rebateFrom, life }: OfferedBlade,
  areaPerMonth: number | undefined,
): number | undefined =>
  areaPerMonth === undefined || rebate === 0 || rebateFrom <= 1 ? undefined : (rebateFrom * life) / areaPerMonth;

const hourValue = (value: number): Text =>
  value === Infinity
    ? "no limit"
    : { template: "{value}", facts: { value: { number: value, quantity: "moneyPerHour" } } };

/** The values at which an offer alone would cost so much, as "life 812, or rate 3.4". */
function valuesAt(
  offer: OfferedBlade,
  cost: number,
  sawHourValue: number,
  keys: readonly ("price" | "life" | "rate")[],
): Phrase | undefined {
  const at = breakEvenAt({ offer, sawHourValue, change: offer.change, cost });
  const named = keys.filter((key) => typeof at[key] === "number");
  if (named.length === 0) return undefined;
  const fact = (key: "price" | "life" | "rate") => ({
    number: at[key] as number,
    quantity: key === "price" ? ("money" as const) : ("ownArea" as const),
    digits: cuttingConstants.saidDigits.value,
  });
  return {
    template: named.map((key) => `${key} {${key}}`).join(", or "),
    facts: Object.fromEntries(named.map((key) => [key, fact(key)])),
  };
}

const isTie = (a: number, b: number): boolean => Math.abs(a - b) <= tie * Math.max(a, b);

/** How far the winner's life or rate may fall. */
function fall({ offer }: Priced, second: Priced | undefined, sawHourValue: number): Text {
  const at = second && valuesAt(offer, second.cost, sawHourValue, ["life", "rate"]);
  return at === undefined ? "" : { ...at, template: `stays first down to ${at.template}` };
}

/** At which price, life or rate an offer overtakes the next one up. */
function lead({ offer, cost }: Priced, above: Priced | undefined, sawHourValue: number): Text {
  if (above === undefined) return "";
  if (isTie(cost, above.cost)) return `level with ${above.offer.name}`;
  const at = valuesAt(offer, above.cost, sawHourValue, ["price", "life", "rate"]);
  const name = above.offer.name.replace(/[{}]/g, "");
  return at === undefined ? `never ahead of ${name}` : { ...at, template: `ahead of ${name} at ${at.template}` };
}

const isUnread = (offer: OfferedBlade | UnreadOffer): offer is UnreadOffer => "refusal" in offer;

/** An offer that cannot be read stands below the others, with the reason. */
const unreadRow = ({ name, refusal: { problem, facts } }: UnreadOffer): Ranked => ({
  rank: undefined,
  name,
  costPerArea: undefined,
  costPerMonth: undefined,
  saving: undefined,
  breakEvenPrice: undefined,
  bestFrom: "",
  bestTo: "",
  safetyMargin: "",
  takesTheLead: "",
  monthsOfSupply: undefined,
  note: { template: `not ranked: ${problem.replace(/^\{parameter\}:? /, "")}`, facts },
});

/** Ranks of offers from the cheapest up; ties share the rank of the first. */
function ranksOf(ranked: readonly Priced[]): readonly number[] {
  let first = 0;
  return ranked.map(({ cost }) => {
    while (ranked[first]!.cost < cost * (1 - tie)) first += 1;
    return first + 1;
  });
}

/**
 * Ranks blades by cost per area, c = w·H + price/life + kerf. Saving and break-even price are against the first offer as
 * listed, the blade in use; best from and to are the saw hour values between which an offer is the cheapest of all; an
 * offer takes the lead of the next one up at a price, a life or a rate. A rebate's quantity lasts quantity·life/area a month.
 * @param input offers: name, price [money], life [area], rate [area/min], kerf [money/area], change [min], rebate [-] from a number of blades, or a refusal; sawHourValue w [money/h]; areaPerMonth [area]
 * @returns rows, cheapest first: rank [-], name [text], costPerArea [money/area], costPerMonth [money], saving [money/area], breakEvenPrice [money], bestFrom, bestTo, safetyMargin, takesTheLead [text], monthsOfSupply [months], note [text]
 * @throws InputError where no offer at all can be read: the first one's
 * @source cost per area as in bladeCost; breakEvenAt, cheapestBetween
 */
export function rankOffers({ offers, sawHourValue, areaPerMonth }: OffersInput): readonly Ranked[] {
  const read = offers.filter((offer): offer is OfferedBlade => !isUnread(offer));
  const unread = offers.filter(isUnread);
  if (read.length === 0) throw unread[0]!.refusal;
  const all = read
    .flatMap(priced)
    .map((offer): Priced => ({ offer, cost: bladeCost({ blade: offer, sawHourValue, change: offer.change }) }));
  const inUse = isUnread(offers[0]!)
    ? new InputError("none", "", "the first offer of the table could not be read")
    : all[0]!.cost;
  const ranked = [...all].sort((a, b) => a.cost - b.cost);
  const ranks = ranksOf(ranked);
  const rivals = rivalBlades(all.map(({ offer }) => offer));
  const rows = ranked.map((own, i): Ranked => {
    const { offer, cost } = own;
    const between = cheapestBetween({ blade: offer, all: rivals });
    return {
      rank: ranks[i],
      name: offer.name,
      costPerArea: cost,
      costPerMonth:
        areaPerMonth === undefined
          ? new InputError("none", "areaPerMonth", "{parameter} is not given")
          : cost * areaPerMonth,
      saving: inUse instanceof InputError ? inUse : inUse - cost,
      breakEvenPrice:
        inUse instanceof InputError
          ? inUse
          : breakEvenAt({ offer, sawHourValue, change: offer.change, cost: inUse }).price,
      bestFrom: between === undefined ? "never the cheapest" : hourValue(between.from),
      bestTo: between === undefined ? "never the cheapest" : hourValue(between.to),
      safetyMargin: i > 0 ? "" : fall(own, ranked[1], sawHourValue),
      takesTheLead: lead(own, ranked[i - 1], sawHourValue),
      monthsOfSupply: suppliedMonths(offer, areaPerMonth),
      note: "",
    };
  });
  return [...rows, ...unread.map(unreadRow)];
}
