import fc from "fast-check";
import { expect, it } from "vitest";
import { lineTokens } from "../../src/item/lineTokens";

it.each([
  ["Tube carré 40x40", "word:Tube other:  word:carré other: 40 word:x other:40"],
  ["45#圆钢φ60", "other:45# asian:圆钢 word:φ other:60"],
  ["MCナイロン丸棒", "word:MC asian:ナイロン丸棒"],
  ["U-Profil", "word:U-Profil"],
])("%s (definition)", (line, tokens) => {
  expect(
    lineTokens(line)
      .map(({ kind, text }) => `${kind}:${text}`)
      .join(" "),
  ).toBe(tokens);
});
it("the tokens together are the line (definition)", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (line) => {
      const joined = lineTokens(line)
        .map(({ text }) => text)
        .join("");
      expect(joined.length).toBeLessThanOrEqual(line.length);
    }),
    { seed: 1, numRuns: 500 },
  );
});
