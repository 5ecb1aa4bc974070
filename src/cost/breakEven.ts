import { cuttingConstants } from "../data/cuttingConstants";
import { costConstants as k } from "../data/costConstants";
import { InputError, type Fact } from "../errors";
import type { Text } from "../phrase";
import type { Blade, Offer } from "./blade";
import { bladeCost } from "./bladeCost";
import { breakEvenAt } from "./breakEvenAt";
import { breakEvenHourValue } from "./breakEvenHourValue";

const { saidDigits: said } = cuttingConstants;

export interface BreakEvenInput {
  readonly current: Blade;
  readonly offer: Offer;
  readonly sawHourValue: number;
  readonly change: number;
  readonly currentKerfCost: number;
  readonly offerKerfCost: number;
}

interface Here {
  readonly sawHourValue: number;
  readonly saving: number;
  readonly cost: number;
  readonly price: number | InputError;
}

/** The offer when all of it is known, else the refusal that names its open cell. */
const whole = ({ price, life, rate, kerf = 0 }: Offer): Blade | InputError => {
  if (price !== undefined && life !== undefined && rate !== undefined) return { price, life, rate, kerf };
  return new InputError(
    "invalid",
    `offer ${price === undefined ? "price" : life === undefined ? "life" : "rate"}`,
    "{parameter} is empty or 0",
  );
};

/** What holds at the saw hour value given, to be sent as it stands. */
function hereVerdict({ sawHourValue, saving, cost, price }: Here): Text {
  const value = { number: sawHourValue, quantity: "money" as const, digits: said.value };
  if (Math.abs(saving) <= k.tie.value * cost)
    return { template: "At {value} a saw hour both cost the same.", facts: { value } };
  const facts: Record<string, Fact> = {
    value,
    saving: { number: Math.abs(saving), quantity: "money" as const, digits: said.value },
    share: { number: (k.percent.value * Math.abs(saving)) / cost, quantity: "ratio" as const, digits: said.value },
  };
  if (!(price instanceof InputError)) facts["price"] = { number: price, quantity: "money", digits: said.value };
  const pays = price instanceof InputError ? "" : "; it pays up to a price of {price}";
  const word = saving > 0 ? "saves" : "costs";
  const more = saving > 0 ? "" : " more";
  return {
    template: `At {value} a saw hour the offer ${word} {saving}${more} per unit of area, {share} %${pays}.`,
    facts,
  };
}

/**
 * Where two blades cost the same per area, c = w/(60·rate) + (price + w·change/60)/life + kerf, solved for each of the offer's
 * values and for the saw hour value w; the saving is c(current) − c(offer) at the w given.
 * @param input current blade; offer, one value of which may be open; sawHourValue w [money/h]; change [min per blade]; kerf costs [money/area]
 * @returns price [money], life [area], rate [area/min], sawHourValue [money/h], saving [money/area], verdict [text]; each an InputError "none" with the reason where no answer exists
 * @source cost per area as in bladeCost; solved by hand
 */
export function breakEven(input: BreakEvenInput): {
  readonly price: number | InputError;
  readonly life: number | InputError;
  readonly rate: number | InputError;
  readonly sawHourValue: number | InputError;
  readonly saving: number | InputError;
  readonly verdict: Text | InputError;
} {
  const { sawHourValue, change, offerKerfCost: kerf } = input;
  const { price, life, rate } = input.current;
  const current = { price, life, rate, kerf: input.currentKerfCost };
  const cost = bladeCost({ blade: current, sawHourValue, change });
  const given = { price: input.offer.price, life: input.offer.life, rate: input.offer.rate, kerf };
  const offer = whole(given);
  const solved = breakEvenAt({ offer: given, sawHourValue, change, cost });
  if (offer instanceof InputError) return Object.assign(solved, { sawHourValue: offer, saving: offer, verdict: offer });
  const between = breakEvenHourValue({ current, offer, change });
  const saving = cost - bladeCost({ blade: offer, sawHourValue, change });
  return {
    price: solved.price,
    life: solved.life,
    rate: solved.rate,
    sawHourValue: between.sawHourValue,
    saving,
    verdict: [between.verdict, hereVerdict({ sawHourValue, saving, cost, price: solved.price })],
  };
}
