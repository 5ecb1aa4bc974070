import { expect, it } from "vitest";
import { signFacts } from "../../src/cutting/signFacts";
import { signsOf } from "./signsOf";
import { symptomCases } from "./symptomCases";

it("facts carry three digits, and a number that is not known is no fact", () => {
  const facts = signFacts(signsOf(symptomCases[0]!));
  expect(facts["teeth"]).toMatchObject({ digits: 3 });
  // 3.1416 in over 25.4 / 3.5 mm of pitch
  expect((facts["teeth"] as { number: number }).number).toBeCloseTo((Math.PI * 25.4) / (25.4 / 3.5), 6);
  expect(Object.keys(facts)).not.toContain("motor");
  expect(Object.keys(facts)).not.toContain("guideGap");
  expect(Object.keys(facts)).not.toContain("marks");
});
