import { expect, it } from "vitest";
import { sectionData } from "../../src/section/sectionData";
import { shape } from "./fixture";

it("figures of a round (geometry) and how it was read", () => {
  const data = sectionData({ section: shape("RND 100", "metric") });
  expect(data).toEqual({
    area: expect.closeTo(2500 * Math.PI, 6),
    height: expect.closeTo(100, 9),
    meanWidth: expect.closeTo(25 * Math.PI, 9),
    maximumWidth: expect.closeTo(100, 9),
    longestContact: expect.closeTo(100, 9),
    thinnestContact: expect.closeTo(60, 0),
    read: "round 100 mm, millimetres assumed",
  });
});
