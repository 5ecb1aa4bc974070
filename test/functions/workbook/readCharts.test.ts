import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { areaOf, inArea } from "../../../functions/formula/cellAddress";
import { openParts } from "../../../functions/workbook/openParts";
import { readBook } from "../../../functions/workbook/readBook";
import { readCharts, type BookChart } from "../../../functions/workbook/readCharts";
import { chartData } from "../../../taskpane/tryit/chartData";

/** Charts as other programs write them, and what is drawn of numbers added up by hand. */

const chartsOf = (file: string) => {
  const parts = openParts(readFileSync(file));
  return [...readCharts(parts, readBook(parts))];
};

describe("reading the charts of a workbook", () => {
  it("as three other programs wrote them: kind, cells, points without a line", () => {
    for (const name of ["gnumeric", "xlsxwriter"]) {
      const [[sheet, [chart]]] = chartsOf(`test/data/books/${name}.xlsx`) as never as [[string, [BookChart]]];
      expect([sheet, chart.kind, chart.series.length], name).toEqual(["Cuts & costs", "scatter", 1]);
      expect(chart.series[0]).toMatchObject({
        across: "'Cuts & costs'!$B$2:$B$4",
        up: "'Cuts & costs'!$C$2:$C$4",
        look: "points",
      });
    }
    const [[, [bars]]] = chartsOf("test/data/books/openpyxl.xlsx") as never as [[string, [BookChart]]];
    expect(bars).toMatchObject({ kind: "column", stacked: false });
    expect(bars.series[0]).toMatchObject({ name: "'Quote lines'!F1", up: "'Quote lines'!$F$2:$F$6" });
  });

  it("every series, title and axis that the samples' own parts name, and the ends of their axes", () => {
    for (const sample of ["purchase", "records", "process", "plans"]) {
      const file = `docs/samples/${sample}.xlsx`;
      const parts = openParts(readFileSync(file));
      // In another style: by the text of the parts alone.
      const texts = Object.entries(parts)
        .filter(([path]) => /charts\/chart\d/.test(path))
        .map(([, bytes]) => new TextDecoder().decode(bytes));
      const charts = chartsOf(file).flatMap(([, list]) => list);
      expect(charts.length).toBe(texts.length);
      for (const xml of texts) {
        const [title, ...axes] = [...xml.matchAll(/<a:t>([^<]*)<\/a:t>/g)].map((m) => m[1]!);
        const chart = charts.find((c) => c.title === title)!;
        expect([chart.across, chart.up]).toEqual(axes);
        const cells = [...xml.matchAll(/<c:f>([^<]*)<\/c:f>/g)].map((m) => m[1]!);
        expect(chart.series.flatMap((s) => [s.name, s.across, s.up])).toEqual(cells);
        const ends = [...xml.matchAll(/<c:max val="([^"]*)"/g)].map((m) => Number(m[1]));
        expect([chart.ends.across.to, chart.ends.up.to].filter((e) => e !== undefined)).toEqual(ends);
        const formats = [...xml.matchAll(/<c:numFmt formatCode="([^"]*)"/g)].map((m) => m[1]!);
        const percents = formats.filter((f) => f.includes("%")).length;
        expect(Number(chart.ends.across.percent) + Number(chart.ends.up.percent)).toBe(percents);
      }
    }
  });
});

describe("what is drawn of the samples' charts", () => {
  const drawnOf = (file: string) => {
    const parts = openParts(readFileSync(file));
    const { sheets } = readBook(parts);
    const read = (reference: string): (string | number | boolean)[] => {
      const [sheet, address] = reference.replace(/^'|'(?=!)/g, "").split("!") as [string, string];
      const area = areaOf(address.replace(/\$/g, ""))!;
      return sheets
        .find((s) => s.name === sheet)!
        .cells.filter((c) => inArea(area, c.row, c.column))
        .sort((a, b) => a.row - b.row || a.column - b.column)
        .map((c) => c.value ?? "");
    };
    const charts = chartsOf(file).flatMap(([, list]) => list);
    return charts.map((chart) => ({ chart, data: chartData(chart, read) }));
  };

  it.each(["purchase", "records", "process", "plans"])(
    "%s: each series has the points that its part in the file keeps",
    (sample) => {
      const texts = Object.entries(openParts(readFileSync(`docs/samples/${sample}.xlsx`)))
        .filter(([path]) => /charts\/chart\d/.test(path))
        .map(([, bytes]) => new TextDecoder().decode(bytes));
      for (const { chart, data } of drawnOf(`docs/samples/${sample}.xlsx`)) {
        const xml = texts.find((t) => t.includes(`<a:t>${chart.title}</a:t>`))!;
        const series = xml.split("<c:ser>").slice(1);
        expect(data.drawn.length).toBe(series.length);
        for (const [i, text] of series.entries()) {
          // The last list of numbers of a series is what goes up.
          const up = text.slice(Math.max(text.lastIndexOf("<c:yVal>"), text.lastIndexOf("<c:val>")));
          const kept = [...up.matchAll(/<c:v>([^<]*)<\/c:v>/g)].map((m) => Number(m[1]));
          const below = chart.stacked ? data.drawn[i]!.points.map((p) => p.from) : [];
          expect(data.drawn[i]!.points.map((p, k) => p.y - (below[k] ?? 0))).toEqual(
            kept.map((v) => expect.closeTo(v, 9) as number),
          );
        }
      }
    },
  );

  it("the lines of the offers cross where OFFERS says that the cheapest one changes", () => {
    const { data } = drawnOf("docs/samples/purchase.xlsx").find(({ chart }) => chart.title.startsWith("Where two"))!;
    // Straight lines: one point of crossing from the ends of both.
    const crossing = (a: string, b: string): number => {
      const [p, q] = [a, b].map((name) => data.drawn.find((d) => d.name === name)!.points) as [
        (typeof data.drawn)[number]["points"],
        (typeof data.drawn)[number]["points"],
      ];
      const [x0, x1] = [p[0]!.x, p.at(-1)!.x];
      const [left, right] = [p[0]!.y - q[0]!.y, p.at(-1)!.y - q.at(-1)!.y];
      return x0 + ((x1 - x0) * left) / (left - right);
    };
    // Row 15 and 16 of the sheet Purchase, as docs/method.md's formula of the cost of an in² gives them by hand.
    expect(crossing("offer P, carbide", "offer R, bi-metal")).toBeCloseTo(4.9282, 3);
    expect(crossing("offer P, carbide", "offer Q, carbide")).toBeCloseTo(74.828, 2);
  });
});

describe("what a chart shows", () => {
  const cells: Record<string, (number | string)[]> = {
    x: [0, 10, 20],
    a: [1, 2, ""],
    b: [3, "#N/A", 4],
    words: ["p", "q", "r"],
  };
  const chart = (kind: BookChart["kind"], stacked: boolean): BookChart => {
    const none = { from: undefined, to: undefined, percent: false };
    const series = (up: string) => ({
      name: undefined,
      called: up,
      across: kind === "scatter" ? "x" : "words",
      up,
      look: "line" as const,
    });
    const ends = { across: none, up: none };
    return { kind, stacked, title: "", says: "", across: "", up: "", ends, series: [series("a"), series("b")] };
  };
  const data = (kind: BookChart["kind"], stacked = false) => chartData(chart(kind, stacked), (r) => cells[r]!);

  it("leaves cells without a number out, and puts stacked bars on each other", () => {
    expect(data("scatter").drawn[1]!.points.map((p) => [p.x, p.y])).toEqual([
      [0, 3],
      [20, 4],
    ]);
    expect(data("column", true).drawn[1]!.points).toEqual([
      { x: 0, y: 4, from: 1 },
      { x: 2, y: 4, from: 0 },
    ]);
    expect(data("column").words).toEqual(["p", "q", "r"]);
  });

  it("ends its axes at round numbers, bars always at 0", () => {
    expect(data("scatter").across).toEqual([0, 20]);
    expect(data("column", true).up).toEqual([0, 4]);
    cells["a"] = [96, 97, 103];
    cells["b"] = [95, 99, 101];
    expect(data("line").up).toEqual([94, 104]);
    expect(data("bar").up[0]).toBe(0);
  });
});
