import { bars } from "../../src/yield/bars";
import { length, number } from "../kinds";
import { column, each, entry, fromBlock, orElse } from "../bind/entry";

const plain = () => each(length({ zeroIsValue: true }), "");
const fed = (help: string, label: "kerf" | "trim" | "grip") => fromBlock(orElse({ ...plain(), help }, 0), label);

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
    run: bars,
  }),
];
