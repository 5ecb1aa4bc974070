import { describe, expect, it } from "vitest";
import { likelyCauses } from "../../src/cutting/likelyCauses";
import { readSymptom } from "../../src/cutting/readSymptom";
import { conditionNeeds, signConditions } from "../../src/cutting/signConditions";
import { symptoms } from "../../src/data/symptoms";
import { signsOf } from "./signsOf";
import { symptomCases } from "./symptomCases";

describe("the likely causes of a symptom", () => {
  it("of 21 symptoms, 125 causes and 59 conditions, each name known", () => {
    expect(symptoms()).toHaveLength(21);
    expect(symptoms().flatMap((s) => s.causes)).toHaveLength(125);
    expect(Object.keys(signConditions)).toHaveLength(59);
    const used = symptoms().flatMap((s) =>
      s.causes.flatMap((c) => [...c.raisedBy, ...c.loweredBy].map(([name]) => name)),
    );
    expect(used.filter((name) => signConditions[name] === undefined)).toEqual([]);
    expect(Object.keys(conditionNeeds).filter((name) => signConditions[name] === undefined)).toEqual([]);
    expect(symptoms().flatMap((s) => s.causes.filter((c) => c.check === undefined))).toEqual([]);
  });

  it("three cuts of each symptom at least, each with another first cause", () => {
    for (const { name } of symptoms()) {
      const first = symptomCases.filter(([typed]) => readSymptom(typed).symptom.name === name).map((c) => c[8]);
      expect(new Set(first).size, name).toBeGreaterThanOrEqual(3);
    }
  });

  it.each(symptomCases)("%s: %s %s %s %s at %s in %s, %o: %s, since %s (common practice, no source)", (...one) => {
    const { causes } = likelyCauses(signsOf(one as unknown as (typeof symptomCases)[number]));
    const order = causes.map((c) => `${c.key} ${c.score} ${c.raised.join(" ")}`);
    expect(causes[0]!.key, order.join(" | ")).toBe(one[8]);
    expect(causes.length).toBeLessThanOrEqual(4);
  });
});
