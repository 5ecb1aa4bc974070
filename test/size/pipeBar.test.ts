import { describe, expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { sectionStack } from "../../src/section/sectionStack";
import { pipeBar } from "../../src/size/pipeBar";
import { sizeTokens } from "../../src/size/sizeTokens";
import { fixture, refusal } from "../section/fixture";

describe("every row of ASME B36.10M", () => {
  const rows = fixture("pipes.csv");
  it("289 rows", () => {
    expect(rows).toHaveLength(289);
  });
  it("area, diameter and mass: inch sizes against the rounded metric ones, within 0.52 %", () => {
    for (const [nps, schedule, outside, wall, mass] of rows) {
      const section = readSection(`NPS ${nps} Sch ${schedule}`, "metric");
      const area = Math.PI * Number(wall) * (Number(outside) - Number(wall));
      expect(Math.abs(section.area / area - 1) * 100, `${nps} ${schedule}`).toBeLessThan(0.526);
      // The mass is printed to 0.01 kg: half of that on the lightest pipe is 1.4 %.
      expect(Math.abs(section.area * 7.85e-3 - Number(mass))).toBeLessThan(0.0053 * Number(mass) + 0.0051);
      expect(Math.abs(sectionStack(section).height / Number(outside) - 1)).toBeLessThan(0.005);
    }
  });
});

describe("pipeBar", () => {
  it.each([
    ["100", "80", true, "NPS 4 Sch 80"],
    // ASME B36.10M: DN 8 is NPS 1/4, DN 10 is NPS 3/8.
    ["8", "40", true, "NPS 1/4 Sch 40"],
    ["10", "40", true, "NPS 3/8 Sch 40"],
    ["1-1/2", "xxs", false, "NPS 1-1/2 Sch XXS"],
    ["10", "80s", false, "NPS 10 Sch 80S"],
  ])("%s %s is %s", (size, schedule, metric, text) => {
    expect(pipeBar(sizeTokens(size), schedule, metric).text).toBe(text);
  });
  it("80S of NPS 10 is XS and not 80 (ASME B36.19M, from memory)", () => {
    expect(pipeBar(sizeTokens("10"), "80s", false).shape).toEqual({
      kind: "tube",
      diameter: 10.75 * 25.4,
      wall: 0.5 * 25.4,
    });
  });
  it.each([
    ["7", "40", "none", "is not a standard pipe size (1/8 to 48)"],
    ["4", "45", "none", "listed: 5, 10, 30, 40, 80, 120, 160, STD, XS, XXS"],
    ["4", undefined, "invalid", "needs a schedule or a wall"],
    ["4x2", "40", "invalid", "found 2 numbers"],
    ["", "40", "invalid", "has no size"],
  ])("NPS %s schedule %s: %s, %s", (size, schedule, why, part) => {
    const { reason, sentence } = refusal(() =>
      pipeBar(
        sizeTokens(size).filter(({ kind }) => kind === "number"),
        schedule,
        false,
      ),
    );
    expect(reason).toBe(why);
    expect(sentence).toContain(part);
  });
});
