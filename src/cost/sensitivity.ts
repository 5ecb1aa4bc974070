import { costConstants as k } from "../data/costConstants";
import { InputError } from "../errors";
import { minutesPerHour } from "../quantities";
import type { Blade } from "./blade";
import { bladeCost } from "./bladeCost";
import { breakEven } from "./breakEven";

interface SensitivityInput {
  readonly current: Blade;
  readonly offer: Blade;
  readonly sawHourValue: number;
  readonly change: number;
  readonly currentKerfCost: number;
  readonly offerKerfCost: number;
}

type Cell = number | InputError | undefined;

interface SensitivityRow {
  /** Share by which one value of the offer differs from what is claimed [-]; undefined in the two last rows. */
  readonly change: number | undefined;
  readonly life: Cell;
  readonly rate: Cell;
  readonly lifeAndRate: Cell;
  readonly price: Cell;
  readonly sawHourValue: Cell;
  readonly note: string;
}

/** Rounded to whole steps, so that the middle one is 0. */
const shares = Array.from({ length: k.changeCount.value }, (_, i) => {
  const steps = Math.round(k.changeFrom.value / k.changeStep.value) + i;
  return steps / Math.round(1 / k.changeStep.value);
});

/** Saving per area with one value changed, another with each column. */
function rowAt(input: SensitivityInput, change: number): SensitivityRow {
  const { offer, currentKerfCost, offerKerfCost } = input;
  const by = 1 + change;
  const saving = (changed: Partial<Blade>, sawHourValue = input.sawHourValue): number => {
    const cost = (blade: Blade): number => bladeCost({ blade, sawHourValue, change: input.change });
    return cost({ ...input.current, kerf: currentKerfCost }) - cost({ ...offer, ...changed, kerf: offerKerfCost });
  };
  return {
    change,
    life: saving({ life: offer.life * by }),
    rate: saving({ rate: offer.rate * by }),
    lifeAndRate: saving({ life: offer.life * by, rate: offer.rate * by }),
    price: saving({ price: offer.price * by }),
    sawHourValue: saving({}, input.sawHourValue * by),
    note: change === 0 ? "as claimed" : "",
  };
}

const share = (flip: Cell, given: number): Cell => {
  if (flip instanceof InputError) return flip;
  return given === 0 || flip === undefined ? undefined : flip / given - 1;
};

/** Where the decision changes: both claims short together by one factor, (c offer − kerf) / (c current − kerf). */
function flips(input: SensitivityInput): Omit<SensitivityRow, "change" | "note"> {
  const { life, rate, price, sawHourValue } = breakEven(input);
  const { offer, sawHourValue: w, change, offerKerfCost } = input;
  const current = bladeCost({ blade: { ...input.current, kerf: input.currentKerfCost }, sawHourValue: w, change });
  const own = w / (minutesPerHour * offer.rate) + (offer.price + (w * change) / minutesPerHour) / offer.life;
  const left = current - offerKerfCost;
  const lifeAndRate = left > 0 ? own / left : new InputError("none", "", "never: the offer's kerf alone costs more");
  return { life, rate, lifeAndRate, price, sawHourValue };
}

/**
 * How much of the saving hangs on each claim: saving = c(current) − c(offer) per area with one value of the offer, both
 * life and rate, or the saw hour value changed by −30 to +20 %; then the value, and the change, at which the decision
 * flips. A price flips upward: above it the offer no longer pays.
 * @param input current and offer: price [money], life [area], rate [area/min]; sawHourValue [money/h]; change [min]; kerf costs [money/area]
 * @returns rows: change [-]; savings [money/area]; then values [money, area, area/min, factor, money/h] and changes [-] at which the decision flips, each an InputError "none" with the reason where none does; note [text]
 * @source cost per area as in bladeCost; flips as breakEven; life and rate together: derived, price and change minutes are spread over life
 */
export function sensitivity(input: SensitivityInput): readonly SensitivityRow[] {
  const at = flips(input);
  const { offer, sawHourValue } = input;
  return [
    ...shares.map((change) => rowAt(input, change)),
    { change: undefined, ...at, note: "decision changes at this value" },
    {
      change: undefined,
      life: share(at.life, offer.life),
      rate: share(at.rate, offer.rate),
      lifeAndRate: share(at.lifeAndRate, 1),
      price: share(at.price, offer.price),
      sawHourValue: share(at.sawHourValue, sawHourValue),
      note: "by this change",
    },
  ];
}
