import { expect, it } from "vitest";
import { cuttingForce } from "../../src/cutting/cuttingForce";
import { prepareCut } from "../../src/cutting/prepareCut";
import { nominal, wayDown } from "../../src/cutting/wayDown";
import { work } from "./fixture";

const cutOn = (saw: Parameters<typeof work>[3]) =>
  prepareCut({ ...work("round 200 mm", "4140", "bi-metal", saw), pitch: undefined });

it("a feed force holds the chip whose feed share of the cutting force it is, and only where more would be fed (Kienzle, feed share 0.8)", () => {
  const cut = cutOn({ maximumFeedForce: 250 });
  const { stations, pushed, law } = wayDown(cut, nominal);
  let [held, free] = [0, 0];
  stations.forEach(({ contact }, i) => {
    const { u, by } = pushed[i]!;
    const chip = (u * cut.pitch.mean) / cut.credit;
    const force = 0.8 * cuttingForce({ chip, teeth: contact / cut.pitch.mean, law });
    if (by === "feed force") expect(force / 250).toBeCloseTo(1, 9);
    else expect(force).toBeLessThanOrEqual(250 * (1 + 1e-12));
    if (by === "feed force") held += 1;
    else free += 1;
  });
  expect(Math.min(held, free)).toBeGreaterThan(0);
});

it("no depth is fed faster than the maximum feed; a constant feed is one feed all the way, what one depth allows", () => {
  const capped = wayDown(cutOn({ maximumFeed: 15 }), nominal);
  expect(Math.max(...capped.held.map(({ feed }) => feed))).toBe(15);
  const { held, depth, stations } = wayDown(cutOn({ feedMode: "constant feed" }), nominal);
  expect(new Set(held.map(({ feed }) => feed)).size).toBe(1);
  expect(stations.some((s) => s.depth === depth)).toBe(true);
});
