import { expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { solveCut } from "../../src/cutting/solveCut";
import { scenarios } from "../../src/cutting/scenarios";
import { work } from "./fixture";

it("moves the rate with the scenario: the usual rate ×/÷1.6 where nothing else binds (judgement)", () => {
  const at = (scenario: keyof typeof scenarios): number =>
    solveCut({ work: work("flat 6x1", "A36"), pitch: readPitch("2/3"), scenario: scenarios[scenario] }).run.rate;
  expect(at("nominal") / at("low")).toBeCloseTo(1.6, 9);
  expect(at("high") / at("nominal")).toBeCloseTo(1.6, 9);
});
