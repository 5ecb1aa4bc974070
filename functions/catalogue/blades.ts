import { paybackWorking } from "../../src/cost/paybackWorking";
import { breakEvenWorking } from "../../src/cost/breakEvenWorking";
import { bestRate } from "../../src/cost/bestRate";
import { breakEven } from "../../src/cost/breakEven";
import { payback } from "../../src/cost/payback";
import { sensitivity } from "../../src/cost/sensitivity";
import { rankOffers } from "../../src/cost/rankOffers";
import { blade, number, offer, tableRow } from "../kinds";
import type { Range } from "../kinds/cell";
import { column, each, entry, list, one, optional, orElse } from "../bind/entry";
import { readOffers } from "../shop/headedTable";
import { changes, kerfCosts, oneChange, oneKerfCost, oneSawHourValue, sawHourValues } from "./parameters";

const triple = "{180, 600, 3}";

interface OffersCall {
  readonly offers: Range;
  readonly sawHourValue: number;
  readonly areaPerMonth: number | undefined;
  readonly change: number;
}

export const blades = [
  entry({
    name: "BREAKEVEN",
    subject: "Money",
    help: "Where two blades cost the same per area: highest price at which the offer still pays, or life, rate, hour value.",
    examples: [
      `SAW.BREAKEVEN(${triple}, {420, 1500, 10}, 60)`,
      `SAW.BREAKEVEN(${triple}, {420, 1500, 10}, 60, 10, , , "verdict")`,
    ],
    source:
      "cost per area = hour value / (60 × rate) + (price + hour value × change / 60) / life + kerf cost, solved for each value",
    asks: ["does the better blade pay", "when does carbide pay", "break-even", "compare blades"],
    params: {
      current: each(blade, "three neighbouring cells: price, life, rate of the blade in use"),
      offer: each(offer, "three neighbouring cells: price, life, rate of the offer; the one solved for may be blank"),
      sawHourValue: sawHourValues(),
      change: changes(),
      currentKerfCost: kerfCosts("blade in use"),
      offerKerfCost: kerfCosts("offer"),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "price",
      columns: {
        price: column("money", "highest price at which the offer still pays"),
        life: column("ownArea", "shortest at which the offer still pays"),
        rate: column("ownArea", "slowest at which the offer still pays"),
        sawHourValue: column("money", "at which both cost the same"),
        saving: column("money", "per unit of area, at the saw hour value given"),
        verdict: column("text", "in a sentence"),
      },
    },
    working: breakEvenWorking,
    run: breakEven,
  }),
  entry({
    name: "PAYBACK",
    subject: "Money",
    help: "Months until a better blade has paid back a one-off cost; freed hours count only as far as work waits for them.",
    examples: [
      `SAW.PAYBACK(${triple}, {420, 1500, 10}, 60, 2000, 4000, 20)`,
      `SAW.PAYBACK(${triple}, {420, 1500, 10}, 60, 2000, 4000, 5, 8, 10, , , "all")`,
    ],
    source:
      "months = one off cost / saving a month; saving = area × difference of blade cost + freed hours at their worth",
    asks: ["payback", "when is it earned back", "return on a new blade", "is the guide kit worth it"],
    params: {
      current: one(blade, "three neighbouring cells: price, life, rate of the blade in use"),
      offer: one(blade, "three neighbouring cells: price, life, rate of the offer"),
      sawHourValue: oneSawHourValue(),
      oneOffCost: one(number("money"), "paid once: machine parts, trials, training"),
      areaPerMonth: one(number("ownArea"), "area cut a month, in the blades' unit"),
      freedHoursWanted: orElse(
        one(
          number("hours", { zeroIsValue: true }),
          "hours a month that waiting work would fill: freed hours stay idle",
        ),
        0,
      ),
      idleHourValue: orElse(
        one(
          number("moneyPerHour", { zeroIsValue: true }),
          "what a freed hour saves that no work fills, such as overtime",
        ),
        0,
      ),
      change: oneChange(),
      currentKerfCost: oneKerfCost("blade in use"),
      offerKerfCost: oneKerfCost("offer"),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "months",
      columns: {
        months: column("months", "until the one off cost is back"),
        area: column("ownArea", "cut until then"),
      },
    },
    working: paybackWorking,
    run: payback,
  }),
  entry({
    name: "SENSITIVITY",
    subject: "Money",
    help: "How far an offer's saving hangs on each of its claims, as rows to chart, and where the decision flips.",
    examples: [`SAW.SENSITIVITY(${triple}, {420, 1100, 6}, 60, 10)`],
    source:
      "cost per area as BREAKEVEN; life and rate short together: factor cost of the offer / cost of the blade in use",
    asks: ["what if the blade lasts less than promised", "how sure is the saving", "what if the price rises"],
    params: {
      current: one(blade, "three neighbouring cells: price, life, rate of the blade in use"),
      offer: one(blade, "three neighbouring cells: price, life, rate of the offer"),
      sawHourValue: oneSawHourValue(),
      change: oneChange(),
      currentKerfCost: oneKerfCost("blade in use"),
      offerKerfCost: oneKerfCost("offer"),
    },
    takes: {},
    result: {
      form: "table",
      columns: {
        change: column("share", "by which the one value differs from the claim"),
        life: column("ownArea", "saving per unit of area with the offer's life changed; then where it flips"),
        rate: column("ownArea", "the same with its rate"),
        lifeAndRate: column("ratio", "the same with both short together; flips at a factor"),
        price: column("money", "the same with its price; above the flip it no longer pays"),
        sawHourValue: column("moneyPerHour", "the same with the saw hour value"),
        note: column("text", "what the row is"),
      },
    },
    run: sensitivity,
  }),
  entry({
    name: "OFFERS",
    subject: "Money",
    help: "Ranks a table of blade offers by cost per area, and says from and to which saw hour value each is the cheapest.",
    examples: [
      'SAW.OFFERS({"Name","Price","Life","Rate";"in use",180,600,3;"offer B",420,1500,10;"offer C",150,600,3.2}, 60, 4000, 10)',
      'SAW.OFFERS({"Name","by the foot","by the piece";"Length",14,"";"Price per foot",9,"";"Price","",210;"Life",900,1600;"Rate",3,4}, 72, 4000, 12)',
    ],
    source: "cost per area = hour value / (60 × rate) + (price + hour value × change / 60) / life + kerf cost",
    asks: ["which blade offer is best", "compare suppliers", "blade quotes", "price per foot", "rebate"],
    params: {
      offers: list(
        tableRow,
        "name, price, length, price per foot, rebate, rebate from, change minutes, kerf cost, life, rate",
      ),
      sawHourValue: oneSawHourValue(),
      areaPerMonth: optional(one(number("ownArea"), "area cut a month, in the blades' unit, for the cost per month")),
      change: oneChange(),
    },
    takes: {},
    result: {
      form: "table",
      columns: {
        rank: column("count", "by cost per area"),
        name: column("text", "of the offer"),
        costPerArea: column("money", "saw time and blade, per unit of area"),
        costPerMonth: column("money", "of the area cut a month"),
        saving: column("money", "per unit of area, against the first offer of the table"),
        breakEvenPrice: column("money", "at which it costs what the first offer of the table does"),
        bestFrom: column("text", "saw hour value from which it is the cheapest of all"),
        bestTo: column("text", "saw hour value up to which it is the cheapest of all"),
        safetyMargin: column("text", "how far the winner's life or rate may fall before the second is as cheap"),
        takesTheLead: column("text", "price, life or rate at which it overtakes the next one up"),
        monthsOfSupply: column("months", "that the blades of a quantity rebate last, at the area a month"),
        note: column("text", "why an offer is not ranked; the others are"),
      },
    },
    run: ({ offers, change, ...rest }: OffersCall) =>
      rankOffers({ ...rest, offers: readOffers(offers, change, "offers") }),
  }),
  entry({
    name: "BESTRATE",
    subject: "Money",
    help: "Cheapest rate for a blade whose life falls with the rate: life × (rate / trial rate)^−exponent; exponent = 1/n − 1.",
    examples: [`SAW.BESTRATE(${triple}, 3, 60, 10)`, `SAW.BESTRATE(${triple}, 3, 60, 10, "all")`],
    source:
      "Gilbert 1950 (from memory) on Taylor's life equation; scatter of life: Wager and Barash, J. Eng. Industry 93(4), 1971 (abstract read)",
    asks: ["best cutting rate", "cheapest speed", "how hard should the saw be pushed", "Taylor exponent"],
    params: {
      blade: one(blade, "three neighbouring cells: price, life at the trial rate, trial rate"),
      exponent: one(
        number("ratio", { least: -20, most: 20 }),
        "how life falls with the rate: −ln(life 2 / life 1) / ln(rate 2 / rate 1)",
      ),
      sawHourValue: one(
        number("moneyPerHour"),
        "shop rate, or what the waiting work earns an hour; not 0: idle hours favour slow",
      ),
      change: oneChange(),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "leastCost",
      columns: {
        leastCost: column("ownArea", "rate of least cost per area"),
        greatestOutput: column("ownArea", "rate of greatest output, blade changes counted and the price not"),
        slowest: column("ownArea", "from here the cost is within 1 % of the least"),
        fastest: column("ownArea", "to here the cost is within 1 % of the least"),
        extrapolates: column("text", "how far from the trial, and how sure the exponent is"),
      },
    },
    run: bestRate,
  }),
];
