import { cuttingConstants } from "../data/cuttingConstants";
import { InputError } from "../errors";
import type { Text } from "../phrase";
import type { Blade } from "./blade";
import { bladeHours } from "./bladeHours";

const { saidDigits: said } = cuttingConstants;

/** -1, 0 or 1; differences of a billionth are rounding. */
const compare = (a: number, b: number): number =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b)) ? 0 : Math.sign(a - b);

const verdicts = {
  [-1]: "The offer wins at every saw hour value.",
  0: "Both blades cost the same at every saw hour value.",
  1: "The current blade wins at every saw hour value.",
} as const;

/**
 * The saw hour value at which two blades cost the same, w = (pB/lB + kB − pA/lA − kA) / (hA − hB), hours per area
 * h = 1/(60·rate) + change/(60·life), and the verdict: one of six cases in a plain sentence.
 * @param input current A and offer B: price [money], life [area], rate [area/min], kerf k [money/area]; change [min per blade]
 * @returns sawHourValue [money/h], or InputError "none" where one blade wins at every value or both are equal; verdict [text]
 * @source derived: two straight lines of cost over the saw hour value
 */
export function breakEvenHourValue({
  current,
  offer,
  change,
}: {
  readonly current: Blade;
  readonly offer: Blade;
  readonly change: number;
}): { readonly sawHourValue: number | InputError; readonly verdict: Text } {
  const [wearA, wearB] = [current, offer].map((blade) => blade.price / blade.life + (blade.kerf ?? 0)) as [
    number,
    number,
  ];
  const [hoursA, hoursB] = [bladeHours({ blade: current, change }), bladeHours({ blade: offer, change })];
  const wear = compare(wearB, wearA);
  const time = compare(hoursB, hoursA);
  if (wear === 0 && time !== 0) {
    const verdict = `Equal at a saw hour value of 0; above it the ${time < 0 ? "offer" : "current blade"} wins.`;
    return { sawHourValue: 0, verdict };
  }
  if (wear * time >= 0) {
    const verdict = verdicts[Math.sign(wear + time) as -1 | 0 | 1];
    return { sawHourValue: new InputError("none", "", verdict), verdict };
  }
  const value = (wearB - wearA) / (hoursA - hoursB);
  const facts = { value: { number: value, quantity: "money" as const, digits: said.value } };
  return {
    sawHourValue: value,
    verdict: {
      template:
        time < 0
          ? "The offer wins where a saw hour is worth more than {value}."
          : "The current blade wins where a saw hour is worth more than {value}; below that the offer does.",
      facts,
    },
  };
}
