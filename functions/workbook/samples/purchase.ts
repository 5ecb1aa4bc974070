import { columnName } from "../../formula/cellAddress";
import { formatted, head, invented, label, note, plain, units, type SampleSheet } from "./sheet";
import { shopCell } from "./shop";

const change = shopCell("Blade change minutes");
const verdicts = ["price", "life", "rate", "saw hour value", "saving", "verdict"];

/** A day with its own saw hour value in column B of row `r`. */
const day = (r: number): string[] =>
  ["price", "saving"].map((show) => `=SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,$B${r},${change},,,"${show}")`);

/** Blades compared in in² and in²/min, for 7 in rounds of 17-4PH. */
export const purchase: SampleSheet = {
  name: "Purchase",
  widths: [240, 195, 125, 120, 120, 130, 150, 155, 390, 330, 130, 330],
  rows: [
    ...invented("Blade offers", units(null, "money a blade", "in² a blade", "in²/min", "share of price", "blades")),
    head("Name", "Price", "Life", "Rate", "Rebate", "Rebate from"),
    ...formatted({ 1: "0.00", 2: "#,##0", 4: "0 %", 5: "0" }, [
      plain("in use, bi-metal", 180, 2500, 2.1, null, null),
      plain("offer P, carbide", 420, 7000, 10, null, null),
      plain("offer Q, carbide", 640, 6500, 13, 0.1, 6),
      plain("offer R, bi-metal", 110, 3400, 2.3, null, null),
    ]),
    plain(),
    label("a saw hour is worth", 72),
    label("area cut a month, in²", 8400),
    plain(),
    note(
      "Ranked by cost of an in²; saving against the first offer of the table; from and to which saw hour value each is the cheapest. Life is the largest uncertainty of all: try it lower.",
    ),
    ...formatted({ 0: "0", 2: "0.0000", 3: "#,##0.00", 4: "0.0000", 5: "#,##0.00", 10: "0.0" }, [
      head(`=SAW.OFFERS($A$4:$F$8,$B$10,$B$11,${change})`),
      ...Array.from({ length: 6 }, () => plain()),
    ]),
    note("Offer P against the blade in use: the value at which both cost the same, for each value in turn."),
    head("", ...verdicts),
    ...formatted({ 1: "#,##0.00", 2: "0", 3: "0.00", 4: "0.00", 5: "0.0000" }, [
      plain(
        "offer P",
        ...verdicts.map((_, i) => `=SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,$B$10,${change},,,${columnName(i + 1)}$22)`),
      ),
    ]),
    plain(),
    head("pay-back of a new feed valve", "one off cost", "hours of work waiting", "months", "area until then"),
    ...formatted({ 3: "0.0", 4: "#,##0" }, [
      plain(
        "offer P",
        4500,
        20,
        ...["months", "area"].map(
          (show) => `=SAW.PAYBACK($B$5:$D$5,$B$6:$D$6,$B$10,$B$26,$B$11,$C$26,,${change},,,"${show}")`,
        ),
      ),
    ]),
    plain(),
    note(
      "The saw is a bottleneck on Mondays only: each day has its own saw hour value. The blended hour is weighted by the area cut, not by days.",
    ),
    head("day", "saw hour value", "area a month", "offer P pays up to", "saving per in²", "saving a month"),
    ...formatted({ 1: "0.00", 2: "#,##0", 3: "#,##0.00", 4: "0.0000", 5: "#,##0.00" }, [
      plain("Mondays", 140, 2400, ...day(30), "=E30*C30"),
      plain("other days", 15, 6000, ...day(31), "=E31*C31"),
      plain("both, by area", "=(B30*C30+B31*C31)/C32", "=C30+C31", ...day(32), "=F30+F31"),
      plain("both, by days (wrong)", "=(B30+4*B31)/5", "=C30+C31", ...day(33), "=E33*C33"),
    ]),
    plain(),
    head("cheapest rate of offer P", "exponent", "least cost", "greatest output", "slowest", "fastest"),
    ...formatted({ 2: "0.00", 3: "0.00", 4: "0.00", 5: "0.00" }, [
      plain(
        "life falls with the rate",
        2,
        ...["least cost", "greatest output", "slowest", "fastest"].map(
          (show) => `=SAW.BESTRATE($B$6:$D$6,$B$36,$B$10,${change},"${show}")`,
        ),
      ),
    ]),
  ],
  frozen: { rows: 4, columns: 0 },
  inputs: ["A5:F8", "B10:B11", "B26:C26", "A30:C31", "B36"],
  tables: [
    { name: "Offers", area: "A4:F8" },
    { name: "SawHours", area: "A29:F33" },
  ],
  spills: ["A14:L19"],
  print: { area: "A1:I36", pages: "wide", turned: true },
};
