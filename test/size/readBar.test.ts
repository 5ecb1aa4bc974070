import { expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { readBar } from "../../src/size/readBar";
import { sizeParts } from "../../src/size/sizeParts";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const bar = (text: string) => readBar(sizeParts(sizeTokens(text)), text, "inch");

it.each([
  ["4 sch 40", "NPS 4 Sch 40"],
  ["2 sch 40 tube", "NPS 2 Sch 40"],
  ["tube 4x2x.188", "box 4 in x 2 in x 0.188 in wall"],
  ["pipe 4.5x.237", "tube 4.5 in x 0.237 in wall"],
  ["hss 6.625x.28", "tube 6.625 in x 0.28 in wall"],
  ["bar 4x4", "square 4 in"],
  ["bar 4x1", "flat 4 in x 1 in"],
  ["channel 8x11.5", "C8X11.5"],
  ["w12-50", "W12X50"],
  ["tube 2x11ga", "tube 2 in x 0.12 in wall"], // Birmingham gauge 11: 0.120 in
  ["pipe 2x11ga", "tube 2 in x 0.12 in wall"],
  ["box 3x2x11ga", "box 3 in x 2 in x 0.12 in wall"],
  ["hss 3x2x11ga", "HSS 3 in x 2 in x 0.12 in wall"],
])("%s is %s (common practice, no source)", (text, canonical) => {
  expect(bar(text).text).toBe(canonical);
});
it.each([
  ["6x4", 'which shape is 6x4? Write for example "flat 6x4"'],
  ["3/4", 'Write for example "round 3/4"'],
  ["6x4x1/4", 'Write for example "box 6x4x1/4"'],
  ["bar 6", "say which bar"],
  ["u 200", "say UPN 200"],
  ["beam 12x50", "give the series too"],
  ["round 4 sch 40", "a schedule belongs to a pipe"],
  ["area 5 round", "two shapes"],
  ["area", "an area is written alone"],
  ["rhs 100x5", "found 2 dimensions"],
  ["round tube 60x5x2", "found 3 dimensions"],
  ["flat 6-1x4", '"6-1" is unclear'],
  ["flat 6x11ga", "gauge"],
])("%s is refused: %s", (text, part) => {
  expect(refusal(() => bar(text)).sentence).toContain(part);
});

it("outside and inside diameter without a shape are a tube; one of them, or a wall, is not", () => {
  expect(readSection("6 OD x 5 ID", "inch").text).toBe("tube 6 in x 0.5 in wall");
  expect(() => readSection("6 OD x 5", "inch")).toThrow();
  expect(() => readSection("6 x 5 ID", "inch")).toThrow();
});
