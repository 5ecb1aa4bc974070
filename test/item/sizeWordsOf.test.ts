import { expect, it } from "vitest";
import { sizeWordsOf } from "../../src/item/sizeWordsOf";
import { lineOf, taken } from "./line";

it("sorts the rest of a line (common practice, no source)", () => {
  const line = lineOf("urgent square tube 2 x 2 x .25 HR - and halbrund W12-50");
  const { atoms, withUnread, otherShape } = sizeWordsOf(line);
  expect(atoms.map((i) => line.atoms[i]!.text).join(" ")).toBe("square tube 2 x 2 x .25 hr w 12 - 50");
  expect(withUnread.map((i) => line.atoms[i]!.text)[0]).toBe("urgent");
  expect(otherShape).toBe("halbrund");
  expect(taken(line, "unread")).toBe("urgent");
  expect(taken(line, "read")).toBe("- and halbrund");
});

const size = (text: string) => {
  const line = lineOf(text);
  return sizeWordsOf(line)
    .atoms.map((i) => line.atoms[i]!.text)
    .join(" ");
};
it.each([
  ["he 200 b", "he 200 b"],
  ["he 200 aa", "he 200 aa"],
  ["ipe a 300", "ipe a 300"],
  ["ipe 300 a", "ipe 300"],
  ["ipe 200 b", "ipe 200"],
  ["l 50x50x5", "l 50 x 50 x 5"],
  ["round 50 l", "round 50"],
  ["l", "l"],
  ["round 3-1/2", "round 3-1/2"],
  ["W12/50", "w 12/50"],
  ["W12-50", "w 12 - 50"],
  ["W12- 50", "w 12 50"],
  ["round 3 - 5", "round 3 5"],
  ["round 3 -5", "round 3 5"],
  ["round 3- 5", "round 3 5"],
  ["round 3-5", "round 3 - 5"],
  ["round 3 = 5", "round 3 5"],
])("%s: %s is the size (common practice, no source)", (text, words) => {
  expect(size(text)).toBe(words);
});
