import { expect, it } from "vitest";
import { modifierAt } from "../../src/size/modifierAt";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

it.each([
  ["rot 30 deg", { kind: "turn", degrees: 30, length: 3 }],
  ["rotated by 30", { kind: "turn", degrees: 30, length: 3 }],
  ["mitre 45", { kind: "mitre", degrees: 45, length: 2 }],
  ["miter at 22.5 degrees", { kind: "mitre", degrees: 22.5, length: 4 }],
  ["45 deg miter", { kind: "mitre", degrees: 45, length: 3 }],
  ["nested", { kind: "nested", length: 1 }],
  ["round 7", undefined],
  ["7 round", undefined],
])("%s (common practice, no source)", (text, modifier) => {
  expect(modifierAt(sizeTokens(text), 0)).toEqual(modifier);
});
it("an angle without a number, or without saying what it is, is refused", () => {
  for (const text of ["rot w", "rot", "rot by", "rot at w"])
    expect(refusal(() => modifierAt(sizeTokens(text), 0))).toEqual({
      reason: "invalid",
      parameter: "section",
      sentence: '"rot" needs its angle in degrees, for example rot 30',
    });
  expect(refusal(() => modifierAt(sizeTokens("45 deg"), 0)).sentence).toContain("say what the angle is");
});
