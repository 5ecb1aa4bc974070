import { describe, expect, it } from "vitest";
import { angleBar } from "../../src/size/angleBar";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const bar = (text: string) =>
  angleBar(
    sizeTokens(text).filter(({ kind }) => kind === "number"),
    "inch",
  );

describe("angleBar", () => {
  it.each([
    ["4x4x1/2", "L4X4X1/2", 3.75 * 645.16], // ASTM A6/A6M
    ["3x4x3/8", "L4X3X3/8", 2.49 * 645.16], // ASTM A6/A6M
    ["100x10", "L 100x100x10", 1920], // EN 10056-1
    ["75x100x8", "L 100x75x8", 1350], // EN 10056-1
    ["101.6 mm x 101.6 mm x 12.7 mm", "L4X4X1/2", 3.75 * 645.16],
  ])("%s is %s with its published area", (text, canonical, area) => {
    expect(bar(text)).toMatchObject({ text: canonical, area: expect.closeTo(area, 6) });
  });
  it("a mill size without a published area is calculated; an unlisted one has sharp corners", () => {
    expect(bar("50x30x4")).toMatchObject({ text: "L 50x30x4", notes: ["area calculated"] });
    expect(bar("6x6x0.3")).toMatchObject({
      text: "angle 6 in x 6 in x 0.3 in",
      notes: ["not in the tables: calculated with sharp corners"],
      shape: { root: 0, toe: 0 },
    });
  });
  it.each([
    ["4", "found 1 dimension"],
    ["4x4x1/2x20", "found 4 dimensions. The cut length"],
    ["4x4x4", "not smaller than the 4 in leg"],
    ["6x4.5", "more than half of the 6 in leg"],
  ])("%s is refused: %s", (text, part) => {
    expect(refusal(() => bar(text)).sentence).toContain(part);
  });
});

it("a number called wall is the thickness wherever it stands: L4X3X1/2, 3.25 in² (ASTM A6/A6M)", () => {
  const [wall, ...legs] = sizeTokens("1/2 x 4 x 3").filter(({ kind }) => kind === "number");
  expect(angleBar([{ ...wall!, tag: "wall" }, ...legs], "inch")).toMatchObject({
    text: "L4X3X1/2",
    area: expect.closeTo(3.25 * 645.16, 6),
  });
});
