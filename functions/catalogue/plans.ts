import { jobMix } from "../../src/cost/jobMix";
import { sawPlan } from "../../src/plan/sawPlan";
import { label, length, material, number, sawMinutes, section } from "../kinds";
import { column, entry, list, listByRow, listWithHoles, one, optional } from "../bind/entry";
import { oneChange, oneSawHourValue } from "./parameters";

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
  entry({
    name: "SAWPLAN",
    subject: "Time",
    help: "Which job on which saw in which order: least late, then done earliest, then fewest blade changes; with proven bounds.",
    examples: [
      'SAW.SAWPLAN({"shafts";"plates";"rings";"beams"}, {95;150;60;120}, {2;5;8;4}, {"3/4";"2/3";"3/4";"4/6"}, 2, 8, 12)',
      'SAW.SAWPLAN({"shafts";"plates"}, {95,80;150,"-"})',
    ],
    source:
      "list scheduling and local search with bounds: Graham 1966, 1969; apparent tardiness with set-ups (from memory); see docs/sources.md",
    asks: ["which job on which saw", "plan the day", "schedule the saws", "what will be late", "sequence of jobs"],
    params: {
      jobs: list(label, "a list: names or numbers of the jobs"),
      minutes: list(sawMinutes, "a list beside it, or a block with a column for each saw: minutes, handling included"),
      due: optional(
        listWithHoles(
          number("hours"),
          "a list beside it: hours from now; a blank is never late; left out: all at `hours`",
        ),
      ),
      blade: optional(listWithHoles(label, "a list beside it: blade or pitch that each needs; a blank takes any")),
      saws: optional(
        one(number("count", { whole: true }), "saws; left out: as many as the minutes have columns, else 1"),
      ),
      hours: optional(one(number("hours"), "hours that the saws run: what ends after them is said")),
      change: oneChange(),
    },
    takes: {},
    result: {
      form: "table",
      columns: {
        order: column("count", "of the job on its saw"),
        saw: column("count", "first, second and so on"),
        job: column("text", "its name; then a row for each saw, and one for all"),
        start: column("hours", "from now, after the change of blade"),
        end: column("hours", "from now; of a saw and of all: of the last job"),
        due: column("hours", "from now"),
        late: column("hours", "after it is due; in the last rows the sum"),
        blade: column("text", "that the job needs"),
        changes: column("count", "of blade before the job; in the last rows the sum; the first blade is none"),
        note: column("text", "ends after the hours; in the last row how far lateness, finish and changes are proven"),
      },
    },
    run: sawPlan,
  }),
];
