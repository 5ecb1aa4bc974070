import { jobMix } from "../../src/cost/jobMix";
import { length, material, number, section } from "../kinds";
import { column, entry, listByRow, optional } from "../bind/entry";
import { oneSawHourValue } from "./parameters";

export const plans = [
  entry({
    name: "JOBMIX",
    subject: "Money",
    help: "Bi-metal or carbide over a month's order book: minutes, blades and cost job by job, then the whole and the verdict.",
    examples: [
      'SAW.JOBMIX({"round 7";"round 4";"flat 6x1"}, {"17-4PH";"4140";"A36"}, {60;120;200}, 72, {"Units","inch";"Handling minutes",1.5;"Blade change minutes",12;"Bi-metal price",180;"Bi-metal life",6000;"Carbide price",420;"Carbide life",15000;"Stock length","20 ft"})',
    ],
    source:
      "cost per area = hour value / (60 × rate) + (price + hour value × change / 60) / life, summed over the jobs: common practice",
    asks: [
      "bi-metal or carbide",
      "should this saw change to carbide",
      "which blade for which job",
      "how many blades a month",
      "blades to order",
    ],
    params: {
      section: listByRow(section, "a column of the order book: sizes with their shapes"),
      material: listByRow(material, "a column beside it, or one cell for all rows: grades"),
      quantities: listByRow(number("count", { whole: true }), "a column beside it: pieces of each in the month"),
      sawHourValue: oneSawHourValue(),
      length: optional(
        listByRow(length(), "a column beside it: length of a piece, to count bar loads and trim cuts; blank: neither"),
      ),
    },
    takes: { settings: "required", saw: "list", units: true },
    result: {
      form: "table",
      columns: {
        what: column("text", "the size of a job; at the end rows about the whole, the last one the verdict"),
        material: column("text", "as it was found"),
        cuts: column("count", "of the stack, without trim cuts"),
        area: column("area", "of all cuts, trim cuts in it where lengths are given"),
        "bi-metalMinutes": column("minutes", "of the saw for the job, set-up, handling and blade changes in it"),
        "bi-metalLow": column("minutes", "at the high rate"),
        "bi-metalHigh": column("minutes", "at the low rate"),
        "bi-metalBlades": column("ratio", "parts of a blade that the job wears"),
        "bi-metalCost": column("money", "saw time at the worth of a saw hour, and blades"),
        carbideMinutes: column("minutes", "the same with carbide"),
        carbideLow: column("minutes", "at the high rate"),
        carbideHigh: column("minutes", "at the low rate"),
        carbideBlades: column("ratio", "parts of a blade that the job wears"),
        carbideCost: column("money", "saw time and blades; in its row the highest price that pays"),
        hoursFreed: column("hours", "by carbide against bi-metal"),
        saving: column("money", "by carbide against bi-metal"),
        cheaper: column("text", "class of blade for the job"),
        note: column("text", "why a class cannot make it, what is left out; in the last row the verdict"),
      },
    },
    run: jobMix,
  }),
];
