import { demoBook } from "../../functions/workbook/samples/books";
import type { OpenedBook } from "../../functions/workbook/openBook";
import type { BookChart } from "../../functions/workbook/readCharts";
import type { Sheet, Value } from "../sheet/sheet";
import type { Grid } from "./grid";
import type { Work } from "./work";

/** The charts of the sheet in sight, beside the grid: drawn anew when its cells change. */

const chartsOf = new WeakMap<OpenedBook, Promise<ReadonlyMap<string, readonly BookChart[]>>>();

async function chartsIn(work: Work, sheet: string): Promise<readonly BookChart[]> {
  // The page's own workbook is made a file for the sheets that have charts only.
  if (work.isStart() && !demoBook.some((s) => s.name === sheet && s.charts !== undefined)) return [];
  const opened = await work.opened();
  let all = chartsOf.get(opened);
  if (all === undefined) {
    all = import(/* webpackChunkName: "charts" */ "../../functions/workbook/readCharts").then(({ readCharts }) =>
      readCharts(opened.parts, opened.book),
    );
    chartsOf.set(opened, all);
  }
  return (await all).get(sheet) ?? [];
}

const referencesOf = (charts: readonly BookChart[]): string[] => [
  ...new Set(charts.flatMap((c) => c.series.flatMap((s) => [s.name, s.across, s.up])).filter((r) => !!r) as string[]),
];

/** A reference that is no plain area of cells (several areas, a name of a formula) has no values here. */
async function valuesOf(sheet: Sheet, references: readonly string[]): Promise<ReadonlyMap<string, readonly Value[]>> {
  const read = await Promise.all(
    references.map(async (reference) => {
      const cells = await sheet.read([reference]).catch(() => [[]]);
      return [reference, (cells[0] ?? []).flat()] as const;
    }),
  );
  return new Map(read);
}

/** Shows and redraws; to be called when the sheet in sight or its cells may have changed. */
export function chartPanel({ api }: Grid, work: Work, sheet: Sheet): () => void {
  const panel = document.getElementById("charts")!;
  let [shown, turn, drawing] = ["", 0, 0];
  const draw = async (): Promise<void> => {
    const asked = (turn += 1);
    const name = api.getActiveWorkbook()?.getActiveSheet().getSheetName() ?? "";
    const charts = await chartsIn(work, name).catch(() => []);
    const values = await valuesOf(sheet, referencesOf(charts));
    const state = JSON.stringify([name, charts.length, [...values]]);
    if (asked !== turn || state === shown) return;
    shown = state;
    const mine = (drawing += 1);
    panel.hidden = charts.length === 0;
    if (charts.length === 0) {
      panel.replaceChildren();
      return;
    }
    const { drawChart } = await import(/* webpackChunkName: "draw" */ "./drawChart");
    // Only what differs takes the place of a drawing under way.
    if (mine === drawing) panel.replaceChildren(...charts.map((c) => drawChart(c, (r) => values.get(r) ?? [])));
  };
  for (const look of ["(prefers-color-scheme: dark)", "(max-width: 404px)"])
    matchMedia(look).addEventListener("change", () => {
      shown = "";
      void draw();
    });
  return () => void draw();
}
