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

/** DN and NPS of ASME B36.10M, table 1. */
const sizes =
  "6=1/8 8=1/4 10=3/8 15=1/2 20=3/4 25=1 32=1-1/4 40=1-1/2 50=2 65=2-1/2 80=3 90=3-1/2 100=4 125=5 150=6 200=8 250=10 300=12 350=14 400=16 450=18 500=20 600=24";
it.each(sizes.split(" ").map((pair) => pair.split("=") as [string, string]))("DN %s is NPS %s", (dn, nps) => {
  const metric = pipeBar(sizeTokens(dn), "40", true);
  expect(metric.text).toBe(`NPS ${nps} Sch 40`);
  expect(pipeBar(sizeTokens(nps), "40", false)).toEqual(metric);
});
it("a pipe says its outside diameter and wall: NPS 4 Sch 40 is 4.5 x 0.237 in (ASME B36.10M)", () => {
  expect(pipeBar(sizeTokens("4"), "40", false).notes).toEqual(["4.5 in outside, 0.237 in wall"]);
});
it("refusals whole", () => {
  const says = (text: string, schedule: string | undefined, metric = false) =>
    refusal(() =>
      pipeBar(
        sizeTokens(text).filter(({ kind }) => kind === "number"),
        schedule,
        metric,
      ),
    );
  const invalid = (sentence: string) => ({ reason: "invalid", parameter: "section", sentence });
  const none = (sentence: string) => ({ reason: "none", parameter: "section", sentence });
  expect(says("7", "40", true)).toEqual(none("DN 7 is not a standard pipe size (6 to 1200)"));
  expect(says("7", "40")).toEqual(none("NPS 7 is not a standard pipe size (1/8 to 48)"));
  for (const unit of ["mm", "cm"]) expect(says(`4 ${unit}`, "40").sentence).toContain("is not a standard pipe size");
  expect(says("1 1/2", undefined)).toEqual(
    invalid('pipe 1-1/2 needs a schedule or a wall, for example "NPS 4 Sch 40" or "pipe 4.5x0.237"'),
  );
  expect(says("", "40")).toEqual(invalid('"pipe" has no size; write for example "NPS 4 Sch 40" or "pipe 4.5x0.237"'));
  expect(says("4x2", "40")).toEqual(
    invalid(
      "a pipe takes its nominal size and a schedule, or outside diameter x wall; found 2 numbers. The cut length does not belong in the size",
    ),
  );
  expect(says("1/8", "45x")).toEqual(none("NPS 1/8 has no schedule 45X; listed: 10, 30, 40, 80, STD, XS"));
});
it.each([
  ["5s", "5"],
  ["10s", "10"],
  ["40s", "std"],
  ["80s", "xs"],
])("%s is %s up to NPS 12, and none above (ASME B36.19M, from memory)", (stainless, plain) => {
  for (const size of ["4", "12"])
    expect(pipeBar(sizeTokens(size), stainless, false).shape).toEqual(pipeBar(sizeTokens(size), plain, false).shape);
  expect(refusal(() => pipeBar(sizeTokens("14"), stainless, false)).reason).toBe("none");
});
