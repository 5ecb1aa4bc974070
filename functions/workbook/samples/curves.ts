import { columnName } from "../../formula/cellAddress";
import { formatted, head, invented, label, note, plain, units, type SampleChart, type SampleSheet } from "./sheet";
import { shopCell } from "./shop";

const offers = [5, 6, 7, 8] as const;
const hours = [0, 5, 10, 20, 30, 40, 50, 60, 75, 90, 105, 120] as const;
const change = shopCell("Blade change minutes");
const firstHour = 6;
const lastHour = firstHour + hours.length - 1;
const cut = lastHour + 3;
const firstCut = cut + 5;
const now = firstCut + offers.length + 1;
const parts = ["cutting", "handling", "blade wear", "blade change"] as const;

/** Saw time and blade for an in² with the offer in row `o` of Purchase, at the hour value in row `r`; a rebate counts as won. */
const costOfArea = (o: number, r: number): string =>
  `=$A${r}/(60*Purchase!$D$${o})+(Purchase!$B$${o}*(1-Purchase!$E$${o})+$A${r}*${change}/60)/Purchase!$C$${o}`;
const costOfCut = (o: number): string[] =>
  [...parts, "cost"].map(
    (_, c) =>
      `=SAW.CUTCOST($B$${cut},Purchase!$D$${o},Purchase!$B$10,Purchase!$B$${o},Purchase!$C$${o},$A$${cut + 1}:$B$${cut + 3},,${columnName(c + 1)}$${firstCut - 1})`,
  );

const crossings: SampleChart = {
  kind: "lines",
  title: "Where two lines cross, the cheapest offer changes",
  says: "Cost of an in² rises with the worth of a saw hour: steeply for the slow blades, gently for the fast ones. The lines cross where two offers cost the same.",
  across: "worth of a saw hour, money",
  up: "cost of an in², money",
  ends: { across: 120, up: 0.4 },
  over: "H4:P23",
  series: [
    ...offers.map((_, i) => ({
      name: `${columnName(i + 1)}5`,
      across: `A${firstHour}:A${lastHour}`,
      up: `${columnName(i + 1)}${firstHour}:${columnName(i + 1)}${lastHour}`,
    })),
    { name: `A${now}`, across: `A${now + 1}:A${now + 2}`, up: `B${now + 1}:B${now + 2}` },
  ],
};
const columns: SampleChart = {
  kind: "stacked columns",
  title: "Cost of one cut, and what it is made of",
  says: "One column for each offer, stacked from cutting, handling, blade wear and blade change. Saw time is most of the slow blades' cost.",
  across: "offer",
  up: "money a cut",
  over: "H25:P42",
  series: parts.map((_, i) => ({
    name: `${columnName(i + 1)}${firstCut - 1}`,
    across: `A${firstCut}:A${firstCut + 3}`,
    up: `${columnName(i + 1)}${firstCut}:${columnName(i + 1)}${firstCut + 3}`,
  })),
};

/** What drives the two charts of the offers: Excel's own functions for the lines, ours for the cut. */
export const curves: SampleSheet = {
  name: "Curves",
  widths: [200, 150, 150, 150, 150, 80, 30, 90, 90, 90, 90, 90, 90, 90, 90, 90],
  rows: [
    ...invented(
      "Curves of the blade offers",
      note(
        "Each offer of the sheet Purchase: what an in² costs, saw time and blade together, for what a saw hour may be worth. A rebate counts as won.",
      ),
    ),
    units("money", "money an in²", "money an in²", "money an in²", "money an in²"),
    head("saw hour value", ...offers.map((o) => `=Purchase!$A$${o}`)),
    ...formatted(
      { 1: "0.0000", 2: "0.0000", 3: "0.0000", 4: "0.0000" },
      hours.map((hour, i) => plain(hour, ...offers.map((o) => costOfArea(o, firstHour + i)))),
    ),
    plain(),
    note("One cut at the saw hour value of the sheet Purchase, prices without rebate."),
    label("size of the cut", "round 7"),
    ...formatted(
      { 1: "General" },
      ["Units", "Handling minutes", "Blade change minutes"].map((name) => plain(name, `=${shopCell(name)}`)),
    ),
    head("offer", ...parts, "cost"),
    ...formatted(
      { 1: "0.00", 2: "0.00", 3: "0.00", 4: "0.00", 5: "0.00" },
      offers.map((o) => plain(`=Purchase!$A$${o}`, ...costOfCut(o))),
    ),
    plain(),
    head("a saw hour now", "line in the chart"),
    ...formatted({ 0: "0.00", 1: "0.00" }, [plain("=Purchase!$B$10", 0), plain("=Purchase!$B$10", 0.4)]),
  ],
  frozen: { rows: 2, columns: 0 },
  inputs: [`A${firstHour}:A${lastHour}`, `B${cut}`],
  tables: [{ name: "CostOfCut", area: `A${firstCut - 1}:F${firstCut + 3}` }],
  charts: [crossings, columns],
  print: { area: "A1:Q43", pages: "one", turned: true },
};
