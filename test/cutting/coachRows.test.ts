import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { coachRows } from "../../src/cutting/coachRows";
import { readSymptom } from "../../src/cutting/readSymptom";
import { symptomRemedies } from "../../src/data/symptomRemedies";
import { symptoms } from "../../src/data/symptoms";
import { work } from "./fixture";
import { said } from "./phrases";

const rows = (symptom: string, speed: number, minutes: number, pitch = "3/4", grade = "A36") =>
  coachRows({
    ...work("round 4", grade, "bi-metal"),
    pitch: readPitch(pitch),
    bandSpeed: speed * 304.8,
    minutes,
    symptom: readSymptom(symptom),
  });

describe("causes in full", () => {
  it("reasons and remedies stand for the very causes of the table", () => {
    for (const { name, causes } of symptoms())
      expect(symptomRemedies[name]!.slice(2).map((t) => t.split("|")[0])).toEqual(causes.map((c) => c.key));
  });

  it("a band too fast: slow it to what suits, with the reason", () => {
    const [first] = rows("dull too soon", 200, 2.9, "3/4", "304");
    expect(said(first!.raised)).toMatch(/^1\.6\d times the speed wanted$/);
    expect(said(first!.remedy)).toMatch(/^Slow the band to \d+ ft\/min/);
    expect(said(first!.reason).length).toBeGreaterThan(20);
  });

  it("what is set already is not advised", () => {
    const feed = rows("teeth broken off", 275.607, 1.2342).find((r) => r.cause === "feed too heavy")!;
    expect(said(feed.remedy)).toBe("The setting is right already.");
  });

  it("no text keeps a hole, for every symptom, predicted or not", () => {
    for (const { name } of symptoms())
      for (const grade of ["A36", "tantalum"])
        for (const row of rows(name, 100, 5, "10/14", grade))
          for (const text of Object.values(row)) expect(said(text)).not.toMatch(/[{}[\]]|NaN|undefined/);
  });
});
