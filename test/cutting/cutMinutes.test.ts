import { expect, it } from "vitest";
import { cutMinutes } from "../../src/cutting/cutMinutes";
import { prepareCut } from "../../src/cutting/prepareCut";
import { runCut } from "../../src/cutting/runCut";
import { nominal } from "../../src/cutting/wayDown";
import { work } from "./fixture";

const saws = [
  {},
  { motorPower: 750 },
  { maximumFeed: 20 },
  { bandWidth: 20 },
  { bandWidth: 20, motorPower: 1500, maximumFeed: 60, feedMode: "constant feed" as const },
];
const sizes = ["round 60 mm", "flat 200x20 mm", "tube 150x8 mm", "HEB 200", "round 50 mm bundle 2x3"];
const cases = () =>
  sizes.flatMap((size) => saws.map((saw) => ({ ...work(size, "4140", "bi-metal", saw), pitch: undefined })));

it("rectangle without a saw: area / (speed × bite × its share of six teeth), by hand", () => {
  const cut = prepareCut({ ...work("flat 200x20 mm on edge", "A36"), pitch: undefined });
  const share = Math.min(1, 20 / (6 * cut.plan.target));
  const bite = Math.min(cut.bite * share, cut.room) * cut.pitchFactor;
  expect(cutMinutes(cut, nominal).minutes).toBeCloseTo(4000 / (cut.speeds.speed * bite), 9);
});

it("minutes, rate and push are those of the whole run, on every saw", () => {
  for (const one of cases()) {
    const cut = prepareCut(one);
    const { minutes, rate, pushed, pushedChip } = runCut(cut, nominal);
    expect(cutMinutes(cut, nominal)).toEqual({ minutes, rate, pushed, pushedChip });
  }
});
