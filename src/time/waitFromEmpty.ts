import { timeConstants as k } from "../data/timeConstants";
import { minutesPerHour } from "../quantities";
import { reflectedMean } from "../statistics/reflectedMean";
import type { Queue } from "./longRunWait";

/** Mean of the reflected motion over 0 to T, in the root of the time: Simpson's rule. */
function meanOver(drift: number, variance: number, end: number): number {
  const steps = k.steps.value;
  let sum = 0;
  for (let i = 1; i <= steps; i += 1) {
    const x = i / steps;
    const weight = i === steps ? 1 : i % 2 === 1 ? 2 * 2 : 2;
    sum += weight * 2 * x * reflectedMean({ drift, variance, time: x * x * end });
  }
  return sum / (steps + steps + steps);
}

/**
 * Mean wait for a saw of the jobs that come in the first hours, the saws empty at the start: with e = mean·(1 + cs²)/2,
 * v = 2·u·e/saws, R = mean over T of Brownian motion of drift u − 1 and variance v held back at 0, R0 = (2/3)·√(2·v·T/π),
 * k = (0.9 − 0.4/saws)·e: R·min(1, u)^(√(2(saws + 1)) − 2)·(1 − min(1, R/R0)·k/(max(R, R0) + k)). For long times and u < 1
 * it is longRunWait. Against simulations from 90 % up: within 15 % for 1 to 4 saws and 20 % for up to 8 with cs² up to 1.3;
 * within 25 % for up to 4 saws with cs² up to 5; no job over half of the hours.
 * @param queue share u, saws [-]; mean [min]; variation cs² [-]
 * @param hours after the start [h]
 * @returns the wait [min]
 * @source reflected Brownian motion in heavy traffic: Harrison, and Abate and Whitt 1987 (from memory); its correction k is fitted to our own simulations
 */
export function waitFromEmpty({ share, saws, mean, variation }: Queue, hours: number): number {
  const end = hours * minutesPerHour;
  const each = (mean * (1 + variation)) / 2;
  const variance = (2 * share * each) / saws;
  const moved = meanOver(share - 1, variance, end);
  // The same without drift: the mean of √(2vt/π) over 0 to T has two thirds of its end.
  const still = (2 / (1 + 2)) * Math.sqrt((2 * variance * end) / Math.PI);
  const first = (k.jobEffect.value - k.sawEffect.value / saws) * each;
  const free = Math.min(1, share) ** (Math.sqrt(2 * (saws + 1)) - 2);
  return moved * free * (1 - (Math.min(1, moved / still) * first) / (Math.max(moved, still) + first));
}
