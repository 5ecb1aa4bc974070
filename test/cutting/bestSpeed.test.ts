import { describe, expect, it } from "vitest";
import { bestSpeed } from "../../src/cutting/bestSpeed";
import { prepareCut } from "../../src/cutting/prepareCut";
import { readPitch } from "../../src/blade/readPitch";
import { runCut } from "../../src/cutting/runCut";
import { scenarios } from "../../src/cutting/scenarios";
import { work } from "./fixture";

describe("the band speed under a weak motor", () => {
  const prepared = prepareCut(work("round 7", "4140", "bi-metal", { motorPower: 1100 }), scenarios.nominal);
  const cut = prepared.forPitch(readPitch("2/3"));

  it("is as short as the best of a fine grid of speeds, within 0.1 %", () => {
    const found = bestSpeed({ cut, slowest: 0, wanted: prepared.wantedSpeed });
    const grid = Array.from({ length: 400 }, (_, i) => runCut({ ...cut, speed: (cut.speed * (i + 1)) / 400 }).minutes);
    expect(found.run.minutes / Math.min(...grid)).toBeLessThan(1.001);
    expect(found.speed).toBeLessThan(cut.speed);
  });

  it("stays where nothing but the motor would change it, and never under the saw's slowest", () => {
    const strong = prepareCut(work("round 7", "4140"), scenarios.nominal).forPitch(readPitch("2/3"));
    expect(bestSpeed({ cut: strong, slowest: 0, wanted: 1 }).speed).toBe(strong.speed);
    expect(bestSpeed({ cut, slowest: 45_000, wanted: prepared.wantedSpeed }).speed).toBeGreaterThanOrEqual(45_000);
  });
});
