import { expect, it } from "vitest";
import { readPitch } from "../../src/cutting/readPitch";
import { teeth } from "../../src/cutting/teeth";
import { shape } from "./fixture";

it("counts the teeth of a size, and refuses an area without a shape", () => {
  expect(teeth({ section: shape("flat 6x1"), pitch: readPitch(2) })).toEqual({ mean: expect.closeTo(12, 9), most: expect.closeTo(12, 9), fewest: expect.closeTo(12, 9) });
  expect(() => teeth({ section: shape("area 20"), pitch: readPitch(2) })).toThrow(/shape/);
});
