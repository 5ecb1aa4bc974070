import { expect, it } from "vitest";
import { rolledBar } from "../../src/size/rolledBar";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const bar = (word: string, text: string) =>
  rolledBar(
    word,
    sizeTokens(text).filter(({ kind }) => kind === "number"),
  );

it.each([
  ["wf", "12x50", "W12X50", 14.6 * 645.16], // ASTM A6/A6M
  ["w", "310x74", "W12X50", 14.6 * 645.16],
  ["ipb", "200", "HEB 200", 7810], // EN 10365
  ["ipea", "300", "IPE A 300", 4650], // EN 10365
  ["ipe", "750x147", "IPE 750x147", 18800], // EN 10365
  ["pfc", "200x90x30", "PFC 200x90x30", 3790], // EN 10365
])("%s %s is %s", (word, text, canonical, area) => {
  expect(bar(word, text)).toMatchObject({ text: canonical, area: expect.closeTo(area, 6) });
});
it.each([
  ["w", "12x51", "none", "W12x51 is not in the tables; nearest: W12X50, W12X53, W12X45"],
  ["w", "310x75", "none", "nearest: W310X74, W310X79, W310X67"],
  ["heb", "210", "none", "nearest: HEB 220, HEB 200, HEB 240"],
  ["w", "12", "invalid", "needs the weight too"],
  ["w", "12x50x20", "invalid", "The cut length does not belong in the size"],
  ["ub", "305x165", "invalid", "not a whole designation"],
  ["he", "200", "invalid", "which series"],
  ["upn", "", "invalid", "has no numbers"],
])("%s %s is refused (%s): %s", (word, text, why, part) => {
  const { reason, sentence } = refusal(() => bar(word, text));
  expect(sentence).toContain(part);
  expect(reason).toBe(why);
});
