import { expect, it } from "vitest";
import { logLine } from "../../src/cutting/logLine";

const points = [
  [1, 10],
  [10, 20],
  [1000, 20],
  [10_000, 0],
] as const;

it("meets its points, is straight in the logarithm between them, stays above the last (geometry)", () => {
  for (const [x, y] of points) expect(logLine(points, x, "stays")).toBeCloseTo(y, 12);
  expect(logLine(points, Math.sqrt(10), "stays")).toBeCloseTo(15, 12);
  expect(logLine(points, 100, "stays")).toBe(20);
  expect(logLine(points, 1e6, "stays")).toBe(0);
});
it("below the first point it stays, or the first line goes on", () => {
  expect(logLine(points, 0.1, "stays")).toBe(10);
  expect(logLine(points, 0.1, "goes on")).toBeCloseTo(0, 12);
});
