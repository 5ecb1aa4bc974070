import { expect, it } from "vitest";
import { sizePhrases } from "../../src/size/sizePhrases";
import { sizeTokens } from "../../src/size/sizeTokens";

const short = (text: string) =>
  sizePhrases(sizeTokens(text))
    .map(({ kind, text: written }) => (kind === "lie" ? `<${written}>` : written))
    .join(" ");

it.each([
  ["flat 6 on edge", "flat 6 <edge>"],
  ["plate 6 on the flat", "plate 6 <flat>"],
  ["w 8 web vertical", "w 8 <web up>"],
  ["angle iron 2", "angle 2"],
  ["wide flange beam 8", "wf 8"],
  ["double extra strong", "xxs"],
  ["pipe x-strong", "pipe xs"],
  ["mill edge flat", "flat"],
  ["he 200 b", "heb 200"],
  ["he b 200", "heb 200"],
  ["he 200 m", "hem 200"],
  ["he 650 x 343", "he 650 x 343"],
  ["ipe a 300", "ipea 300"],
  ["ipe 300 aa", "ipeaa 300"],
  ["ipe 300", "ipe 300"],
  ["constructor", "constructor"],
])("%s becomes %s (common practice; EN 10365 for the series letters)", (text, expected) => {
  expect(short(text)).toBe(expected);
});
