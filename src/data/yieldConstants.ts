import { constant, type Constant } from "./constant";

/** Constants of bars and pieces. */
// prettier-ignore
export const yieldConstants = {
  lengthSlack: constant(0.5e-6, "mm", "derived", "half a nanometre: above the rounding of any length up to a kilometre, below the least step of an inch or metric size"),
} as const satisfies Record<string, Constant>;
