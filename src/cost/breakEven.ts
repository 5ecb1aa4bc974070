import { InputError } from "../errors";
import type { Text } from "../phrase";
import type { Blade, Offer } from "./blade";
import { bladeCost } from "./bladeCost";
import { breakEvenAt } from "./breakEvenAt";
import { breakEvenHourValue } from "./breakEvenHourValue";

export interface BreakEvenInput {
  readonly current: Blade;
  readonly offer: Offer;
  readonly sawHourValue: number;
  readonly change: number;
}

/** The offer when all of it is known, else the refusal that names its open cell. */
const whole = ({ price, life, rate }: Offer): Blade | InputError => {
  if (price !== undefined && life !== undefined && rate !== undefined) return { price, life, rate };
  return new InputError(
    "invalid",
    `offer ${price === undefined ? "price" : life === undefined ? "life" : "rate"}`,
    "{parameter} is empty or 0",
  );
};

/**
 * Where two blades cost the same per area, c = w/(60·rate) + (price + w·change/60)/life, solved for each of the offer's
 * values and for the saw hour value w; the saving is c(current) − c(offer) at the w given.
 * @param input current blade; offer, one value of which may be open; sawHourValue w [money/h]; change [min per blade]
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
  const { current, sawHourValue, change } = input;
  const cost = bladeCost({ blade: current, sawHourValue, change });
  const offer = whole(input.offer);
  const solved = breakEvenAt({ ...input, cost });
  if (offer instanceof InputError) return { ...solved, sawHourValue: offer, saving: offer, verdict: offer };
  return {
    ...solved,
    ...breakEvenHourValue({ current, offer, change }),
    saving: cost - bladeCost({ blade: offer, sawHourValue, change }),
  };
}
