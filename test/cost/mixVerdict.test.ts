import { expect, it } from "vitest";
import { mixVerdict, type MixSums } from "../../src/cost/mixVerdict";
import { weighMix, type MixJob, type MixWay } from "../../src/cost/weighMix";
import { printText } from "../../functions/kinds/sentence";

const way = (area: number, rate: number, life: number, price: number): MixWay => ({
  area,
  run: area / rate,
  bladeMinutes: 0,
  price,
  life,
});
const verdict = (jobs: readonly MixJob[], hourValue = 60, leftOut = 0): string => {
  const weighed = weighMix(jobs, hourValue);
  const ends = ({ minutes }: { readonly minutes: number }) => ({ low: minutes / 2, high: minutes * 2 });
  const sums: MixSums = {
    ...weighed,
    biMetal: { ...weighed.biMetal, ...ends(weighed.biMetal) },
    carbide: { ...weighed.carbide, ...ends(weighed.carbide) },
    leftOut,
  };
  return printText(mixVerdict(sums), "metric");
};
const slow = { biMetal: way(3000, 10, 6000, 100), carbide: way(3000, 12, 6000, 300) };
const fast = { biMetal: way(6000, 10, 6000, 100), carbide: way(6000, 30, 12_000, 300) };

it("says in three digits what a buyer sends on (by hand, see mixTable)", () => {
  expect(verdict([fast, slow])).toBe(
    "Carbide wherever it can saves 300 of 1050 and frees 7.5 h: 7.5 h (3.75 h to 15 h) and 1 blades against 15 h (7.5 h to 30 h) and 1.5 blades of bi-metal. It pays up to a carbide price of 600, or from 0.5 times the lives given on. Each job with its cheaper class saves 350 and frees 6.67 h.",
  );
});

it("says a loss as a loss, with what would turn it", () => {
  expect(verdict([slow])).toMatch(
    /^Carbide wherever it can costs 50 more than 350 and frees 0.833 h: .* or from 1.5 times the lives given on\. No job is cheaper with carbide\.$/,
  );
  expect(verdict([{ biMetal: slow.carbide, carbide: { ...slow.biMetal, price: 1000 } }])).toMatch(
    /takes 0.833 h more: .*price/,
  );
});

it("each job with its cheaper class may free nothing: the same minutes, blades of half the price (by hand: 25 of 50 + 25)", () => {
  const [dear, cheap] = [way(3000, 10, 6000, 100), way(3000, 10, 6000, 50)];
  expect(
    verdict([
      { biMetal: dear, carbide: cheap },
      { biMetal: cheap, carbide: dear },
    ]),
  ).toMatch(/Each job with its cheaper class saves 25 and frees 0 h\.$/);
});

it("ties are ties, never is never, and what is left out is counted", () => {
  expect(verdict([{ biMetal: fast.biMetal, carbide: fast.biMetal }])).toMatch(
    /costs the same as bi-metal and frees 0 h.*No job is cheaper with bi-metal\.$/,
  );
  expect(verdict([{ biMetal: way(3000, 50, 4e4, 120), carbide: way(3000, 30, 5e4, 400) }])).toMatch(
    /No carbide price is low enough and no life long enough\./,
  );
  expect(
    verdict([{ biMetal: way(3e4, 40, 4e4, 120), carbide: { ...way(3e4, 44, 400, 400), bladeMinutes: 15 } }]),
  ).toMatch(/No carbide price is low enough; it pays from 197 times the lives given on\./);
  expect(verdict([fast, { biMetal: undefined, carbide: undefined }], 60, 1)).toMatch(/ 1 row is left out\.$/);
});
