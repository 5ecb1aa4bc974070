import uPlot from "uplot";
import "uplot/dist/uPlot.min.css";
import type { BookChart, Ends } from "../../functions/workbook/readCharts";
import { element } from "../controls/element";
import { chartData, type ChartData, type Drawn, type Point } from "./chartData";
import type { Value } from "../sheet/sheet";

/** One chart on the page: the library makes scales, ticks, grid and titles; series are laid over them here. */

const size = { width: 380, height: 270, margins: 24 };
/** As wide as that, where the window is. */
const widthNow = (): number => Math.min(size.width, document.documentElement.clientWidth - size.margins);
const colours = ["--c1", "--c2", "--c3", "--c4", "--c5", "--c6"] as const;
const colour = (name: string): string => getComputedStyle(document.body).getPropertyValue(name).trim();
const seriesColour = (i: number): string => colour(colours[i % colours.length]!);
/** Of the width that a category has, the part that its bars fill. */
const filled = 0.62;

/** Where a point lies on the canvas; the categories of lying bars run upwards. */
const placeOf = (plot: uPlot, turned: boolean, { x, y }: { readonly x: number; readonly y: number }) => ({
  left: plot.valToPos(turned ? y : x, "x", true),
  top: plot.valToPos(turned ? x : y, "y", true),
});

function line(plot: uPlot, points: readonly Point[]): void {
  const { ctx } = plot;
  ctx.beginPath();
  for (const point of points) {
    const { left, top } = placeOf(plot, false, point);
    ctx.lineTo(left, top);
  }
  ctx.stroke();
}

/** Signs differ with the series, so that colour is not all that tells them apart. */
function sign(plot: uPlot, point: Point, i: number): void {
  const { ctx } = plot;
  const { left, top } = placeOf(plot, false, point);
  const r = 3.5 * devicePixelRatio;
  ctx.beginPath();
  if (i % 3 === 0) ctx.arc(left, top, r, 0, 2 * Math.PI);
  else if (i % 3 === 1) ctx.rect(left - r, top - r / 3, 2 * r, (2 * r) / 3);
  else {
    ctx.moveTo(left, top - r);
    ctx.lineTo(left + r, top + r);
    ctx.lineTo(left - r, top + r);
  }
  ctx.fill();
}

interface Bars {
  readonly turned: boolean;
  /** How many stand side by side, and which this one is. */
  readonly beside: number;
  readonly place: number;
}

function bars(plot: uPlot, points: readonly Point[], { turned, beside, place }: Bars): void {
  const width = filled / beside;
  for (const { x, y, from } of points) {
    const start = x - filled / 2 + place * width;
    const a = placeOf(plot, turned, { x: start, y: from });
    const b = placeOf(plot, turned, { x: start + width, y });
    plot.ctx.fillRect(a.left, a.top, b.left - a.left, b.top - a.top);
  }
}

function drawSeries(plot: uPlot, { kind, stacked }: BookChart, drawn: readonly Drawn[]): void {
  const { ctx } = plot;
  const { left, top, width, height } = plot.bbox;
  ctx.save();
  ctx.beginPath();
  ctx.rect(left - 4, top - 4, width + 8, height + 8);
  ctx.clip();
  ctx.lineWidth = 2 * devicePixelRatio;
  drawn.forEach(({ look, points }, i) => {
    ctx.strokeStyle = ctx.fillStyle = seriesColour(i);
    ctx.setLineDash(i % 2 === 0 ? [] : [6 * devicePixelRatio, 3 * devicePixelRatio]);
    if (look === "bars")
      bars(plot, points, { turned: kind === "bar", beside: stacked ? 1 : drawn.length, place: stacked ? 0 : i });
    if (look === "line" || look === "line and points") line(plot, points);
    if (look === "points" || look === "line and points") for (const point of points) sign(plot, point, i);
  });
  ctx.restore();
}

/** Room beside the words of an axis [px], and of one letter. */
const room = { beside: 80, letter: 7, up: 14, line: 18 };

/** Every how many-th word is written, so that none runs into the next. */
function spacing(words: readonly string[], side: 2 | 3): number {
  const longest = Math.max(1, ...words.flatMap((w) => w.split(/, /)).map((w) => w.length));
  const one = side === 2 ? longest * room.letter + room.letter : room.line;
  return Math.max(1, Math.ceil((words.length * one) / (side === 2 ? widthNow() - room.beside : room.up * room.line)));
}

/** As the axis writes its numbers in the file; the library's own way for all but percent. */
const percents = (at: readonly number[]): string[] => at.map((n) => `${Number((100 * n).toPrecision(6))}%`);

function axis(label: string, side: 2 | 3, words: readonly string[], { percent }: Ends): uPlot.Axis {
  const ink = colour("--ink");
  const every = spacing(words, side);
  return {
    scale: side === 2 ? "x" : "y",
    side,
    label,
    stroke: ink,
    labelSize: label === "" ? 0 : 22,
    font: "12px system-ui, sans-serif",
    labelFont: "12px system-ui, sans-serif",
    size: side === 2 ? (words.some((w) => w.includes(", ")) ? 50 : 34) : words.length > 0 ? 100 : 58,
    grid: { stroke: colour("--line"), width: 1, show: words.length === 0 },
    ticks: { stroke: colour("--line"), width: 1 },
    ...(words.length === 0
      ? percent
        ? { values: (_: uPlot, at: number[]) => percents(at) }
        : {}
      : {
          splits: () => words.map((_, i) => i).filter((i) => i % every === 0),
          values: (_: uPlot, at: number[]) => at.map((i) => (words[i] ?? "").replace(/, /g, ",\n")),
        }),
  };
}

function plotOf(chart: BookChart, data: ChartData, box: HTMLElement): uPlot {
  const turned = chart.kind === "bar";
  const [x, y] = turned ? [data.up, data.across] : [data.across, data.up];
  return new uPlot(
    {
      width: widthNow(),
      height: size.height,
      legend: { show: false },
      cursor: { show: false },
      scales: { x: { time: false, range: [x[0], x[1]] }, y: { range: [y[0], y[1]] } },
      axes: [
        axis(chart.across, 2, turned ? [] : data.words, chart.ends.across),
        axis(chart.up, 3, turned ? data.words : [], chart.ends.up),
      ],
      series: [{}, { scale: "y", show: true, stroke: "transparent", points: { show: false } }],
      hooks: {
        draw: [
          (plot) => {
            drawSeries(plot, chart, data.drawn);
          },
        ],
      },
    },
    [
      [x[0], x[1]],
      [y[0], y[1]],
    ],
    box,
  );
}

const legendOf = (drawn: readonly Drawn[]): HTMLElement =>
  element(
    "ul",
    { class: "legend" },
    ...drawn.map(({ name }, i) => {
      const key = element("span", { class: "key" });
      key.style.background = seriesColour(i);
      return element("li", {}, key, name);
    }),
  );

/** The chart as it stands now; words for who cannot see it, and the numbers as the figure's own data. */
export function drawChart(chart: BookChart, read: (reference: string) => readonly Value[]): HTMLElement {
  const figure = element("figure", {}, element("figcaption", {}, chart.title));
  if (chart.kind === "other") {
    figure.append(element("p", {}, "Of a kind that is drawn in Excel."));
    return figure;
  }
  const data = chartData(chart, read);
  const names = data.drawn.map((d) => d.name).join(", ");
  const box = element("div", { role: "img", "aria-label": `${chart.title}. ${chart.says || `Series: ${names}.`}` });
  figure.append(box);
  if (data.drawn.every((d) => d.points.length === 0)) box.append("Its cells hold no numbers.");
  else plotOf(chart, data, box);
  figure.append(legendOf(data.drawn));
  return figure;
}
