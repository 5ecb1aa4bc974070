import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Shop } from "../shop/shop";

/**
 * Power that the running band takes with no work in it: the shop's own figure, else 150 W + 0.15 of the motor, at most
 * 0.35 of it; 300 W where no motor is named.
 * @param shop motor and idle power [W]
 * @returns idle power [W]
 * @source judgement and memory: see data/cuttingConstants
 */
export function idlePower({ idlePower: own, motorPower }: Shop): number {
  if (own !== undefined) return own;
  if (motorPower === undefined) return k.unknownIdle.value;
  return Math.min(k.idleMost.value * motorPower, k.idleBase.value + k.idleShare.value * motorPower);
}
