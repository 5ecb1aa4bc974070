import { cutPlan } from "../../src/plan/cutPlan";
import { barsWorking } from "../../src/yield/barsWorking";
import { bars } from "../../src/yield/bars";
import { length, number } from "../kinds";
import { column, each, entry, fromBlock, list, listWithHoles, one, optional, orElse } from "../bind/entry";

const plain = () => each(length({ zeroIsValue: true }), "");
const fed = (help: string, label: "kerf" | "trim" | "grip") => fromBlock(orElse({ ...plain(), help }, 0), label);
const oneFed = (help: string, label: "kerf" | "trim" | "grip") =>
  fromBlock(orElse(one(length({ zeroIsValue: true }), help), 0), label);

export const yields = [
  entry({
    name: "BARS",
    subject: "Yield",
    help: "Bars to pull for an order of one length, pieces per bar, what is left of the last bar, and the yield.",
    examples: ['SAW.BARS("24 ft", 4.25, 40)', 'SAW.BARS("20 ft", "9-1/4", 120, 0.06, 0.4, 2.5, , "all")'],
    source: "geometry: with a grip every piece is cut off; without one the last piece may be the bar's own end",
    asks: ["how many bars", "how many pieces from a bar", "bar yield", "remnant", "drop"],
    params: {
      stock: fromBlock(each(length(), "length of the bars"), "stockLength"),
      piece: each(length(), "length of a piece"),
      quantity: each(number("count", { whole: true }), "pieces wanted"),
      kerf: fed("bar that one cut turns into chips", "kerf"),
      trim: fed("squared off the front of each bar, its own kerf in it", "trim"),
      grip: fed("end of each bar that the vice must keep", "grip"),
    },
    takes: { show: "optional", settings: "optional", units: true },
    result: {
      form: "row",
      main: "bars",
      columns: {
        bars: column("count", "to pull"),
        piecesPerBar: column("count", "that a whole bar gives"),
        remnant: column("length", "left of the last bar, its grip included"),
        yield: column("share", "length of the pieces against the bars"),
      },
    },
    working: barsWorking,
    run: bars,
  }),
  entry({
    name: "CUTPLAN",
    subject: "Yield",
    help: "Which lengths to cut from which bars: fewest bars, or least cost, one row a pattern; the last row says how far proven.",
    examples: [
      'SAW.CUTPLAN({8.5;5.25}, {12;20}, "24 ft", 0.06, 0.4, 2.5)',
      'SAW.CUTPLAN({1200;450}, {7;4}, {6000;3000}, 1.6, 10, 60, {;1}, , , "metric")',
    ],
    source:
      "Gilmore and Gomory 1961, 1963, bound of Farley 1990 (from memory); each plan is counted again before it is shown",
    asks: ["cut list", "how to cut the bars", "cutting plan", "nest lengths", "which pieces from which bar"],
    params: {
      lengths: list(length(), "a list: lengths of the pieces", "pieces"),
      quantities: listWithHoles(
        number("count", { whole: true }),
        "a list beside it: pieces of each; a blank wants none",
        "pieces",
      ),
      stocks: list(length(), "a list: lengths of the bars that can be pulled", "stocks"),
      kerf: oneFed("bar that one cut turns into chips", "kerf"),
      trim: oneFed("squared off the front of each bar, its own kerf in it", "trim"),
      grip: oneFed("end of each bar that the vice must keep", "grip"),
      stockQuantities: optional(
        listWithHoles(number("count", { whole: true }), "bars of each stock; a blank has no limit", "stocks"),
      ),
      stockCosts: optional(listWithHoles(number("money"), "cost of a bar of each stock, for all or none", "stocks")),
    },
    takes: { settings: "optional", units: true },
    result: {
      form: "table",
      columns: {
        stock: column("length", "the bar"),
        bars: column("count", "to cut so; in the last row of all"),
        pattern: column("text", "pieces of one bar"),
        piecesPerBar: column("ratio", "pieces of one bar; in the last row their mean"),
        remnant: column("length", "left of each bar, its grip included; in the last row of all"),
        yield: column("share", "length of the pieces against the bars"),
        bound: column("count", "in the last row, with one stock: no plan takes fewer bars"),
        note: column("text", "remnants that go back to stock; in the last row how far the plan is proven"),
      },
    },
    run: cutPlan,
  }),
];
