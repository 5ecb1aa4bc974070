import { InputError } from "../errors";
import type { Units } from "../quantities";
import { areaSection } from "./areaSection";
import { layBar } from "./layBar";
import { normaliseSize } from "../size/normaliseSize";
import { outlineArea } from "./outlineArea";
import { readBar } from "../size/readBar";
import { refuseSpoiled } from "../size/refuseSpoiled";
import type { Section } from "./section";
import { sectionStack } from "./sectionStack";
import { seriesText } from "../size/seriesText";
import { sizeModifiers, type Modifiers } from "../size/sizeModifiers";
import { plainParts } from "../size/plainParts";
import { sizeParts, type Parts } from "../size/sizeParts";
import { sizePhrases } from "../size/sizePhrases";
import { sizeTokens } from "../size/sizeTokens";

const greatest = 4000; // mm

/**
 * Reads a size string: "round 7", "flat 6x1 on edge", "W12x50", "NPS 4 Sch 40", "round 2 bundle 3x4 mitre 30", "area 38.5".
 * @param text as it stands in the cell [text]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the stack of bars [mm, mm²]
 * @throws InputError "invalid": not readable, and why; "none": not in the tables
 * @source sizes by definition, tables by the standards in sectionSources.ts
 */
export function readSection(text: string | number, defaultUnit: Units): Section {
  const simple = typeof text === "string" ? plainParts(text) : undefined;
  if (simple !== undefined) return stackSection(simple, unmodified, text as string, defaultUnit);
  const plain = typeof text === "number" ? String(text) : normaliseSize(text.slice(0, 200));
  refuseSpoiled(text, plain);
  const area = areaSection(plain, defaultUnit);
  if (area !== undefined) return area;
  const modifiers = sizeModifiers(sizePhrases(sizeTokens(seriesText(plain))));
  return stackSection(sizeParts(modifiers.bar), modifiers, String(text).trim(), defaultUnit);
}

const unmodified = sizeModifiers([]);

function stackSection(parts: Parts, modifiers: Modifiers, typed: string, defaultUnit: Units): Section {
  const bar = readBar(parts, typed, defaultUnit);
  const lie = modifiers.lie ?? (parts.flat ? "flat" : undefined);
  const laid = layBar(bar.shape!, bar.text, lie, modifiers.turn);
  const shapeArea = outlineArea(laid.outline);
  const pieceArea = bar.area ?? shapeArea;
  const pieces = modifiers.rows * modifiers.columns;
  const section: Section = {
    text: sectionText(bar.text, laid.lie, lie !== undefined, modifiers),
    note: [bar.text, ...bar.notes, ...(laid.lie === undefined ? [] : [laid.lie]), ...stackNotes(modifiers)].join(", "),
    area: (pieces * pieceArea) / Math.cos((modifiers.mitre * Math.PI) / 180),
    pieces,
    rows: modifiers.rows,
    columns: modifiers.columns,
    nested: modifiers.nested,
    pieceArea,
    hollow: !["round", "square", "flat", "hexagon", "octagon"].includes(bar.shape!.kind),
    mitre: modifiers.mitre,
    outline: laid.outline,
  };
  checkStack(section, bar.text, modifiers.nested && bar.shape!.kind !== "round" && bar.shape!.kind !== "tube");
  return section;
}

function sectionText(
  bar: string,
  lie: string | undefined,
  said: boolean,
  { turn, rows, columns, nested, mitre }: Modifiers,
): string {
  const turned = turn === 0 ? "" : ` rot ${turn}`;
  const stacked = rows * columns === 1 ? "" : ` bundle ${rows}x${columns}${nested ? " nested" : ""}`;
  return `${bar}${said && lie !== undefined ? ` ${lie}` : ""}${turned}${stacked}${mitre === 0 ? "" : ` mitre ${mitre}`}`;
}

function stackNotes({ turn, rows, columns, nested, counted, mitre }: Modifiers): readonly string[] {
  return [
    ...(turn === 0 ? [] : [`turned ${turn}°`]),
    ...(counted
      ? [`${columns} pieces taken as one row side by side; write "bundle rows x columns" to stack them`]
      : []),
    ...(rows * columns === 1 || counted ? [] : [`${rows} high, ${columns} wide${nested ? ", nested" : ""}`]),
    ...(mitre === 0 ? [] : [`mitre ${mitre}° from a square cut`]),
  ];
}

function checkStack(section: Section, name: string, nestedWrongly: boolean): void {
  if (nestedWrongly)
    throw new InputError("invalid", "section", "only rounds and round tubes nest, not {name}", { name });
  if (section.pieces === 1) return;
  const { height, width } = sectionStack(section);
  if (Math.max(height, width) > greatest)
    throw new InputError("invalid", "section", "a stack of {name} over 4 m high or wide is too big for a saw", {
      name,
    });
}
