import { columnName } from "../../formula/cellAddress";
import { formatted, head, invented, label, note, plain, units, type SampleSheet } from "./sheet";
import { shopCell } from "./shop";

const change = shopCell("Blade change minutes");
const compared = ["price", "life", "rate"];
/** Heading and room for four offers, each of them with a rebate too; of these one has. */
const [ranking, most, now] = [14, 8, 5];
const [first, last] = [ranking + 1, ranking + most];
const breakEven = last + 4;
const payBack = breakEven + 4;
const days = payBack + 4;
const bestRate = days + 6;

/** Break-even of the first offer; where there is no such value that is an answer, in words, and no error. */
const even = (hour: string, show: string): string =>
  `IFNA(SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,${hour},${change},,,${show}),"none")`;
const saving = (hour: string): string => `=SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,${hour},${change},,,"saving")`;
/** A day with its own saw hour value in column B of row `r`. */
const day = (r: number): string[] => [`=${even(`$B${r}`, '"price"')}`, saving(`$B${r}`), `=E${r}*C${r}`];

/** What the ranking notes beside each row, of the rows that have a note. */
const notes = Array.from({ length: most }, (_, i) => `&IF(L${first + i}="","","; "&L${first + i})`).join("");

/** Blades compared in in² and in²/min, for 7 in rounds of 17-4PH. */
export const purchase: SampleSheet = {
  name: "Purchase",
  widths: [240, 195, 130, 150, 150, 130, 165, 165, 390, 500, 130, 460],
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
    label(`=COUNT(A${first}:A${last})&" ranked"${notes}`),
    note(
      "Ranked by cost of an in²; saving against the first offer of the table; from and to which saw hour value each is the cheapest. Life is the largest uncertainty of all: try it lower.",
    ),
    ...formatted({ 0: "0", 2: "0.0000", 3: "#,##0.00", 4: "0.0000", 5: "#,##0.00", 10: "0.0" }, [
      head(`=SAW.OFFERS($A$4:$F$8,$B$10,$B$11,${change})`),
      ...Array.from({ length: most }, () => plain()),
    ]),
    plain(),
    note('=A6&" against "&A5&": the value at which both cost the same, for each value in turn."'),
    head("", ...compared, "saw hour value", "saving"),
    ...formatted({ 1: "#,##0.00", 2: "0", 3: "0.00", 4: "0.00", 5: "0.0000" }, [
      plain(
        "=A6",
        ...compared.map((_, i) => `=${even("$B$10", `${columnName(i + 1)}$${breakEven - 1}`)}`),
        `=IFNA(SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,$B$10,${change},,,E$${breakEven - 1}),IF($F${breakEven}>0,"always wins",IF($F${breakEven}<0,"never wins","always level")))`,
        saving("$B$10"),
      ),
    ]),
    plain(`=SAW.BREAKEVEN($B$5:$D$5,$B$6:$D$6,$B$10,${change},,,"verdict")`),
    plain(),
    head("pay-back of a new feed valve", "one off cost", "hours of work waiting", "months", "area until then"),
    ...formatted({ 3: "0.0", 4: "#,##0" }, [
      plain(
        "=A6",
        4500,
        20,
        ...["months", "area"].map(
          (show) =>
            `=IFNA(SAW.PAYBACK($B$5:$D$5,$B$6:$D$6,$B$10,$B$${payBack},$B$11,$C$${payBack},,${change},,,"${show}"),"never")`,
        ),
      ),
    ]),
    plain(),
    note(
      `=A6&" where the saw is a bottleneck on Mondays only: each day has its own saw hour value. The blended hour is weighted by the area cut, not by days."`,
    ),
    head("day", "saw hour value", "area a month", "the offer pays up to", "saving per in²", "saving a month"),
    ...formatted({ 1: "0.00", 2: "#,##0", 3: "#,##0.00", 4: "0.0000", 5: "#,##0.00" }, [
      plain("Mondays", 140, 2400, ...day(days)),
      plain("other days", 15, 6000, ...day(days + 1)),
      plain(
        "both, by area",
        `=(B${days}*C${days}+B${days + 1}*C${days + 1})/C${days + 2}`,
        `=C${days}+C${days + 1}`,
        ...day(days + 2).slice(0, 2),
        `=F${days}+F${days + 1}`,
      ),
      plain("both, by days (wrong)", `=(B${days}+4*B${days + 1})/5`, `=C${days}+C${days + 1}`, ...day(days + 3)),
    ]),
    plain(),
    head('="cheapest rate of "&A6', "exponent", "least cost", "greatest output", "slowest", "fastest"),
    ...formatted({ 2: "0.00", 3: "0.00", 4: "0.00", 5: "0.00" }, [
      plain(
        "life falls with the rate",
        2,
        ...["least cost", "greatest output", "slowest", "fastest"].map(
          (show) => `=SAW.BESTRATE($B$6:$D$6,$B$${bestRate},$B$10,${change},"${show}")`,
        ),
      ),
    ]),
  ],
  frozen: { rows: 4, columns: 0 },
  inputs: ["A5:F8", "B10:B11", `B${payBack}:C${payBack}`, `A${days}:C${days + 1}`, `B${bestRate}`],
  tables: [
    { name: "Offers", area: "A4:F8" },
    { name: "SawHours", area: `A${days - 1}:F${days + 3}` },
  ],
  spills: [`A${ranking}:L${ranking + now}`],
  print: { area: `A1:I${bestRate}`, pages: "wide", turned: true },
};
