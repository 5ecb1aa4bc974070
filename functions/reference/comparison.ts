import { predictCut } from "../../src/cutting/predictCut";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import { defaultShop } from "../../src/shop/defaultShop";

/**
 * Area rates of band sawing [cm²/min] that a German vocational tables book prints by material on its sawing page (read);
 * it states no class of blade, no size and no band speed. Each with the grade that stands for it here.
 */
const tablesBook: readonly (readonly [grade: string, printed: string, low: number, high: number])[] = [
  ["A36", "structural and carbon steel", 170, 220],
  ["1045", "structural and carbon steel", 170, 220],
  ["4140", "heat-treatable steel", 130, 180],
  ["4140 HT", "heat-treatable, case-hardening", 80, 180],
  ["430", "stainless steel", 80, 120],
  ["304", "stainless steel", 80, 120],
  ["17-4PH", "stainless steel", 80, 120],
  ["GCI-30", "cast iron", 80, 120],
  ["65-45-12", "cast iron", 80, 120],
  ["6061", "aluminium", 230, 280],
  ["C36000", "brass", 130, 180],
];
const rounds = ["round 4 in", "round 7 in", "round 10 in"];

/** Predicted carbide rates beside the tables book's, by group: inside, or out and on which side. */
export const comparisonRows = (): readonly (readonly string[])[] =>
  tablesBook.map(([grade, printed, low, high]) => {
    const material = findMaterial(grade, []);
    const rates = rounds.map((size) => {
      const section = readSection(size, "inch");
      const profile = sectionProfile(section);
      return (
        predictCut({
          section: { ...section, profile: () => profile },
          material,
          blade: "carbide",
          shop: defaultShop,
          pitch: undefined,
        }).rate / 100
      );
    });
    const [least, most] = [Math.min(...rates), Math.max(...rates)];
    const verdict =
      most < low
        ? "outside, low"
        : least > high
          ? "outside, high"
          : least >= low && most <= high
            ? "inside"
            : least < low
              ? "in part low"
              : "in part high";
    return [
      material.group!.name,
      grade,
      rates.map((r) => r.toFixed(0)).join(", "),
      `${low}-${high} (${printed})`,
      verdict,
    ];
  });
