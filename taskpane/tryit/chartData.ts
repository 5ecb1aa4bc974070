import type { BookChart, Ends } from "../../functions/workbook/readCharts";
import type { Value } from "../sheet/sheet";

/** What a chart shows now: the numbers of its cells, and where its axes begin and end. */

export interface Drawn {
  readonly name: string;
  readonly look: "line" | "points" | "line and points" | "bars";
  /** Cells without a number are left out. */
  readonly points: readonly Point[];
}

export interface Point {
  readonly x: number;
  readonly y: number;
  /** Where a bar begins: on the one below it. */
  readonly from: number;
}

export interface ChartData {
  readonly drawn: readonly Drawn[];
  /** Words along the axis of categories, by their place; empty for numbers. */
  readonly words: readonly string[];
  readonly across: readonly [from: number, to: number];
  readonly up: readonly [from: number, to: number];
}

type Read = (reference: string) => readonly Value[];

const isNumber = (value: Value | undefined): value is number => typeof value === "number" && Number.isFinite(value);

/** Steps of an axis that a person would choose: 1, 2 or 5 times a power of ten. */
function roundStep(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / 5));
  return power * ([1, 2, 5, 10].find((m) => m * power >= span / 5) ?? 10);
}

/** As far as the numbers go, to the next round step; from 0 where they come near it. */
function endsOf(values: readonly number[], told: Ends, fromZero: boolean): readonly [number, number] {
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const low = fromZero || (least >= 0 && least < most / 2) ? Math.min(0, least) : least;
  const step = roundStep(Math.max(most - low, Math.abs(most) / 100, 1e-9));
  return [told.from ?? Math.floor(low / step + 1e-9) * step, told.to ?? Math.ceil(most / step - 1e-9) * step];
}

function pointsOf(
  xs: readonly Value[] | undefined,
  ys: readonly Value[],
  below: number[],
  isStacked: boolean,
): Point[] {
  return ys.flatMap((y, i) => {
    const x = xs === undefined ? i : xs[i];
    if (!isNumber(y) || !isNumber(x)) return [];
    const from = isStacked ? (below[i] ?? 0) : 0;
    if (isStacked) below[i] = from + y;
    return [{ x, y: from + y, from }];
  });
}

export function chartData(chart: BookChart, read: Read): ChartData {
  const isBars = chart.kind === "column" || chart.kind === "bar";
  const below: number[] = [];
  const drawn = chart.series.map((series): Drawn => {
    const xs = chart.kind === "scatter" && series.across !== undefined ? read(series.across) : undefined;
    return {
      name: series.name === undefined ? series.called : String(read(series.name)[0] ?? ""),
      look: isBars ? "bars" : series.look,
      points: pointsOf(xs, read(series.up), below, chart.stacked),
    };
  });
  const labels = chart.kind === "scatter" ? undefined : chart.series.find((s) => s.across !== undefined)?.across;
  const all = drawn.flatMap((d) => d.points);
  const most = Math.max(0, ...all.map((p) => p.x));
  const words = chart.kind === "scatter" ? [] : (labels === undefined ? [] : read(labels)).map(String);
  const numbers = all.flatMap((p) => [p.y, ...(isBars ? [p.from] : [])]);
  const [values, places] =
    chart.kind === "bar" ? [chart.ends.across, chart.ends.up] : [chart.ends.up, chart.ends.across];
  return {
    drawn,
    words: chart.kind === "scatter" ? [] : Array.from({ length: most + 1 }, (_, i) => words[i] ?? String(i + 1)),
    across:
      chart.kind === "scatter"
        ? endsOf(
            all.map((p) => p.x),
            places,
            false,
          )
        : [-0.5, most + 0.5],
    up: endsOf(numbers, values, isBars),
  };
}
