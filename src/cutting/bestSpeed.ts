import type { Cut, CutRun } from "./cut";
import { runCut } from "./runCut";

/**
 * When the motor limits a cut, slows the band instead of thinning the chip: tries speeds 0.88^k down to the slowest
 * sensible one, then ±10 % in steps of 2.5 % and ±2 % in steps of 0.5 % round the best, and keeps the shortest time,
 * of equal times the slowest (below 5 µm the force law is flat and so is the time; the best lies at the slow end).
 * @param input cut; slowest band speed of the saw [mm/min]; wanted speed of the group [mm/min]
 * @returns the run and its speed [mm/min]
 * @source judgement: a search, so that a faster saw is slower by 0.51 % at most (random cuts of test/cutting)
 */
export function bestSpeed({
  cut,
  slowest,
  wanted,
}: {
  readonly cut: Cut;
  readonly slowest: number;
  readonly wanted: number;
}): { readonly run: CutRun; readonly speed: number } {
  let best = { run: runCut(cut), speed: cut.speed };
  if (best.run.shares[5] === 0) return best;
  const least = Math.max(slowest, Math.min(10_000, 0.2 * wanted));
  const offer = (speed: number) => {
    if (speed < least || speed > cut.speed) return;
    const run = runCut({ ...cut, speed });
    if (run.minutes <= best.run.minutes * (1 + 1e-9)) best = { run, speed };
  };
  for (let speed = cut.speed * 0.88; speed >= least; speed *= 0.88) offer(speed);
  for (const width of [0.025, 0.005]) {
    const around = best.speed;
    for (const step of [-4, -3, -2, -1, 1, 2, 3, 4]) offer(around * (1 + width * step));
  }
  return best;
}
