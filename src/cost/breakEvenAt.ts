import { InputError } from "../errors";
import type { Offer } from "./blade";
import { minutesPerHour } from "../quantities";

interface AtCost {
  readonly offer: Offer;
  readonly sawHourValue: number;
  readonly change: number;
  /** Cost per area that the offer is to reach [money/area]. */
  readonly cost: number;
}

type Solved = number | InputError;

const none = (problem: string): InputError => new InputError("none", "", problem);
const open = (name: string): InputError => new InputError("invalid", `offer ${name}`, "{parameter} is empty or 0");
/** What is left of the cost is real only above the rounding of the numbers it is the difference of. */
const isLeft = (left: number, cost: number): boolean => left > 1e-12 * cost;

const price = ({ offer: { life, rate }, sawHourValue: w, change, cost }: AtCost): Solved => {
  if (life === undefined) return open("life");
  if (rate === undefined) return open("rate");
  const left = cost - w / (minutesPerHour * rate) - (w * change) / (minutesPerHour * life);
  return isLeft(left, cost) ? life * left : none("never: the offer costs more even if the blade were free");
};

const life = ({ offer: { price: p, rate }, sawHourValue: w, change, cost }: AtCost): Solved => {
  if (p === undefined) return open("price");
  if (rate === undefined) return open("rate");
  const left = cost - w / (minutesPerHour * rate);
  return isLeft(left, cost)
    ? (p + (w * change) / minutesPerHour) / left
    : none("never: no life is long enough, running the offer alone costs more than the current blade");
};

const rate = ({ offer: { price: p, life: l }, sawHourValue: w, change, cost }: AtCost): Solved => {
  if (p === undefined) return open("price");
  if (l === undefined) return open("life");
  if (w === 0) return none("the rate does not matter while a saw hour is worth nothing");
  const left = cost - (p + (w * change) / minutesPerHour) / l;
  return isLeft(left, cost)
    ? w / (minutesPerHour * left)
    : none("never: no rate is fast enough, the offer's blade alone costs more than the current one");
};

/**
 * What price, life or rate an offer must have to cost c per area, c = w/(60·rate) + (price + w·change/60)/life + kerf, c here without the kerf: price =
 * life·(c − w·H); life = (price + w·change/60)/(c − w/(60·rate)); rate = w/(60·(c − (price + w·change/60)/life)).
 * @param input offer, one value of which may be open; sawHourValue w [money/h]; change [min]; cost c [money/area]
 * @returns price [money], life [area], rate [area/min]; each an InputError "none" with the reason where no answer exists
 * @source bladeCost, solved by hand
 */
export function breakEvenAt(input: AtCost): { readonly price: Solved; readonly life: Solved; readonly rate: Solved } {
  const at = { ...input, cost: input.cost - (input.offer.kerf ?? 0) };
  return { price: price(at), life: life(at), rate: rate(at) };
}
