import { InputError } from "../../src/errors";
import type { BladeClass } from "../../src/blade/bladeClass";
import { readPitch } from "../../src/blade/readPitch";
import { predictCut } from "../../src/cutting/predictCut";
import { findMaterial } from "../../src/material/findMaterial";
import type { CutLog } from "../../src/records/loggedCut";
import type { Shape } from "../../src/section/shape";
import type { Shop } from "../../src/shop/shop";
import { shape, shop } from "../cutting/fixture";

/** One line of a log as a test writes it. */
export interface Line {
  readonly size: string;
  readonly grade: string;
  readonly minutes: number | InputError | undefined;
  readonly blade?: BladeClass;
  readonly pitch?: string;
  readonly out?: boolean;
  readonly saw?: Shop | InputError;
}

const shapes = new Map<string, Shape>();
const shapeOf = (size: string): Shape => {
  if (!shapes.has(size)) shapes.set(size, shape(size));
  return shapes.get(size)!;
};
const plain = shop();

export const logOf = (lines: readonly Line[]): CutLog => ({
  section: lines.map((l) => (l.size === "" ? undefined : shapeOf(l.size))),
  material: lines.map((l) => (l.grade === "" ? undefined : findMaterial(l.grade, []))),
  blade: lines.map((l) => l.blade ?? "bi-metal"),
  minutes: lines.map((l) => l.minutes),
  pitch: lines.map((l) => (l.pitch === undefined ? undefined : readPitch(l.pitch))),
  leaveOut: lines.map((l) => l.out),
  shops: lines.map((l) => l.saw ?? plain),
});

/** Minutes that CUTDATA predicts on a saw whose rate factor is `factor`. */
export const minutesAt = (size: string, grade: string, factor: number, saw: Shop = plain): number =>
  predictCut({
    section: shapeOf(size),
    material: findMaterial(grade, []),
    blade: "bi-metal",
    pitch: undefined,
    shop: { ...saw, rateFactor: factor },
  }).run.minutes;

/** Normal numbers with a seed (Box and Muller on a linear congruential generator). */
export function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  for (let i = 0; i < 10; i += 1) uniform();
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
