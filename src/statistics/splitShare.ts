import { Chance } from "./chance";

/** The number of ways to choose `k` of `n`. */
const ways = (n: number, k: number): number => {
  let count = 1;
  for (let i = 1; i <= k; i += 1) count = (count * (n - k + i)) / i;
  return Math.round(count);
};

/** The sum of the scores of each choice of `k`, one after the other. */
function eachSum(scores: readonly number[], k: number, visit: (sum: number) => void): void {
  const choose = (from: number, left: number, sum: number): void => {
    if (left === 0) visit(sum);
    else for (let i = from; i <= scores.length - left; i += 1) choose(i + 1, left - 1, sum + scores[i]!);
  };
  choose(0, k, 0);
}

/** Sums of random choices of `k`, the same on every run. */
function someSums(scores: readonly number[], k: number, times: number, visit: (sum: number) => void): void {
  const pool = [...scores];
  const chance = new Chance(1);
  for (let t = 0; t < times; t += 1) {
    let sum = 0;
    for (let i = 0; i < k; i += 1) {
      const j = i + Math.floor(chance.next() * (pool.length - i));
      [pool[i], pool[j]] = [pool[j]!, pool[i]!];
      sum += pool[i]!;
    }
    visit(sum);
  }
}

/**
 * Share of all ways to split a pool in two in which the second part's sum of scores is above the one seen, equal ones by
 * half: all ways up to `most`, beyond that `most` random ones of a fixed seed.
 * @param first scores of the first part [-]
 * @param second scores of the second part [-]
 * @param most ways that are gone through [-]
 * @returns share, 0 to 1 [-]
 * @source permutation test with the mid p-value: standard (from memory)
 */
export function splitShare(first: readonly number[], second: readonly number[], most: number): number {
  const seen = second.reduce((a, b) => a + b, 0);
  const pool = [...first, ...second];
  let [above, all] = [0, 0];
  const visit = (sum: number): void => {
    all += 1;
    above += Math.abs(sum - seen) < 1e-9 ? 0.5 : sum > seen ? 1 : 0;
  };
  if (ways(pool.length, second.length) <= most) eachSum(pool, second.length, visit);
  else someSums(pool, second.length, most, visit);
  return above / all;
}
