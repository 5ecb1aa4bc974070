import type { SawWork } from "./sawWork";

/**
 * Where the minutes of a line go: cuts and loads run = cycles·(cut + handling minutes) + loads·load minutes; each blade
 * takes change + break-in minutes, and blades n = area/life.
 * @param work counts [-], minutes [min], area and life [mm²]
 * @returns run and perBlade [min], blades [-]; sawing = run + perBlade·blades, set-up left out [min]
 * @source common practice; change minutes·area/life: P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7
 */
export function lineMinutes(work: SawWork): {
  readonly run: number;
  readonly perBlade: number;
  readonly blades: number;
  readonly sawing: number;
} {
  const run = work.cycles * (work.cutMinutes + work.handlingMinutes) + work.loads * work.loadMinutes;
  const perBlade = work.changeMinutes + work.breakInMinutes;
  const blades = work.area / work.life;
  return { run, perBlade, blades, sawing: run + perBlade * blades };
}
