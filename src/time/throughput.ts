/**
 * Pieces that a saw gives in a time: floor(60·hours·availability / minutes)·pieces per cut; a cut begun is not counted.
 * @param input minutes per cut with handling [min]; hours [h]; availability [-]; piecesPerCut [-]
 * @returns pieces [-]
 * @source pieces per shift as in production planning textbooks: definition
 */
export function throughput({ minutes, hours, availability, piecesPerCut }: { readonly minutes: number; readonly hours: number; readonly availability: number; readonly piecesPerCut: number }): number {
  const cuts = (60 * hours * availability) / minutes;
  // 8 hours at 0.1 min are 4800 cuts, not 4799: a billionth is the rounding of the computer's numbers.
  return Math.floor(cuts * (1 + 1e-9)) * piecesPerCut;
}
