import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { InputError, orRefusal } from "../../src/errors";
import { readSection } from "../../src/section/readSection";
import { plainParts } from "../../src/size/plainParts";
import { sizeModifiers } from "../../src/size/sizeModifiers";
import { sizeParts } from "../../src/size/sizeParts";
import { sizePhrases } from "../../src/size/sizePhrases";
import { sizeTokens } from "../../src/size/sizeTokens";

const number = fc
  .tuple(fc.integer({ min: 0, max: 99_980_000 }), fc.integer({ min: 0, max: 6 }))
  .map(([n, digits]) => (n / 1e4).toFixed(digits));
const plain = fc
  .tuple(
    fc.constantFrom("round", "square", "hex", "flat", "tube", "box"),
    fc.array(number, { minLength: 1, maxLength: 3 }),
    fc.constantFrom("", " in", " mm"),
  )
  .map(([word, numbers, unit]) => `${word} ${numbers.join("x")}${unit}`);

describe("sizes in their plainest writing", () => {
  it("have the parts that the full reader finds", () => {
    fc.assert(
      fc.property(plain, (text) => {
        expect(plainParts(text)).toEqual(sizeParts(sizeModifiers(sizePhrases(sizeTokens(text))).bar));
      }),
      { numRuns: 2000 },
    );
  });

  it("mean what the same size means in capitals, which the full reader takes", () => {
    const read = (text: string) => {
      const found = orRefusal(() => readSection(text, "metric"));
      return found instanceof InputError ? { problem: found.problem } : found;
    };
    fc.assert(
      fc.property(plain, (text) => {
        expect(plainParts(text.toUpperCase())).toBeUndefined();
        expect(read(text)).toEqual(read(text.toUpperCase()));
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    "round 3/4",
    "round 7 on edge",
    "flat 6",
    "W12x50",
    "round 1,234",
    "round 7 ",
    "round 1.2.3",
    "round 7e3",
    "",
  ])("%j is left to the full reader, or read as it", (text) => {
    if (text === "flat 6") expect(plainParts(text)?.numbers).toHaveLength(1);
    else expect(plainParts(text)).toBeUndefined();
  });
});
