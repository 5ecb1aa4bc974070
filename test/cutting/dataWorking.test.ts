import { expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { dataWorking } from "../../src/cutting/dataWorking";
import { work } from "./fixture";

it.each([
  ["nothing", {}, true],
  ["maximum feed", { maximumFeed: 20 }, false],
  ["feed force", { maximumFeedForce: 4000, bandWidth: 34 }, false],
  ["motor power", { motorPower: 4000 }, false],
  ["a spread of its own", { rateSpread: 1.3 }, false],
] as const)(
  "%s given: low and high are rate ÷ and × S only where nothing limits the saw (docs/method.md)",
  (_, saw, plain) => {
    const steps = dataWorking.steps({ ...work("round 4", "4140", "bi-metal", saw), pitch: readPitch("3/4") });
    const formula = (name: string) => steps.find((step) => step.name === name)!.formula;
    expect(formula("low rate")).toBe(plain ? "rate / S" : "Σ the cut again with everything uncertain against it");
    expect(formula("high rate")).toBe(plain ? "rate × S" : "Σ the cut again with everything uncertain for it");
  },
);
