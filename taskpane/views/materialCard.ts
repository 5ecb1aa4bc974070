import { generalCautions, hazardTexts } from "../../src/data/cautions";
import { cuttingBasis } from "../../src/material/cuttingBasis";
import { describeDesignation } from "../../src/material/describeDesignation";
import type { Material } from "../../src/material/material";
import { provenance } from "../../src/material/provenance";
import type { Units } from "../../src/quantities";
import { element, row } from "../controls/element";
import { brief, measured } from "../sheet/readings";

const letters: ReadonlyMap<string, string> = new Map([
  ["P", "steels"],
  ["M", "stainless steels"],
  ["K", "cast irons"],
  ["N", "non-ferrous metals"],
  ["S", "heat-resisting alloys and titanium"],
  ["H", "hardened steels"],
]);

const groupWords = ({ group, letter }: Material): string => {
  if (group === undefined) return "none: no cutting data; type your own rate";
  const other = group.letter === letter ? "" : `; ${letter} by the letter of the standard`;
  return `${group.name} (ISO 513 ${group.letter}, ${letters.get(group.letter) ?? ""}${other})`;
};

export const hardnessWords = ({ hardness: { least, most } }: Material): string =>
  least === most
    ? `${brief(least, "hardness", "inch")} HB`
    : `${brief(least, "hardness", "inch")} to ${brief(most, "hardness", "inch")} HB`;

const facts = (material: Material, matched: string, units: Units): HTMLElement => {
  const { machinability } = material;
  const rows = [
    row("found as", matched),
    row("cutting group", groupWords(material)),
    row("condition", material.condition),
    row("density", measured(material.density, "density", units)),
    row("hardness", hardnessWords(material)),
    row("tensile strength", `${measured(material.tensile, "stress", units)}, typical`),
    ...(machinability === undefined
      ? []
      : [row("machinability", `${machinability.percent} % (${machinability.basis}); for information only`)]),
  ];
  return element("table", { "aria-label": "What is known of it" }, element("tbody", {}, ...rows));
};

const bullets = (texts: readonly string[]): HTMLElement => element("ul", {}, ...texts.map((t) => element("li", {}, t)));

const more = (title: string, ...inner: readonly Node[]): HTMLElement =>
  element("details", {}, element("summary", {}, title), ...inner);

const origins = (material: Material): HTMLElement =>
  element(
    "dl",
    {},
    ...[...provenance(material), ...cuttingBasis(material)].flatMap(({ label, source, mark }) => [
      element("dt", {}, `${label}: ${mark}`),
      element("dd", {}, source),
    ]),
  );

const hazards = ({ hazards: keys }: Material): readonly Node[] =>
  keys.length === 0
    ? []
    : [
        element(
          "div",
          { class: "hazard" },
          element("strong", {}, "Hazards of this grade"),
          bullets(keys.map((key) => hazardTexts.get(key) ?? key)),
        ),
      ];

/** What stands above the cutting data: name, facts, hazards. */
export const cardHead = (material: Material, matched: string, units: Units): readonly Node[] => [
  element("h2", {}, material.name),
  facts(material, matched, units),
  ...hazards(material),
];

/** What stands below it: cautions, sources, names. */
export function cardFoot(material: Material): readonly Node[] {
  return [
    element("h3", {}, "Cautions"),
    bullets([
      ...(material.hazards.length === 0 ? ["No hazard of this grade is noted here; see its safety data sheet."] : []),
      ...generalCautions,
    ]),
    more("Sources, and the confidence in each value", origins(material)),
    more(
      "Every number that finds it",
      bullets(
        material.designations.map(
          (designation) => (designation.near ? "near: " : "") + describeDesignation({ material, designation }),
        ),
      ),
    ),
  ];
}
