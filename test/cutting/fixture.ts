import { readFileSync } from "node:fs";
import type { Pitch } from "../../src/blade/pitch";
import { predictCut } from "../../src/cutting/predictCut";
import { readPitch } from "../../src/blade/readPitch";
import type { BladeClass } from "../../src/blade/bladeClass";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Profile } from "../../src/section/profile";
import type { Shape } from "../../src/section/shape";
import { defaultShop } from "../../src/shop/defaultShop";
import type { Shop } from "../../src/shop/shop";

const read = (name: string): string => readFileSync(new URL(`../data/cutting/${name}`, import.meta.url), "utf8");

export interface Check {
  readonly id: string;
  readonly input: string;
  readonly output: string;
  readonly expected: number;
  readonly unit: string;
  readonly tol: string;
  readonly source: string;
}
const checks = JSON.parse(read("checks.json")) as readonly Check[];
/** A check value by its id; its source belongs in the test's title. */
export const check = (id: string): Check => checks.find((c) => c.id === id)!;
export const checkIds = checks.map((c) => c.id);

/** One cut of a second program of docs/method.md; rates [in²/min], speed [ft/min], chip [µm, mean over the area]. */
export interface ReferenceRow {
  readonly section: string;
  readonly material: string;
  readonly blade: BladeClass;
  readonly saw: Partial<Shop>;
  readonly typed: string;
  readonly pitch: string;
  readonly teeth: string;
  readonly speed: number;
  readonly chip: number;
  readonly low: number;
  readonly rate: number;
  readonly high: number;
  readonly minutes: number;
  readonly limit: string;
  readonly share: number;
}

const labels = new Map([
  ["greatestBandSpeed", "maximumBandSpeed"],
  ["leastBandSpeed", "minimumBandSpeed"],
  ["greatestFeed", "maximumFeed"],
]);

const sawOf = (text: string): Partial<Shop> =>
  Object.fromEntries(
    [...text.matchAll(/(\w+)=(constant feed|\S+)/g)].map(([, key, value]) => [
      labels.get(key!) ?? key!,
      Number.isNaN(Number(value)) ? value! : Number(value),
    ]),
  );

export const referenceRows: readonly ReferenceRow[] = read("referenceRows.csv")
  .trim()
  .split("\n")
  .slice(2)
  .map((line) => {
    const cells = [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((m) => m[1] ?? m[2] ?? "");
    const [section, material, blade, saw, typed, pitch, teeth, ...numbers] = cells as [
      string,
      string,
      BladeClass,
      string,
      string,
      string,
      string,
      ...string[],
    ];
    const [speed, chip, low, rate, high, minutes] = numbers.map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    const limit = cells[13]!.replace("greatest feed", "maximum feed");
    return {
      section,
      material,
      blade,
      saw: sawOf(saw),
      typed,
      pitch,
      teeth,
      speed,
      chip,
      low,
      rate,
      high,
      minutes,
      limit,
      share: Number(cells[14]),
    };
  });

export const shape = (size: string, units: "inch" | "metric" = "inch"): Shape => {
  const section = readSection(size, units);
  let profile: Profile | undefined;
  return { ...section, profile: () => (profile ??= sectionProfile(section)) };
};
export const shop = (part: Partial<Shop> = {}): Shop => ({ ...defaultShop, ...part });
export const work = (
  size: string | Shape,
  material: string,
  blade: BladeClass = "bi-metal",
  saw: Partial<Shop> = {},
) => ({
  section: typeof size === "string" ? shape(size) : size,
  material: findMaterial(material, []),
  blade,
  shop: shop(saw),
});
export const predict = (
  size: string | Shape,
  material: string,
  blade: BladeClass = "bi-metal",
  saw: Partial<Shop> = {},
  pitch?: string,
) =>
  predictCut({
    ...work(size, material, blade, saw),
    pitch: pitch === undefined ? undefined : (readPitch(pitch) as Pitch),
  });

export const inch2 = 645.16;
