import { readPitch } from "../../src/blade/readPitch";
import { predictCut } from "../../src/cutting/predictCut";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import { defaultShop } from "../../src/shop/defaultShop";
import { publishedRates, type PublishedRate } from "./published";

/** One published rate beside the prediction, in the source's own unit. */
export interface Compared {
  readonly published: PublishedRate;
  readonly group: string;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  /** Nominal against the geometric middle of what is printed [-]. */
  readonly ratio: number;
  /** The geometric middle lies between low and high. */
  readonly inside: boolean;
}

const perUnit = { "in²": 25.4 ** 2, "cm²": 100 } as const;

const compare = (published: PublishedRate): Compared => {
  const section = readSection(published.section, "inch");
  const profile = sectionProfile(section);
  const material = findMaterial(published.grade, []);
  const { rate, rateLow, rateHigh } = predictCut({
    section: { ...section, profile: () => profile },
    material,
    blade: published.blade,
    shop: defaultShop,
    pitch: published.pitch === "" ? undefined : readPitch(published.pitch),
  });
  const factor = perUnit[published.unit];
  const middle = Math.sqrt(published.low * published.high) * factor;
  return {
    published,
    group: material.group!.name,
    low: rateLow / factor,
    nominal: rate / factor,
    high: rateHigh / factor,
    ratio: rate / middle,
    inside: rateLow <= middle && middle <= rateHigh,
  };
};

/** Every published rate with what is predicted for it. */
export const compared = (): readonly Compared[] => publishedRates.map(compare);

/** Geometric mean of the ratios, their scatter ×/÷, and how many middles lie between low and high. */
export function summary(rows: readonly Compared[]): {
  readonly mean: number;
  readonly scatter: number;
  readonly inside: number;
} {
  const logs = rows.map((r) => Math.log(r.ratio));
  const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
  const squares = logs.reduce((a, b) => a + (b - mean) ** 2, 0);
  return {
    mean: Math.exp(mean),
    scatter: Math.exp(Math.sqrt(squares / (logs.length - 1))),
    inside: rows.filter((r) => r.inside).length,
  };
}
