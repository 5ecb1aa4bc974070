import type { Life } from "./weibullFit";

/**
 * Log-rank score of each life in its pool: 1 for an end, less the sum of ends/still running over all areas up to its own.
 * The sum over a group is its observed less its expected ends.
 * @param lives the pool [one unit of area]
 * @returns scores in the order of the lives [-]
 * @source Mantel 1966, in Peto's form of scores (from memory)
 */
export function logRankScores(lives: readonly Life[]): readonly number[] {
  const ends = [...new Set(lives.filter((l) => l.ended).map((l) => l.area))].sort((a, b) => a - b);
  const hazards = ends.map((at) => {
    const ended = lives.filter((l) => l.ended && l.area === at).length;
    return { at, hazard: ended / lives.filter((l) => l.area >= at).length };
  });
  return lives.map(({ area, ended }) =>
    hazards.reduce((score, { at, hazard }) => (at <= area ? score - hazard : score), ended ? 1 : 0),
  );
}
