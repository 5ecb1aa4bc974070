import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { cutCheck } from "../../src/cutting/cutCheck";
import { cutData } from "../../src/cutting/cutData";
import { readSymptom } from "../../src/cutting/readSymptom";
import { symptoms } from "../../src/data/symptoms";
import { InputError } from "../../src/errors";
import type { Shop } from "../../src/shop/shop";
import { work } from "./fixture";
import { said } from "./phrases";

const coached = (symptom: string, saw: Partial<Shop> = {}, grade = "A36", speed = 84_430, minutes = 1.23) =>
  cutCheck({
    ...work("round 4", grade, "bi-metal", { ...saw, given: Object.keys(saw) }),
    pitch: readPitch("3/4"),
    bandSpeed: speed,
    minutes,
    symptom: readSymptom(symptom),
  });

describe("what CUTCHECK says of a symptom", () => {
  it("stop line first, causes with number and check, what would place it better, then the verdict", () => {
    const text = said(coached("band slips", { bandTension: 138 }).verdict);
    expect(text).toMatch(/^Feed off and stop at once: a standing band/);
    expect(text).toMatch(
      /Most likely the first: 1\. band too slack \(tension 20 ksi\)\. Check, stopped and locked out: /,
    );
    expect(text).toMatch(/Give Motor power to place this better\./);
    expect(text).toMatch(
      /As it is set: Leave it as it is: 10\.2 in²\/min is within the usual 5\.99 in²\/min to 17\.3 in²\/min\.$/,
    );
    expect(text.match(/ \d\. /g)!.length).toBeLessThanOrEqual(4);
  });

  it("nothing out of the way: the usual order is said to be that", () => {
    expect(said(coached("cut not square").causes)).toMatch(/show nothing out of the way; in the usual order: 1\. dull/);
  });

  it("no text keeps a hole or a bracket, whatever is known, for every symptom; figures have three digits", () => {
    const saws: readonly Partial<Shop>[] = [
      {},
      { wheelDiameter: 430, bandLength: 3400, bandThickness: 1.3, bandWidth: 34, guideGap: 200, motorPower: 900 },
    ];
    for (const { name } of symptoms())
      for (const saw of saws)
        for (const grade of ["A36", "304", "tantalum"]) {
          const text = said(coached(`${name}, old blade`, saw, grade, 40_000, 5).verdict);
          expect(text).not.toMatch(/[{}[\]]|NaN|undefined|Infinity/);
          for (const [, digits] of text.matchAll(/(?<![\d/.])(\d+\.\d+)(?![\d/])/g))
            expect(digits!.replace(".", "").replace(/^0+/, "").length, text).toBeLessThanOrEqual(3);
        }
  });

  it("1.3 mm round a wheel of 430 mm is bent to 206000 · 1.3 / 430 = 622.8 MPa, 90.3 ksi (beam bending)", () => {
    const text = said(coached("broke at the weld", { wheelDiameter: 430, bandThickness: 1.3, bandWidth: 27 }).causes);
    expect(text).toMatch(/bent to 90\.3 ksi at every turn/);
  });

  it("marks of 0.4 in/min, 13 ft, 95 ft/min lie 0.4 · 13 / 95 = 0.0547 in apart (kinematics)", () => {
    const text = said(coached("wavy lines, new blade", { bandLength: 13 * 304.8 }, "304", 95 * 304.8, 4 / 0.4).causes);
    expect(text).toMatch(/once a turn of the band is feed × band length \/ band speed apart, here 0\.0547 in\./);
  });

  it("where nothing can be predicted: stop line, the usual order, and the reason as the verdict", () => {
    const got = coached("dull too soon, old blade", {}, "tantalum");
    expect(said(got.verdict)).toMatch(/the blade .*old blade.*As it is set: No cutting data for/);
    expect(got.bandSpeedToSet).toBeInstanceOf(InputError);
    expect(got.rate).toBeGreaterThan(0);
  });

  it("without a symptom nothing of it is said", () => {
    const plain = work("round 4", "A36", "bi-metal");
    const got = cutCheck({ ...plain, pitch: readPitch("3/4"), bandSpeed: 84_430, minutes: 1.23 });
    expect(got.causes).toBe("");
    expect(said(got.verdict)).toMatch(/^Leave it/);
  });

  it("a cut run exactly as CUTDATA advises is faulted for no symptom: no number of its setting raises a cause", () => {
    // A saw that runs no faster (aluminium on a general saw) may be too slow for the work: that is no fault of the setting.
    const set =
      /times the usual feed|what the metal takes|[1-9]\.\d+ times the speed wanted|filled 1\.[3-9]| where .* suits/;
    for (const size of ["round 1", "round 4", "round 10", "flat 6x1", "square 3", "tube 6x0.5", "round 2 bundle 3x3"])
      for (const grade of ["A36", "1045", "4140", "304", "17-4PH", "D2", "6061", "Ti-6Al-4V"])
        for (const blade of ["bi-metal", "carbide"] as const) {
          let advice;
          try {
            advice = cutData({ ...work(size, grade, blade), pitch: undefined });
          } catch {
            continue;
          }
          for (const { name } of symptoms()) {
            const got = cutCheck({
              ...work(size, grade, blade),
              pitch: readPitch(advice.pitch as string),
              bandSpeed: advice.bandSpeed,
              minutes: advice.minutes,
              symptom: readSymptom(name),
            });
            const raised = said(got.causes).match(/\(([^)]*)\)\. Check/g) ?? [];
            expect(
              raised.filter((r) => set.test(r)),
              `${size} ${grade} ${blade} ${name}`,
            ).toEqual([]);
            expect(said(got.verdict)).toMatch(/As it is set: Leave it as it is/);
          }
        }
  });
});
