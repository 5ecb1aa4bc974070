import { bestSpeed } from "./bestSpeed";
import type { Cut, CutRun } from "./cut";
import type { Pitch } from "../blade/pitch";
import { prepareCut, type CutWork, type PreparedCut } from "./prepareCut";
import type { Scenario } from "./scenario";

export interface SolvedCut {
  readonly cut: Cut;
  readonly prepared: PreparedCut;
  readonly run: CutRun;
  /** Band speed that is to be set [mm/min]. */
  readonly speed: number;
}

/**
 * One cut at one pitch under one scenario of the uncertain constants, at its best band speed.
 * @param input work; pitch [1/in]; scenario multipliers [-]
 * @returns the cut, its run [mm²/min, min] and speed [mm/min]
 * @throws InputError as prepareCut
 * @source see prepareCut, bestSpeed, runCut
 */
export function solveCut({
  work,
  pitch,
  scenario,
}: {
  readonly work: CutWork;
  readonly pitch: Pitch;
  readonly scenario: Scenario;
}): SolvedCut {
  const prepared = prepareCut(work, scenario);
  const cut = prepared.forPitch(pitch);
  return { cut, prepared, ...bestSpeed({ cut, slowest: prepared.slowestSpeed, wanted: prepared.wantedSpeed }) };
}
