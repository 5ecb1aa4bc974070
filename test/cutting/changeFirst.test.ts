import { expect, it } from "vitest";
import { changeFirst } from "../../src/cutting/changeFirst";
import { predict } from "./fixture";

it.each([
  [() => predict("flat 6x1", "A36"), /Nothing on this saw/],
  [() => predict("tube 2x0.065", "A36"), /finer pitch/],
  [() => predict("round 4", "6061", "bi-metal", {}, "6/10"), /coarser pitch/],
  [() => predict("round 7", "4140", "bi-metal", { motorPower: 1100 }), /idle current/],
  [() => predict("round 16", "17-4PH", "bi-metal", { bandWidth: 27, bandTension: 200 }), /guides closer/],
  [() => predict("flat 6x1", "A36", "bi-metal", { maximumFeed: 20 }), /more bars at once/],
  [() => predict("flat 6x1", "6061"), /top band speed of your saw/],
  [() => predict("flat 6x1", "6061", "bi-metal", { maximumBandSpeed: 150_000 }), /faster band/],
  [
    () => predict("W12x50", "A36", "bi-metal", { feedMode: "constant feed", bandWidth: 34 }),
    /slows only where the work is wide/,
  ],
  [() => predict("flat 6x1", "304", "bi-metal", { minimumBandSpeed: 40_000 }), /slower saw/],
] as const)("says what to change first (%#)", (run, pattern) => {
  expect(changeFirst(run())).toMatch(pattern);
});
