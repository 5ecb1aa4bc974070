import { expect, it } from "vitest";
import { numberWords } from "../../../functions/kinds/units";

it("reads aloud: number in inches, amount per hour", () => {
  expect(numberWords("size", "inch")).toBe("number in inches");
  expect(numberWords("areaRate", "inch")).toBe("number in square inches per minute");
  expect(numberWords("bandSpeed", "metric", "whole number")).toBe("whole number in m/min");
  expect(numberWords("moneyPerHour", "inch")).toBe("amount per hour");
  expect(numberWords("ratio", "inch")).toBe("number");
});
