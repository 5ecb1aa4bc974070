import { InputError } from "../errors";
import type { Blade } from "./blade";
import { bladeCost } from "./bladeCost";
import { bladeHours } from "./bladeHours";

export interface PaybackInput {
  readonly current: Blade;
  readonly offer: Blade;
  readonly sawHourValue: number;
  readonly oneOffCost: number;
  readonly areaPerMonth: number;
  readonly freedHoursWanted: number;
  readonly idleHourValue: number;
  readonly change: number;
  readonly currentKerfCost: number;
  readonly offerKerfCost: number;
}

/** Freed hours are worth the saw hour value as far as work waits for them, the rest the idle value; lost hours cost it in full. */
const hoursWorth = (freed: number, { sawHourValue, freedHoursWanted, idleHourValue }: PaybackInput): number => {
  const wanted = Math.min(freed, freedHoursWanted);
  return wanted * sawHourValue + (freed - wanted) * idleHourValue;
};

/** Why the one off cost never comes back. */
function never(input: PaybackInput, freed: number, blades: number, saving: number, rounding: number): InputError {
  const wouldPay = freed > 0 && blades + freed * input.sawHourValue > rounding;
  if (wouldPay)
    return new InputError(
      "none",
      "",
      "never as things are: the offer frees {freed} a month, and work waits for {wanted} of them",
      { freed: { number: freed, quantity: "hours" }, wanted: { number: input.freedHoursWanted, quantity: "hours" } },
    );
  return new InputError(
    "none",
    "",
    saving >= -rounding ? "never: both blades cost the same" : "never: the offer costs more than the current blade",
  );
}

/**
 * Months until a one off cost is back: months = cost / saving a month; saving = area·(current price/life + kerf − offer price/life − kerf)
 * + freed hours at their worth. Freed hours = area·(H current − H offer) count at the saw hour value only as far as work
 * waits for them, beyond that at the idle hour value; hours lost cost the saw hour value in full.
 * @param input current and offer: price [money], life [area], rate [area/min]; sawHourValue, idleHourValue [money/h]; oneOffCost [money]; areaPerMonth [area]; freedHoursWanted [h a month]; change [min]; kerf costs [money/area]
 * @returns months [months] and the area cut until then [area]
 * @throws InputError "none": the saving is not positive, with the reason; "invalid": an idle hour worth more than a saw hour
 * @source payback = one off cost / saving: definition; the cap on freed hours: derived, an hour that no work fills earns nothing
 */
export function payback(input: PaybackInput): { readonly months: number; readonly area: number } {
  const { current, offer, sawHourValue, oneOffCost, areaPerMonth, idleHourValue, change } = input;
  if (idleHourValue > sawHourValue)
    throw new InputError("invalid", "idleHourValue", "{parameter} is more than the saw hour value");
  const kerf = input.currentKerfCost - input.offerKerfCost;
  const blades = areaPerMonth * (current.price / current.life - offer.price / offer.life + kerf);
  const freed = areaPerMonth * (bladeHours({ blade: current, change }) - bladeHours({ blade: offer, change }));
  const saving = blades + hoursWorth(freed, input);
  const rounding = 1e-9 * areaPerMonth * bladeCost({ blade: current, sawHourValue, change });
  if (saving <= rounding) throw never(input, freed, blades, saving, rounding);
  const months = oneOffCost / saving;
  return { months, area: months * areaPerMonth };
}
