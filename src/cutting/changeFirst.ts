import { limitNames, type LimitName } from "./cut";
import type { CutPrediction } from "./predictCut";

const advice: Readonly<Record<LimitName, string>> = {
  "usual rate": "Nothing on this saw holds the cut back: a better class of blade, or your own timed rate, changes it.",
  "tooth load": "Lay the work so that more teeth stand in the thin part, or take a finer pitch.",
  gullet: "Take a coarser pitch.",
  "maximum feed": "The saw feeds no faster: cut more bars at once.",
  "feed force": "Set the guides closer, turn the work, or use a wider band.",
  "motor power": "The motor holds the cut back: first have its idle current measured, then weigh a bigger one.",
};

/**
 * What to change first to cut faster, in plain words, from what holds the cut back.
 * @param prediction a predicted cut
 * @returns one sentence [text]
 * @source judgement
 */
export function changeFirst({ run, slowed, prepared, cut }: CutPrediction): string {
  if (slowed) return advice["motor power"];
  const first = run.shares.indexOf(Math.max(...run.shares));
  if (first === 0 && prepared.tooFast)
    return "The slowest speed of this saw is above the usual one for this material: a slower saw would spare the blade.";
  if (first === 0 && prepared.capped === "saw") return "A saw with a faster band would cut this sooner.";
  if (first === 0 && prepared.capped === "general") return "Give the top band speed of your saw.";
  if (cut.limits.constantFeed && first !== 0)
    return `A feed that slows only where the work is wide would help most: the whole cut runs at what one depth allows. ${advice[limitNames[first]!]}`;
  return advice[limitNames[first]!];
}
