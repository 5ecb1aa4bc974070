import { bladeLife } from "../../src/records/bladeLife";
import { bladeOdds } from "../../src/records/bladeOdds";
import { endings } from "../../src/records/bladeRecord";
import { tune } from "../../src/records/tune";
import { bladeClass, choice, mark, material, number, pitch, section, triedBlade } from "../kinds";
import { column, entry, list, listByRow, one, optional } from "../bind/entry";
import { oneChange, oneSawHourValue } from "./parameters";

const whyHelp = 'a list beside them, or one cell for all: why each came off; left out: all "worn"';

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
  entry({
    name: "BLADELIFE",
    subject: "Shop records",
    help: "Mean blade life from a log of blades, with its 80 % band; blades still in use or pulled early are censored.",
    examples: [
      "SAW.BLADELIFE({3100;3600;4400;2700;3300})",
      'SAW.BLADELIFE({3100;3600;4400;2700;3300;900;2000}, {"worn";"worn";"worn";"worn";"worn";"broke";"still in use"}, "all")',
    ],
    source:
      "cost per area = price / arithmetic mean life: renewal theorem; censored blades: Weibull by maximum likelihood (NIST/SEMATECH e-Handbook 8.4.1.3)",
    asks: ["how long does a blade last", "average blade life", "blade log", "blade still running", "blade broke early"],
    params: {
      areaCut: list(number("ownArea"), "a list: area that each blade has cut, in one unit"),
      why: optional(list(choice(...endings), whyHelp)),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "mean",
      columns: {
        mean: column("ownArea", "arithmetic mean life: what cost per area needs; a breakage counts as an end"),
        low: column("ownArea", "of the mean, 80 % lie between low and high; without an end: at least this, 9 in 10"),
        high: column("ownArea", "of the mean; a band for the mean, not for the next blade"),
        spread: column("ratio", "standard deviation of lives / mean"),
        shape: column("ratio", "Weibull shape of the wear alone, from 5 worn blades up; biased high, with 5 by 1.4"),
        blades: column("count", "that came to an end"),
        bladesMore: column("count", "until the mean is known to 10 % either way"),
      },
    },
    run: bladeLife,
  }),
  entry({
    name: "BLADEODDS",
    subject: "Shop records",
    help: "How likely an offered blade is cheaper per area than the one in use, from the lives of three or more of each.",
    examples: [
      'SAW.BLADEODDS({180,"",3}, {260,"",3.4}, {3100;3600;4400;2700;3300}, {4600;5900;5100;4400}, 72, , , 12, "verdict")',
      'SAW.BLADEODDS({180,"",3}, {260,"",3}, {3100;3600;4400;2700}, {4600;5900;5100}, 72, "worn", {"worn";"worn";"still in use"}, 12)',
    ],
    source:
      "Welch on logarithms of lives, or the permutation log-rank where some blades still run, after division by the break-even ratio of lives (measured at 3 to 8 blades each, docs/method.md)",
    asks: [
      "is the new blade really better",
      "blade trial",
      "how many blades to test",
      "is it luck",
      "compare blade lives",
    ],
    params: {
      current: one(
        triedBlade,
        "three neighbouring cells: price, life, rate of the blade in use; the life may be blank",
      ),
      offer: one(triedBlade, "three neighbouring cells: price, life, rate of the offer, the rate held in the trial"),
      currentLives: list(number("ownArea"), "a list: area cut by each blade in use, in the rates' unit", "current"),
      offerLives: list(number("ownArea"), "a list: area cut by each blade of the offer", "offer"),
      sawHourValue: oneSawHourValue(),
      currentWhy: optional(list(choice(...endings), whyHelp, "current")),
      offerWhy: optional(list(choice(...endings), whyHelp, "offer")),
      change: oneChange(),
    },
    takes: { show: "optional" },
    result: {
      form: "row",
      main: "likely",
      columns: {
        likely: column("share", "0 to 1, that the offer costs less per area"),
        savingLow: column("money", "per unit of area, 80 % lie between low and high"),
        saving: column("money", "per unit of area"),
        savingHigh: column("money", "per unit of area"),
        bladesMore: column("count", "of each, until it is 90 in 100, if lives go on so"),
        verdict: column("text", "in a sentence"),
      },
    },
    run: bladeOdds,
  }),
];
