import { massWorking } from "../../src/material/massWorking";
import { itemRow } from "../../src/item/itemRow";
import type { Material } from "../../src/material/material";
import { materialData } from "../../src/material/materialData";
import { pieceMass } from "../../src/material/pieceMass";
import type { Section } from "../../src/section/section";
import { sectionData } from "../../src/section/sectionData";
import { description, length, matchedMaterial } from "../kinds";
import { column, each, entry } from "../bind/entry";
import { materials, sections } from "./parameters";

const subject = "Section, material, description";
const geometry = "geometry of the nominal outline; tables: ASTM A6/A6M, EN 10365, EN 10056-1, ASME B36.10M";

export const section = [
  entry({
    name: "AREA",
    subject,
    help: "Cut area of a size, the whole stack of a bundle, a mitre included.",
    examples: ['SAW.AREA("round 7")', 'SAW.AREA("round 2 bundle 3x4 mitre 30")'],
    source: geometry,
    asks: ["how big is the cut", "cross-section", "area of a bar"],
    params: { section: sections() },
    takes: { units: true },
    result: { form: "cell", as: "area", of: "area", help: "cut area" },
    run: ({ section }: { readonly section: Section }) => section,
  }),
  entry({
    name: "SECTION",
    subject,
    help: "Cut geometry of a size in the vice: height, mean and maximum width, longest and thinnest contact, how it was read.",
    examples: ['SAW.SECTION("W12x50", "mean width")', 'SAW.SECTION("tube 6x0.5", "card")'],
    source: geometry,
    asks: ["how was my size read", "width of cut", "height of a beam on the saw"],
    params: { section: sections() },
    takes: { show: "required", units: true },
    result: {
      form: "row",
      main: undefined,
      columns: {
        area: column("area", "the whole stack, a mitre included"),
        height: column("size", "cut height: the way of the band through the work"),
        meanWidth: column("size", "area / height"),
        maximumWidth: column("size", "most total contact at one depth"),
        longestContact: column("size", "longest single contact"),
        thinnestContact: column("size", "thin width: a fifth of the cut is thinner"),
        read: column("text", "how the size was read, what was assumed"),
      },
    },
    run: sectionData,
  }),
  entry({
    name: "MASS",
    subject,
    help: "Mass of one piece of a size, length and grade; a bundle gives the mass of one of its bars.",
    examples: ['SAW.MASS("round 7", "12 in", "17-4PH")', 'SAW.MASS("W12x50", "20 ft", "A992")'],
    source: "area × length × density; density: see MATERIAL",
    asks: ["how heavy is a piece", "weight of a bar"],
    params: {
      section: sections(),
      length: each(length(), 'length of the piece, or text such as "20 ft" or "8\'-6"'),
      material: materials(),
    },
    takes: { units: true },
    result: { form: "cell", as: "mass", help: "mass of one piece, square cut" },
    working: massWorking,
    run: ({ section, ...piece }: { readonly section: Section; readonly length: number; readonly material: Material }) =>
      pieceMass({ area: section.pieceArea, ...piece }),
  }),
  entry({
    name: "ITEM",
    subject,
    help: "What one description cell of an order list means: size, material, length, quantity, and the words not read.",
    examples: [
      'SAW.ITEM("HR FLAT 1/4 X 3 IN A36", "material")',
      'SAW.ITEM("RND BAR 3-1/2 IN DIA 4140 X 20 FT 5 PCS RUSH", "all")',
    ],
    source: "size, length and material by the readers of those; words of order lists: common practice, no source",
    asks: ["read my order list", "description to size", "split a description", "what does this line mean"],
    params: {
      description: each(description, "a description line; each result is refused alone when the line does not say"),
    },
    takes: { show: "optional", units: true },
    result: {
      form: "row",
      main: "size",
      columns: {
        size: column("text", "canonical, with its units"),
        material: column("text", "the grade it names"),
        length: column("length", "told from the size"),
        quantity: column("count", "pieces"),
        wordsNotRead: column("text", "what nothing here reads"),
        readAs: column("text", "in one line, with what was assumed"),
      },
    },
    run: itemRow,
  }),
  entry({
    name: "MATERIAL",
    subject,
    help: "What is known of a grade: cutting group, density, hardness, machinability, hazards, sources and the confidence in each.",
    examples: ['SAW.MATERIAL("1.4301", "group")', 'SAW.MATERIAL("17-4PH", "card")'],
    source: "the material table: each value with its source and mark, shown on the card",
    asks: ["which steel is this", "density of a grade", "is it dangerous to saw", "cutting group"],
    params: { material: each(matchedMaterial, 'any designation of the grade, such as "304", "4140" or "1.4301"') },
    takes: { show: "required", settings: "optional", units: true },
    result: {
      form: "row",
      main: undefined,
      columns: {
        readAs: column("text", "the designation that matched, what was assumed"),
        name: column("text", "and usual stock"),
        group: column("text", "cutting group"),
        letter: column("text", "ISO 513"),
        condition: column("text", "for which the values hold"),
        density: column("density", "see confidence"),
        hardnessLow: column("hardness", "see confidence"),
        hardnessHigh: column("hardness", "see confidence"),
        tensile: column("stress", "typical"),
        machinability: column("ratio", "percent of the basis; for information only"),
        machinabilityBasis: column("text", "never compare two bases"),
        designations: column("text", "that find this grade"),
        hazards: column("text", "reminders, not a safety data sheet"),
        cautions: column("text", "the machine's manual comes first"),
        sources: column("text", "of each value"),
        confidence: column("text", "in each value, by its source"),
      },
    },
    run: materialData,
  }),
];
