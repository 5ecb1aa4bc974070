import { minutesPerHour } from "../quantities";

/**
 * Pieces that a saw gives in a time: floor(60·hours·availability / minutes)·pieces per cut; a cut begun is not counted.
 * @param input minutes per cut with handling [min]; hours [h]; availability [-]; piecesPerCut [-]
 * @returns pieces [-]
 * @source pieces per shift as in production planning textbooks: definition
 */
export function throughput({
  minutes,
  hours,
  availability,
  piecesPerCut,
}: {
  readonly minutes: number;
  readonly hours: number;
  readonly availability: number;
  readonly piecesPerCut: number;
}): number {
  const cuts = (minutesPerHour * hours * availability) / minutes;
  // 90 % of 3 h at 2.7 min are 60 cuts, not 59: a billionth covers the rounding of the computer's numbers.
  return Math.floor(cuts * (1 + 1e-9)) * piecesPerCut;
}
