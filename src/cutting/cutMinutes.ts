import type { Cut, CutRun } from "./cut";
import { wayDown, type Scenario } from "./wayDown";

/**
 * Minutes of a cut and what its feed force leaves, as runCut gives them, without the forces, powers and shares of the way:
 * all that the search of a rate needs.
 * @param cut profile [mm], pitch [mm], speed [mm/min], bite and room [mm], force law [N/mm²], limits [mm/min, N, W]
 * @param scenario multipliers of the uncertain constants [-]
 * @returns minutes [min], rate [mm²/min]; share of the area that the feed force holds [-], the area's mean chip [mm]
 * @source see runCut
 */
export function cutMinutes(cut: Cut, scenario: Scenario): Pick<CutRun, "minutes" | "rate" | "pushed" | "pushedChip"> {
  const { profile, pitch } = cut;
  const { stations, pushed, held } = wayDown(cut, scenario);
  let [minutes, pushedArea, chipArea] = [0, 0, 0];
  for (let i = 0; i < stations.length; i += 1) {
    const { contact, travel } = stations[i]!;
    const { u, by } = pushed[i]!;
    minutes += travel / held[i]!.feed;
    chipArea += u * pitch.mean * contact * travel;
    if (by === "feed force") pushedArea += contact * travel;
  }
  return {
    minutes,
    rate: profile.area / minutes,
    pushed: pushedArea / profile.area,
    pushedChip: chipArea / profile.area,
  };
}
