import { describe, expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { plainBar } from "../../src/size/plainBar";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const numbers = (text: string) => sizeTokens(text).filter(({ kind }) => kind === "number");

describe("plainBar (EN 10058 to EN 10061: sharp nominal corners)", () => {
  it.each([
    ["round", "50 mm", { kind: "round", diameter: 50 }],
    ["square", "50 mm x 50 mm", { kind: "square", across: 50 }],
    ["hexagon", "50 mm", { kind: "hexagon", across: 50 }],
    ["octagon", "50 mm", { kind: "octagon", across: 50 }],
    ["flat", "10 mm x 50 mm", { kind: "flat", width: 50, thickness: 10 }],
    ["tee", "60x50x6", { kind: "tee", width: 60, depth: 50, web: 6, flange: 6, slope: 0, root: 0, toe: 0 }],
  ] as const)("%s %s", (family, text, shape) => {
    expect(plainBar(family, numbers(text), "inch").shape).toEqual(shape);
  });
  it.each([
    ["round", "", '"round" has no dimensions; round needs one dimension'],
    ["round", "3x20", "found 2 dimensions. The cut length does not belong in the size"],
    ["flat", "6", "found 1 dimension"],
    ["square", "6x4", "found 2 dimensions"],
    ["tee", "4x4x4", "thickness of a tee must be smaller"],
  ] as const)("%s %s is refused: %s", (family, text, part) => {
    expect(refusal(() => plainBar(family, numbers(text), "inch")).sentence).toContain(part);
  });
});

it.each([
  ["round", "5", "id", "round"],
  ["round", "5", "wall", "round"],
  ["hexagon", "5", "wall", "hex"],
  ["square", "5", "id", "square"],
  ["flat", "6 x 1", "id", "flat"],
] as const)("%s %s called %s is refused", (family, text, tag, name) => {
  const tagged = numbers(text).map((token) => ({ ...token, tag }));
  expect(refusal(() => plainBar(family, tagged, "inch"))).toEqual({
    reason: "invalid",
    parameter: "section",
    sentence: `a solid ${name} has no wall and no inside diameter; for a hollow bar write tube or square tube`,
  });
});

it("a wall is refused for a round, and is the thickness of a flat; sizes of a tee keep their order", () => {
  const text = (size: string) => readSection(size, "inch").text;
  expect(() => text("round 6 x 0.5 wall")).toThrow();
  expect(text("flat 1x6")).toBe("flat 6 in x 1 in");
  expect(text("tee 3x4x1/2")).toBe("tee 3 in x 4 in x 0.5 in");
});
