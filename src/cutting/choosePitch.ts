import type { Pitch } from "../blade/pitch";
import { cuttingConstants as k } from "../data/cuttingConstants";
import { InputError } from "../errors";
import { bladeRow } from "./bladeRow";
import type { CutWork } from "./cut";
import { pitchPlan, type PitchPlan } from "./pitchPlan";

const twoDigits = (n: number): string => String(Number(n.toPrecision(2)));

/** What a bi-metal band would be, for work that carbide is too coarse for. */
const biMetalAdvice = (work: CutWork): string => {
  const { group } = work.material;
  if (group?.blades["bi-metal"] === undefined) return "";
  const { best } = pitchPlan({ profile: work.section.profile(), group, blade: "bi-metal" });
  return best === undefined ? "" : `. A bi-metal ${best.text} fits`;
};

/** No pitch on offer keeps the rule: the finest made may still do, in hollow work. */
function finestOrRefuse(work: CutWork, plan: PitchPlan, [finest]: readonly Pitch[]): Pitch {
  const [finestMade] = plan.made as [Pitch, ...Pitch[]];
  if (finest === undefined)
    throw new InputError("none", "", "None of the pitches stocked is made as a {blade} band", { blade: work.blade });
  const facts = (pitch: Pitch) => ({
    pitch: pitch.text,
    teeth: twoDigits(work.section.profile().thinnest / pitch.mean),
  });
  if (plan.best === undefined)
    throw new InputError(
      "none",
      "",
      "Only {teeth} teeth would stand in the thinnest part at the finest pitch made, {pitch}{advice}",
      { ...facts(finestMade), advice: work.blade === "carbide" ? biMetalAdvice(work) : "" },
    );
  if (finest.mean <= plan.best.mean) return finest;
  throw new InputError(
    "none",
    "",
    "The finest pitch in stock, {pitch}, leaves {teeth} teeth in the thinnest part; order {best}",
    {
      ...facts(finest),
      best: plan.best.text,
    },
  );
}

const planOf = ({ section, material, blade }: CutWork): PitchPlan =>
  pitchPlan({ profile: section.profile(), group: bladeRow(material, blade).group, blade });

/**
 * Chooses the tooth pitch: of the pitches made, or stocked when the shop names them, that keep two teeth in the thinnest
 * lasting part, the one nearest to the pitch that the work asks for. Where none does and no finer one is made, the finest
 * bi-metal pitch is taken for hollow work with 0.75 of a tooth in the wall. The saw never changes the pitch.
 * @param work section, material, blade, shop
 * @param plan what the work asks of the pitch, where it is known already [-]
 * @returns the pitch [1/in, mm]
 * @throws InputError "none": no data; no pitch made, or in stock, suits, with the reason
 * @source see pitchPlan
 */
export function choosePitch(work: CutWork, plan: PitchPlan = planOf(work)): Pitch {
  const { pitchesStocked } = work.shop;
  if (pitchesStocked === undefined) return plan.best ?? finestOrRefuse(work, plan, plan.made);
  const least = plan.made[0]!.mean * k.ruleSlack.value;
  const stock = pitchesStocked.filter((p) => p.mean >= least).sort((a, b) => a.mean - b.mean);
  return plan.nearest(stock) ?? finestOrRefuse(work, plan, stock);
}
