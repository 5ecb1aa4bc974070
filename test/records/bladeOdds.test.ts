import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { printText } from "../../functions/kinds/sentence";
import { bladeOdds } from "../../src/records/bladeOdds";
import { longerOdds } from "../../src/records/longerOdds";
import { lives } from "../statistics/lives";

const base = {
  current: { price: 180, rate: 3 },
  offer: { price: 260, rate: 3.4 },
  currentLives: [3100, 3600, 4400, 2700, 3300],
  offerLives: [4600, 5900, 5100, 4400],
  currentWhy: undefined,
  offerWhy: undefined,
  sawHourValue: 72,
  change: 12,
};

describe("BLADEODDS", () => {
  it("saves 72/(60·3) − 72/(60·3.4) + (180 + 14.4)/3420 − (260 + 14.4)/5000 an area (worked here)", () => {
    const { saving, savingLow, savingHigh } = bladeOdds(base);
    const expected = 72 / 180 - 72 / 204 + 194.4 / 3420 - 274.4 / 5000;
    expect(saving).toBeCloseTo(expected, 12);
    // Errors of the means: 8.34 % with 4 and 6.65 % with 3 degrees; Welch: between 6 and 7 degrees, whose t are 1.4398 and 1.4149.
    const error = Math.hypot(
      (194.4 / 3420) * (637.9655163 / Math.sqrt(5) / 3420),
      (274.4 / 5000) * (668.331255 / 2 / 5000),
    );
    const t = ((savingHigh as number) - (savingLow as number)) / 2 / error;
    expect(t).toBeGreaterThan(1.4149);
    expect(t).toBeLessThan(1.4398);
  });
  it("is the likelihood that the offer outlives the break-even ratio, here (260 + 14.4)/(3420·(72/180 − 72/204) + 194.4)", () => {
    const ratio = 274.4 / (3420 * (72 / 180 - 72 / 204) + 194.4);
    const { likely } = bladeOdds(base);
    expect(likely).toBeCloseTo(longerOdds(lives("3.1 3.6 4.4 2.7 3.3"), lives("4.6 5.9 5.1 4.4"), ratio).likely, 9);
  });
  it("gives a sentence that can be sent", () => {
    const says = (change: Partial<typeof base>) => printText(bladeOdds({ ...base, ...change }).verdict, "inch");
    expect(says({ offer: { price: 260, rate: 3 } })).toMatch(
      /^From 5 blades in use and 4 of the offer: \d\d in 100 that the offer is cheaper at a saw hour worth 72; from a loss of 0\.00\d+ to a saving of 0\.0\d+ per unit of area; \d+ more blades? of each would settle it if lives go on so\.$/,
    );
    expect(says({})).toMatch(
      /^From 5 .*: more than 99 in 100 .*; saving 0\.0\d+ to 0\.0\d+ per unit of area; that settles it\.$/,
    );
    expect(says({ offer: { price: 900, rate: 3 }, currentLives: [3100, 3600, 4400, 2700] })).toMatch(
      /^From 4 blades each: less than 1 in 100 .*; loss .*; keep the blade in use\.$/,
    );
    expect(says({ offer: { price: 260, rate: 2 } })).toBe(
      "The offer cannot be cheaper at a saw hour worth 72, however long it lasts; keep the blade in use.",
    );
  });
  it("with blades still running gives the saving where both means are known, and says so where not", () => {
    const running = ["worn", "worn", "still in use", "still in use"] as const;
    const { saving, bladesMore, likely } = bladeOdds({ ...base, offerWhy: running as never });
    expect(saving).toBeTypeOf("number");
    expect(bladesMore).toMatchObject({ problem: "blades still running" });
    expect(likely).toBeGreaterThan(0.9);
    const all = bladeOdds({ ...base, offerWhy: ["still in use", "still in use", "still in use", "pulled"] as never });
    expect(all.saving).toMatchObject({ reason: "none", problem: "blades still running" });
    expect(printText(all.verdict, "inch")).toMatch(/; blades still run\.$/);
  });
  it.each([
    [[3100], [6500], "one blade each proves nothing below twice the life: here the offer cut {times} times the area"],
    [[3100, 3300], [6500, 7000, 6000], "{current} and {offer} blades: at least {least} of each are needed"],
  ])("refuses too few: %j against %j", (currentLives, offerLives, problem) => {
    const run = () => bladeOdds({ ...base, currentLives, offerLives });
    expect(run).toThrow(InputError);
    try {
      run();
    } catch (refusal) {
      expect((refusal as InputError).problem).toBe(problem);
      if (currentLives.length === 1) expect((refusal as InputError).facts).toEqual({ times: "2.1" });
    }
  });
  it("refuses where no blade in use has ended", () => {
    expect(() => bladeOdds({ ...base, currentWhy: Array(5).fill("pulled") as never })).toThrow(
      /mean life is not known/,
    );
  });
});

it.each([
  [[3100], [6500, 7000, 6000], "1 and 3 blades: at least 3 of each are needed"],
  [[3100, 3300, 3400], [6500], "3 and 1 blades: at least 3 of each are needed"],
  [[3100], [6200], "one blade each proves nothing below twice the life: here the offer cut 2 times the area"],
])("%j against %j is refused whole", (currentLives, offerLives, says) => {
  let got = "";
  try {
    bladeOdds({ ...base, currentLives, offerLives });
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    got = error.problem.replace(/\{(\w+)\}/g, (_, name: string) => String(error.facts[name]));
  }
  expect(got).toBe(says);
});
