import { readFileSync } from "node:fs";
import type { Pitch } from "../../src/blade/pitch";
import { predictCut } from "../../src/cutting/predictCut";
import { readPitch } from "../../src/blade/readPitch";
import type { BladeClass } from "../../src/blade/bladeClass";
import { findMaterial } from "../../src/material/findMaterial";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Profile } from "../../src/section/section";
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

export interface ReferenceRow {
  readonly n: number;
  readonly material: string;
  readonly blade: BladeClass;
  readonly section: string;
  readonly saw: "none" | "small" | "medium" | "large";
  readonly feed: "rate" | "feed";
  readonly pitch: string;
  readonly speed: number;
  readonly chip: number;
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  readonly minutes: number;
  readonly binds: string;
  readonly share: number;
}
export const referenceRows = JSON.parse(read("referenceRows.json")) as readonly ReferenceRow[];

/** The three invented saws of the reference rows. */
export const saws: Readonly<Record<ReferenceRow["saw"], Partial<Shop>>> = {
  none: {},
  small: {
    motorPower: 1100,
    idlePower: 300,
    bandWidth: 27,
    bandThickness: 0.9,
    bandTension: 200,
    minimumBandSpeed: 20_000,
    maximumBandSpeed: 80_000,
    maximumFeed: 250,
  },
  medium: {
    motorPower: 4000,
    idlePower: 600,
    bandWidth: 34,
    bandThickness: 1.1,
    bandTension: 250,
    minimumBandSpeed: 15_000,
    maximumBandSpeed: 100_000,
    maximumFeed: 500,
  },
  large: {
    motorPower: 9000,
    idlePower: 1000,
    bandWidth: 54,
    bandThickness: 1.6,
    bandTension: 300,
    minimumBandSpeed: 10_000,
    maximumBandSpeed: 150_000,
    maximumFeed: 1000,
  },
};

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
