import { wattWork } from "../quantities";
import { limitNames, type Cut, type CutRun, type LimitName } from "./cut";
import { cuttingForce } from "./cuttingForce";
import { gulletRoom } from "./gulletRoom";
import { wayDown, type Scenario } from "./wayDown";

const noTime: Readonly<Record<LimitName, number>> = {
  "usual rate": 0,
  gullet: 0,
  "feed force": 0,
  "maximum feed": 0,
  "motor power": 0,
};

/**
 * Takes a cut down its way. Feed per band travel u = min(b·min(1, L/6p*), room)·g/L, at most what the feed force allows;
 * the motor lowers the band speed v to 60000·P/Fc(u); feed = u·v, at most the maximum feed; minutes = Σ travel/feed.
 * @param cut profile [mm], pitch [mm], speed [mm/min], bite and room [mm], force law [N/mm²], limits [mm/min, N, W]
 * @param scenario multipliers of the uncertain constants [-]
 * @returns minutes [min], rate [mm²/min], share of the time of each limit [-], speed [mm/min], force [N], power [W]
 * @source rate = band speed × bite: definition; cutting minutes = area / area rate: German vocational tables book, sawing page (read)
 */
export function runCut(cut: Cut, scenario: Scenario): CutRun {
  const { profile, pitch, group } = cut;
  const { law, stations, pushed, held, depth } = wayDown(cut, scenario);
  const room = gulletRoom(pitch.mean, group);
  const times: Record<LimitName, number> = { ...noTime };
  let [minutes, travelled, force, power, fill, pushedArea, chipArea] = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < stations.length; i += 1) {
    const { contact, travel } = stations[i]!;
    const { feed, speed, by } = held[i]!;
    const time = travel / feed;
    const own = cuttingForce({ chip: (feed * pitch.mean) / speed, teeth: contact / pitch.mean, law });
    times[by] += time;
    minutes += time;
    travelled += speed * time;
    force = Math.max(force, own);
    power = Math.max(power, (own * speed) / wattWork);
    fill = Math.max(fill, (feed * contact) / (speed * room));
    chipArea += pushed[i]!.u * pitch.mean * contact * travel;
    if (pushed[i]!.by === "feed force") pushedArea += contact * travel;
  }
  for (const name of limitNames) times[name] /= minutes;
  return {
    minutes,
    rate: profile.area / minutes,
    shares: times,
    speed: travelled / minutes,
    greatestForce: force,
    greatestPower: power,
    gulletFill: fill,
    pushed: pushedArea / profile.area,
    pushedChip: chipArea / profile.area,
    governingDepth: depth,
  };
}
