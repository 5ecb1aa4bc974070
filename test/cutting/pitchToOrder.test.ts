import { expect, it } from "vitest";
import { pitchToOrder } from "../../src/cutting/pitchToOrder";
import { readPitch } from "../../src/cutting/readPitch";
import { work } from "./fixture";

it("is written as it is ordered", () => {
  expect(pitchToOrder(work("round 7", "A36"))).toBe("2/3");
  expect(pitchToOrder(work("round 7", "A36", "bi-metal", { pitchesStocked: [readPitch(3)] }))).toBe("3");
});
