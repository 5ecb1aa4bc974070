import { describe, expect, it } from "vitest";
import { readSymptom } from "../../src/cutting/readSymptom";
import { symptoms } from "../../src/data/symptoms";
import { anyRefusal as refusal } from "../section/fixture";

describe("a symptom as it is typed (names: common practice, no source)", () => {
  it.each([
    ["Teeth broken off", "teeth broken off", undefined],
    ["teeth stripped, new blade", "teeth broken off", "new"],
    ["OLD BLADE - crooked", "cut not square", "old"],
    ["the band slips all the time", "band stops or slips", undefined],
    ["it stalls in the cut, old blade", "band stops or slips", "old"],
    ["back cracks", "cracks in the back", undefined],
  ] as const)("%s", (text, name, blade) => {
    expect(readSymptom(text)).toEqual({ symptom: symptoms().find((s) => s.name === name), blade });
  });

  it("every name and other name finds its own symptom", () => {
    for (const s of symptoms())
      for (const name of [s.name, ...s.alsoTyped]) expect(readSymptom(name).symptom.name).toBe(s.name);
  });

  it.each(["", "new blade", "flying pigs"])('refuses "%s" and lists the names', (text) => {
    expect(refusal(() => readSymptom(text))).toMatchObject({ reason: "none", parameter: "symptom" });
    expect(refusal(() => readSymptom(text)).sentence).toMatch(/cut not square, teeth broken off/);
  });
});
