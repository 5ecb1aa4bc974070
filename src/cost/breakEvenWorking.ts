import { workingOf } from "../steps";
import { bladeCost } from "./bladeCost";
import { bladeHours } from "./bladeHours";
import { breakEven, type BreakEvenInput } from "./breakEven";

/** The working of BREAKEVEN; a value without an answer is its sentence. */
// prettier-ignore
export const breakEvenWorking = workingOf((input: BreakEvenInput) => {
  const { current, offer: { price: p2, life: l2, rate: r2 }, sawHourValue: w, change, currentKerfCost: k1, offerKerfCost: k2 } = input;
  const whole = p2 === undefined || l2 === undefined || r2 === undefined ? undefined : { price: p2, life: l2, rate: r2 };
  return {
    ...breakEven(input), p1: current.price, l1: current.life, r1: current.rate, p2, l2, r2, w, change, k1, k2,
    h1: bladeHours({ blade: current, change }), c1: bladeCost({ blade: { ...current, kerf: k1 }, sawHourValue: w, change }),
    h2: whole === undefined ? undefined : bladeHours({ blade: whole, change }),
    c2: whole === undefined ? undefined : bladeCost({ blade: { ...whole, kerf: k2 }, sawHourValue: w, change }),
  };
}, [
  ["p1", "p1", "price of the blade in use", "", "money", "yours"],
  ["l1", "l1", "its life", "", "ownArea", "yours"],
  ["r1", "r1", "its rate", "", "ownArea", "yours"],
  ["p2", "p2", "price of the offer", "", "money", "yours"],
  ["l2", "l2", "its life", "", "ownArea", "yours"],
  ["r2", "r2", "its rate", "", "ownArea", "yours"],
  ["w", "w", "saw hour value", "", "moneyPerHour", "yours"],
  ["change", "t", "minutes to change a blade", "", "minutes", "yours"],
  ["k1", "k1", "kerf cost per area, in use", "", "money", "yours"],
  ["k2", "k2", "kerf cost per area, offer", "", "money", "yours"],
  ["h1", "h1", "saw hours per area, in use", "1 / (60 × r1) + t / (60 × l1)", "hours", "P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7"],
  ["c1", "c1", "cost per area, in use", "w × h1 + p1 / l1 + k1", "money", "machining economics"],
  ["h2", "h2", "saw hours per area, offer", "1 / (60 × r2) + t / (60 × l2)", "hours", "P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7"],
  ["c2", "c2", "cost per area, offer", "w × h2 + p2 / l2 + k2", "money", "machining economics"],
  ["saving", "saving", "saving per area", "c1 − c2", "money", "definition"],
  ["life", "", "shortest life at which the offer still pays", "(p2 + w × t / 60) / (c1 − k2 − w / (60 × r2))", "ownArea", "c2 = c1, solved"],
  ["rate", "", "slowest rate at which it still pays", "w / (60 × (c1 − k2 − (p2 + w × t / 60) / l2))", "ownArea", "c2 = c1, solved"],
  ["sawHourValue", "", "saw hour value at which both cost the same", "(p2 / l2 + k2 − p1 / l1 − k1) / (h1 − h2)", "moneyPerHour", "c2 = c1, solved"],
  ["verdict", "", "in a sentence", "", "text", "the sign of both differences"],
  ["price", "", "highest price at which the offer still pays", "l2 × (c1 − k2 − w / (60 × r2) − w × t / (60 × l2))", "money", "c2 = c1, solved"],
]);
