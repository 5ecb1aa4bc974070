import { expect, it } from "vitest";
import { shapeFamily } from "../../src/size/shapeFamily";
import { refusal } from "../section/fixture";

it.each([
  ["round bar", "round"],
  ["rnd dia", "round"],
  ["sq tube", "box"],
  ["tube rect", "box"],
  ["round tube", "tube"],
  ["square box", "box"],
  ["hss square tube", "hss"],
  ["pipe dia", "pipe"],
  ["beam w", "rolled"],
  ["hss rect tube", "hss"],
  ["box rect", "box"],
  ["square pipe", "box"],
  ["rect pipe tube", "box"],
  ["pipe tube", "pipe"],
  ["box pipe", "box"],
  ["c channel", "rolled"],
  ["bar", "bar"],
  ["beam", "vague"],
  ["", "none"],
])("%s is %s (common practice, no source)", (words, family) => {
  expect(
    shapeFamily(
      words.split(" ").filter((word) => word !== ""),
      words,
    ).family,
  ).toBe(family);
});
it.each(["round square", "round hex tube", "w c", "angle tube", "round w"])("%s: two shapes", (words) => {
  expect(refusal(() => shapeFamily(words.split(" "), words)).sentence).toContain("two shapes named");
});
