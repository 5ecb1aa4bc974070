import { expect, it } from "vitest";
import { idlePower } from "../../src/cutting/idlePower";
import { shop } from "./fixture";

it("the shop's own, else 150 W + 0.15 of the motor, at most 0.35 of it (judgement); 300 W without a motor (memory)", () => {
  expect(idlePower(shop({ idlePower: 420, motorPower: 1000 }))).toBe(420);
  expect(idlePower(shop({ motorPower: 4000 }))).toBeCloseTo(750, 9);
  expect(idlePower(shop({ motorPower: 500 }))).toBeCloseTo(175, 9);
  expect(idlePower(shop())).toBe(300);
});
