import type { XmlElement } from "@rgrove/parse-xml";
import type { Book } from "./book";
import { partText, relationsOf, type Parts } from "./parts";
import { childrenOf, elements, localName, readXml, relationId } from "./xml";

/** The charts of a workbook, read from the parts that it keeps them in (ISO/IEC 29500-1, 21.2): what the page draws of them. */

export interface ChartSeries {
  /** A reference to the cells of each. */
  readonly name: string | undefined;
  /** Its name as text, where no cell names it. */
  readonly called: string;
  readonly across: string | undefined;
  readonly up: string;
  readonly look: "line" | "points" | "line and points";
}

export interface BookChart {
  /** "other": of a kind that is not drawn here. */
  readonly kind: "scatter" | "line" | "column" | "bar" | "other";
  readonly stacked: boolean;
  readonly title: string;
  /** What it shows, for who cannot see it; empty where the file says nothing. */
  readonly says: string;
  readonly across: string;
  readonly up: string;
  /** Where an axis is told to begin and end, and how its numbers are written. */
  readonly ends: { readonly across: Ends; readonly up: Ends };
  readonly series: readonly ChartSeries[];
}

export interface Ends {
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Its numbers are written as percent. */
  readonly percent: boolean;
}

const first = (of: XmlElement | undefined, ...path: readonly string[]): XmlElement | undefined =>
  path.reduce<XmlElement | undefined>((at, name) => (at === undefined ? undefined : childrenOf(at, name)[0]), of);
const valOf = (of: XmlElement | undefined, ...path: readonly string[]): string | undefined =>
  first(of, ...path)?.attributes["val"];

/** A title's own words, or those that its cell held last. */
const titleOf = (of: XmlElement | undefined): string => {
  const title = first(of, "title");
  if (title === undefined) return "";
  const words = elements(title, "t").map((t) => t.text);
  return (words.length > 0 ? words : elements(title, "v").map((v) => v.text)).join("");
};

const referenceIn = (of: XmlElement | undefined): string | undefined =>
  of === undefined ? undefined : elements(of, "f")[0]?.text;

function seriesOf(ser: XmlElement, kind: BookChart["kind"], marked: boolean): ChartSeries {
  const lineless = first(ser, "spPr", "ln", "noFill") !== undefined;
  const sign = valOf(ser, "marker", "symbol");
  const hasPoints = sign === undefined ? marked : sign !== "none";
  const tx = first(ser, "tx");
  return {
    name: referenceIn(tx),
    called:
      tx === undefined
        ? ""
        : elements(tx, "v")
            .map((v) => v.text)
            .join(" "),
    across: referenceIn(first(ser, kind === "scatter" ? "xVal" : "cat")),
    up: referenceIn(first(ser, kind === "scatter" ? "yVal" : "val")) ?? "",
    look: lineless ? "points" : hasPoints ? "line and points" : "line",
  };
}

const numberOf = (text: string | undefined): number | undefined => (text === undefined ? undefined : Number(text));
const endsOf = (axis: XmlElement | undefined): Ends => ({
  from: numberOf(valOf(axis, "scaling", "min")),
  to: numberOf(valOf(axis, "scaling", "max")),
  percent: first(axis, "numFmt")?.attributes["formatCode"]?.includes("%") === true,
});

const kindOf = (plot: XmlElement | undefined): BookChart["kind"] => {
  const name = plot === undefined ? "" : localName(plot.name);
  if (name === "scatterChart") return "scatter";
  if (name === "lineChart") return "line";
  if (name === "barChart") return valOf(plot, "barDir") === "bar" ? "bar" : "column";
  return "other";
};

/** The axis that lies and the one that stands. Their own word for it is not always right where one has categories. */
function axesOf(inside: readonly XmlElement[], kind: BookChart["kind"]) {
  const places = inside.find((e) => /(?:cat|date)Ax$/.test(e.name));
  const values = inside.filter((e) => /valAx$/.test(e.name));
  if (places !== undefined)
    return kind === "bar" ? { across: values[0], up: places } : { across: places, up: values[0] };
  const stands = (e: XmlElement): boolean => ["l", "r"].includes(valOf(e, "axPos") ?? "");
  return { across: values.find((e) => !stands(e)), up: values.find(stands) };
}

function chartOf(xml: string, part: string, says: string): BookChart {
  const chart = first(readXml(xml, part), "chart");
  const area = first(chart, "plotArea");
  const inside = area === undefined ? [] : area.children.filter((c): c is XmlElement => "name" in c);
  const plots = inside.filter((e) => /Chart$/.test(e.name));
  // Several kinds in one chart are Excel's to draw.
  const kind = plots.length === 1 ? kindOf(plots[0]) : "other";
  const { across, up } = axesOf(inside, kind);
  const marked = valOf(plots[0], "marker") === "1" || kind === "scatter";
  return {
    kind,
    stacked: /stacked/i.test(valOf(plots[0], "grouping") ?? ""),
    title: titleOf(chart),
    says,
    across: titleOf(across),
    up: titleOf(up),
    ends: { across: endsOf(across), up: endsOf(up) },
    series: kind === "other" ? [] : childrenOf(plots[0]!, "ser").map((ser) => seriesOf(ser, kind, marked)),
  };
}

function chartsIn(parts: Parts, drawing: string): BookChart[] {
  const root = readXml(partText(parts, drawing), drawing);
  const targets = new Map(relationsOf(parts, drawing).map((r) => [r.id, r]));
  return elements(root, "graphicFrame").flatMap((frame) => {
    const [reference] = elements(frame, "chart");
    const target = reference && targets.get(relationId(reference) ?? "");
    if (target === undefined || parts[target.target] === undefined) return [];
    const says = elements(frame, "cNvPr")[0]?.attributes["descr"] ?? "";
    return [chartOf(partText(parts, target.target), target.target, says)];
  });
}

/** The charts of each sheet that has any, in the order of the file. */
export const readCharts = (parts: Parts, book: Book): ReadonlyMap<string, readonly BookChart[]> =>
  new Map(
    book.sheets
      .map(({ name, part }) => {
        const drawings = relationsOf(parts, part).filter((r) => r.type.endsWith("/drawing") && parts[r.target]);
        return [name, drawings.flatMap((r) => chartsIn(parts, r.target))] as const;
      })
      .filter(([, charts]) => charts.length > 0),
  );
