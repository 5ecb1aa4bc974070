import { tune } from "../../src/records/tune";
import { bladeClass, mark, material, number, pitch, section } from "../kinds";
import { column, entry, listByRow, optional } from "../bind/entry";

export const records = [
  entry({
    name: "TUNE",
    subject: "Shop records",
    help: "Rate factors and spreads from your log of timed cuts, by cutting group and class of blade: rows for the shop block.",
    examples: [
      'SAW.TUNE({"round 4 in";"round 6 in";"flat 6x1 in"}, {"304";"316";"304"}, "bi-metal", {7.1;14.2;3.2})',
      'SAW.TUNE({"round 7";"round 7";"round 5"}, "4140", "bi-metal", {6.1;6.3;"?"}, , , {"Units","inch";"Motor power",5})',
    ],
    source: "two-level normal model: Gelman et al., Bayesian Data Analysis, ch. 5 (from memory); see docs/method.md",
    asks: [
      "tune to my saw",
      "calibrate the rates",
      "use our own cutting times",
      "predictions are too fast",
      "cut log",
      "rate factor",
    ],
    params: {
      section: listByRow(section, "a column of the log: sizes with their shapes; cells that cannot be read are named"),
      material: listByRow(material, "a column beside it, or one cell for all rows: grades"),
      blade: listByRow(bladeClass, 'a column beside it, or one cell for all rows: "bi-metal" or "carbide"'),
      minutes: listByRow(number("minutes"), "a column beside it: minutes of cutting, without handling"),
      pitch: optional(
        listByRow(pitch, "a column beside it, or one cell: teeth per inch; blank: the one that PITCH gives"),
      ),
      leaveOut: optional(
        listByRow(mark, "a column beside it: any mark leaves the row out, such as a new or damaged blade"),
      ),
    },
    takes: { settings: "optional", saw: "list", units: true },
    result: {
      form: "table",
      headless: true,
      columns: {
        label: column("text", "label of the shop block"),
        value: column("ratio", "rate factor, or the spread that 80 % of your cuts lie within"),
        comment: column("text", "cuts used, held by a limit, left out and why"),
      },
    },
    run: tune,
  }),
];
