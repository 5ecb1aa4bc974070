import { workingOf } from "../steps";
import { bladeHours } from "./bladeHours";
import { payback, type PaybackInput } from "./payback";

/** The working of PAYBACK. */
// prettier-ignore
export const paybackWorking = workingOf((input: PaybackInput) => {
  const { current, offer, change, areaPerMonth: area, sawHourValue: w, idleHourValue: idle, freedHoursWanted, currentKerfCost: k1, offerKerfCost: k2 } = input;
  const { months, area: cut } = payback(input);
  const [h1, h2] = [bladeHours({ blade: current, change }), bladeHours({ blade: offer, change })];
  const freed = area * (h1 - h2);
  const wanted = Math.min(freed, freedHoursWanted);
  const blades = area * (current.price / current.life - offer.price / offer.life + (k1 - k2));
  return {
    p1: current.price, l1: current.life, r1: current.rate, p2: offer.price, l2: offer.life, r2: offer.rate, w, idle, k1, k2,
    change, area, most: freedHoursWanted, h1, h2, freed, wanted, blades, oneOffCost: input.oneOffCost,
    saving: blades + wanted * w + (freed - wanted) * idle, months, cut,
  };
}, [
  ["p1", "p1", "price of the blade in use", "", "money", "yours"],
  ["l1", "l1", "its life", "", "ownArea", "yours"],
  ["r1", "r1", "its rate", "", "ownArea", "yours"],
  ["p2", "p2", "price of the offer", "", "money", "yours"],
  ["l2", "l2", "its life", "", "ownArea", "yours"],
  ["r2", "r2", "its rate", "", "ownArea", "yours"],
  ["w", "w", "saw hour value", "", "moneyPerHour", "yours"],
  ["idle", "w0", "idle hour value", "", "moneyPerHour", "yours"],
  ["change", "t", "minutes to change a blade", "", "minutes", "yours"],
  ["k1", "k1", "kerf cost per area, in use", "", "money", "yours"],
  ["k2", "k2", "kerf cost per area, offer", "", "money", "yours"],
  ["area", "A", "area cut a month", "", "ownArea", "yours"],
  ["most", "most", "freed hours a month that work waits for", "", "hours", "yours"],
  ["oneOffCost", "once", "one-off cost", "", "money", "yours"],
  ["h1", "h1", "saw hours per area, in use", "1 / (60 × r1) + t / (60 × l1)", "hours", "P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7"],
  ["h2", "h2", "saw hours per area, offer", "1 / (60 × r2) + t / (60 × l2)", "hours", "P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7"],
  ["freed", "freed", "saw hours freed a month", "A × (h1 − h2)", "hours", "definition"],
  ["wanted", "wanted", "of them wanted", "min(freed, most)", "hours", "an hour that no work fills earns nothing"],
  ["blades", "blades", "saved on blades and kerf a month", "A × (p1 / l1 − p2 / l2 + (k1 − k2))", "money", "definition"],
  ["saving", "saving", "saving a month", "blades + wanted × w + (freed − wanted) × w0", "money", "definition"],
  ["cut", "", "area cut until then", "once / saving × A", "ownArea", "definition"],
  ["months", "months", "months until the one-off cost is back", "once / saving", "months", "definition"],
]);
