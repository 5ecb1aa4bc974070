import { quoteWorking } from "../../src/cost/quoteWorking";
import { cutCostWorking } from "../../src/cost/cutCostWorking";
import { cutCost } from "../../src/cost/cutCost";
import { quote } from "../../src/cost/quote";
import { priceBreaks } from "../../src/cost/priceBreaks";
import { choice, length, material, number, orderItem } from "../kinds";
import { column, each, entry, fromBlock, list, one, optional } from "../bind/entry";
import { materials, rates, sections } from "./parameters";

const shop =
  '{"Units","inch";"Hourly cost",72;"Handling minutes",1.5;"Bi-metal price",180;"Bi-metal life",9000;"Carbide price",420;"Carbide life",15000;"Stock length","20 ft";"Margin",0.2}';

export const money = [
  entry({
    name: "QUOTE",
    subject: "Money",
    help: "Price of sawing an order line, a size or a whole description: price, minutes, bars and every cost part of it.",
    examples: [
      `SAW.QUOTE("round 7", "bi-metal", 20, ${shop}, "4140", 12)`,
      `SAW.QUOTE("round 2 bundle 3x4", "cheapest", 100, ${shop}, "A36", 8.5, , "all")`,
      `SAW.QUOTE("RND 7 IN 4140 X 12 IN LG", "bi-metal", 20, ${shop})`,
    ],
    source:
      "cost by order, bar load, cut, area and piece: common practice; margin on the price: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.4",
    asks: ["what to charge", "quote an order", "price per cut", "price list", "cutting price"],
    params: {
      item: each(orderItem, "a size, or a whole description line; material and length given beside it win"),
      blade: each(
        choice("bi-metal", "carbide", "cheapest"),
        '"bi-metal", "carbide", or "cheapest" of the two, line by line',
      ),
      quantity: each(number("count", { whole: true }), "pieces wanted, not cuts"),
      material: optional(materials()),
      length: optional(each(length(), "length of a piece")),
    },
    takes: { show: "optional", settings: "required", saw: true, units: true },
    result: {
      form: "row",
      main: "priceLine",
      columns: {
        priceLine: column(
          "money",
          "of the whole line, margin and minimum charge in it; of sawing alone unless material is charged",
        ),
        priceLow: column("money", "of the line at the high rate"),
        priceHigh: column("money", "of the line at the low rate"),
        priceEach: column("money", "per piece; does not scale with the quantity: set-up and bar loads come in steps"),
        costEach: column("money", "per piece, before margin and minimum charge"),
        minutes: column("minutes", "of the saw for the line, set-up included"),
        minutesLow: column("minutes", "at the high rate"),
        minutesHigh: column("minutes", "at the low rate"),
        pitch: column("text", "teeth per inch"),
        rate: column("areaRate", "predicted, nominal"),
        cuts: column("count", "of the whole stack, without trim cuts; the last may be part filled"),
        bars: column("count", "to pull"),
        remnant: column("length", "left of a bar of the last load, its grip included"),
        mass: column("mass", "of all pieces"),
        timeCost: column("money", "cutting, handling, loading, trim cuts, blade changes, break-in"),
        bladeCost: column("money", "share of the blade's price"),
        kerfCost: column("money", "bar turned into chips, less scrap; 0 without a material price"),
        endsCost: column(
          "money",
          "trim, remnants not useful, test and rejected pieces, less scrap; 0 without a material price",
        ),
        "set-up": column("money", "once for the line"),
        materialCost: column("money", "of the pieces, where the shop block charges material; else 0"),
        minimumApplied: column("text", "yes: the price is the minimum charge"),
        size: column("text", "as it was read"),
        material: column("text", "as it was found"),
        blade: column("text", "the class that was priced"),
        readAs: column("text", "the line, with what was assumed"),
      },
    },
    working: quoteWorking,
    run: quote,
  }),
  entry({
    name: "PRICEBREAKS",
    subject: "Money",
    help: "Prices of one item by quantity, each as QUOTE gives it: rows for a price list or a chart.",
    examples: [`SAW.PRICEBREAKS("round 7", "bi-metal", {1;10;50}, ${shop}, "4140", 12)`],
    source: "as QUOTE",
    asks: ["quantity break", "price list by quantity", "price for 1, 10, 100 pieces"],
    params: {
      item: one(orderItem, "a size, or a whole description line; material and length given beside it win"),
      blade: one(choice("bi-metal", "carbide", "cheapest"), '"bi-metal", "carbide", or "cheapest" of the two'),
      quantities: list(number("count", { whole: true }), "a list: pieces wanted"),
      material: optional(one(material, 'any designation of the grade, such as "304", "4140" or "1.4301"')),
      length: optional(one(length(), "length of a piece")),
    },
    takes: { settings: "required", saw: true, units: true },
    result: {
      form: "table",
      columns: {
        quantity: column("count", "pieces"),
        priceEach: column("money", "per piece"),
        priceLine: column("money", "of the whole line"),
        minutes: column("minutes", "of the saw for the line"),
        bars: column("count", "to pull"),
        note: column("text", "where a larger quantity of the list costs less in all"),
      },
    },
    run: priceBreaks,
  }),
  entry({
    name: "CUTCOST",
    subject: "Money",
    help: "Cost of one cut at known rate, blade price and life; show gives its parts.",
    examples: [
      'SAW.CUTCOST("round 7", 2.14, 60, 180, 600)',
      'SAW.CUTCOST("round 7", 2.14, 60, 180, 600, {"Units","inch";"Handling minutes",2;"Blade change minutes",12}, , "all")',
    ],
    source:
      "cost per cut as in machining economics; blade change: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7",
    asks: ["what does a cut cost", "cost per cut"],
    params: {
      section: sections(),
      rate: rates(),
      hourlyCost: fromBlock(
        each(number("moneyPerHour"), "what an hour of the saw costs, with its operator"),
        "hourlyCost",
      ),
      price: each(number("money"), "price of one blade"),
      life: each(number("area"), "area one blade cuts"),
    },
    takes: { show: "optional", settings: "optional", saw: true, units: true },
    result: {
      form: "row",
      main: "cost",
      columns: {
        cost: column("money", "the sum of the parts"),
        cutting: column("money", "saw time while cutting"),
        handling: column("money", "saw time outside the cutting"),
        bladeWear: column("money", "share of the blade's price"),
        bladeChange: column("money", "share of the time to change it"),
        kerf: column("money", "bar turned into chips, less what they bring"),
        "break-in": column("money", "slower cutting of new blades, spread over their life"),
      },
    },
    working: cutCostWorking,
    run: cutCost,
  }),
];
