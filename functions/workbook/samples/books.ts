import { card } from "./card";
import { contact } from "./contact";
import { bladeLog, cutLog } from "./logs";
import { curves } from "./curves";
import { day } from "./day";
import { estimate } from "./estimate";
import { breaks, cutList, whatIf } from "./plans";
import { mix } from "./mix";
import { process } from "./process";
import { purchase } from "./purchase";
import { records } from "./records";
import type { SampleBook, SampleSheet } from "./sheet";
import { shop } from "./shop";
import { start } from "./start";
import { tuning } from "./tuning";

/** The try-it page's book: the sheets of all roles, and the shop block that some of them read. */
export const demoBook: readonly SampleSheet[] = [
  estimate,
  breaks,
  mix,
  purchase,
  curves,
  whatIf,
  process,
  cutList,
  day,
  card,
  contact,
  cutLog,
  bladeLog,
  tuning,
  records,
  shop,
];

const shopSays = [
  "Shop",
  "The shop block: one saw, its prices and limits. The formulas take it by its name, Shop.",
] as const;

/** The workbooks under docs/samples. */
export const sampleBooks: readonly SampleBook[] = [
  {
    file: "estimate.xlsx",
    title: "Sawing: quote lines",
    sheets: [
      start("Quote lines", "Order lines priced with minutes, pitch, bars and remnant, for those who quote sawing.", [
        ["Estimate", "One row for each order line, sizes or whole descriptions; the sums; price against quantity."],
        shopSays,
      ]),
      estimate,
      shop,
    ],
  },
  {
    file: "purchase.xlsx",
    title: "Sawing: blade offers",
    sheets: [
      start(
        "Blade offers",
        "Blades compared by what an in² costs, blade and saw time together, for those who buy them.",
        [
          [
            "Mix",
            "A month's order book with bi-metal and with carbide: minutes, blades and cost job by job, the verdict, the blades to order.",
          ],
          [
            "Purchase",
            "The offers ranked, the break-even of one of them, pay-back, and days with different worth of a saw hour.",
          ],
          ["Curves", "Cost of an in² against the worth of a saw hour, and the cost of one cut by offer."],
          shopSays,
        ],
      ),
      mix,
      purchase,
      curves,
      shop,
    ],
  },
  {
    file: "process.xlsx",
    title: "Sawing: settings and running sheets",
    sheets: [
      start(
        "Settings and running sheets",
        "What to set and how long it takes, on three saws, for those who plan and run the work.",
        [
          [
            "Process",
            "Three saws, the minutes of each grade on each, cuts as they run now, the week's load, bars to pull.",
          ],
          ["Day", "A day's jobs on two saws: which on which in which order, what will be late, a bar for each."],
          ["Card", "The operator's card of one job, to print on one page."],
          ["Contact", "What the band meets on its way through a beam."],
        ],
      ),
      process,
      day,
      card,
      contact,
    ],
  },
  {
    file: "records.xlsx",
    title: "Sawing: the shop's own numbers",
    sheets: [
      start(
        "The shop's own numbers",
        "Timed cuts and worn blades, and what they make of the predictions, for those who want quotes of their own saws.",
        [
          [
            "Cuts",
            "The cut log: one row a cut, written at the saw. A cell that cannot be read is named, never in the way.",
          ],
          ["Blades", "The blade log: one row a blade, with the area it cut and why it came off."],
          [
            "Tuning",
            "The shop block of two saws, and under it the rate factors and spreads that come out of the cut log.",
          ],
          ["Records", "Quotes before and after tuning, mean blade lives, an offer weighed, and two charts."],
        ],
      ),
      cutLog,
      bladeLog,
      tuning,
      records,
    ],
  },
  {
    file: "plans.xlsx",
    title: "Sawing: breaks, claims and cut plans",
    sheets: [
      start(
        "Breaks, claims and cut plans",
        "What is otherwise worked out on paper, for those who quote, buy and cut.",
        [
          ["Breaks", "One item by quantity: price each, price of the line, minutes, bars, with a chart."],
          ["Claims", "How far the saving of a blade offer hangs on each of its claims, with a chart."],
          ["Cut plan", "Which bars to pull and what to cut from each, as a list to print."],
          shopSays,
        ],
      ),
      breaks,
      whatIf,
      cutList,
      shop,
    ],
  },
];
