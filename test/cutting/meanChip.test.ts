import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { meanChip } from "../../src/cutting/meanChip";
import { check, inch2, shape } from "./fixture";

const near = (value: number, id: string) => expect(value / check(id).expected).toBeCloseTo(1, 9);

describe("mean chip, rate·p/(v·W): German vocational tables book, sawing page (read)", () => {
  it(`${check("K4").input}: ${check("K4").expected} ${check("K4").unit} and back; K5 in in²/min`, () => {
    const profile = shape("square 100 mm").profile();
    const chip = meanChip({ rate: check("K4").expected * 100, pitch: readPitch(3.5), speed: 75_000, profile });
    expect(chip * 1000).toBeCloseTo(10, 9);
    near((check("K4").expected * 100) / inch2, "K5");
  });
  it("K1, K2, K3: tooth frequency v/p, feed f·v/p, and the chip of a feed", () => {
    near(60_000 / readPitch(3.5).mean / 60, "K1");
    near((0.008 * 60_000) / readPitch(3.5).mean, "K2");
    const profile = shape("square 4").profile();
    const feed = 1.5 * 25.4;
    near(1000 * meanChip({ rate: feed * profile.meanWidth, pitch: readPitch(4), speed: 250 * 304.8, profile }), "K3");
  });
  it("T5 to T8: the trade figures for 17-4PH, 7 in round (common practice, no source)", () => {
    const round = shape("round 7 in");
    const profile = round.profile();
    near(1000 * meanChip({ rate: round.area / 18, pitch: readPitch(2.5), speed: 30_480, profile }), "T5");
    near(1000 * meanChip({ rate: 10 * inch2, pitch: readPitch(2), speed: 70_000, profile }), "T6");
    near((30_000 * 0.0035 * ((profile.maximumWidth * Math.PI) / 4)) / readPitch(2.5).mean / inch2, "T7");
    near((68_000 * 0.0075 * ((profile.maximumWidth * Math.PI) / 4)) / readPitch(2).mean / inch2, "T8");
  });
});
