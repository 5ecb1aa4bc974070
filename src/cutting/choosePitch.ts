import { cuttingConstants as k, madePitches } from "../data/cuttingConstants";
import { scenarios } from "./scenarios";
import { InputError } from "../errors";
import type { Profile } from "../section/section";
import type { Shop } from "../shop/shop";
import { bestSpeed } from "./bestSpeed";
import type { BladeClass } from "../blade/bladeClass";
import type { Pitch } from "../blade/pitch";
import { prepareCut, type CutWork, type PreparedCut } from "./prepareCut";
import { readPitch } from "../blade/readPitch";
import { runCut } from "./runCut";

const made: Readonly<Record<BladeClass, readonly Pitch[]>> = {
  "bi-metal": madePitches["bi-metal"].map(readPitch),
  carbide: madePitches.carbide.map(readPitch),
};

/** The pitches on offer, fine to coarse: stocked ones when the shop names them, and only what the class is made in. */
const offered = ({ blade, shop }: CutWork): readonly Pitch[] => {
  const [finest] = made[blade];
  const stocked = shop.pitchesStocked?.filter((p) => p.mean >= finest!.mean * k.ruleSlack.value);
  return stocked === undefined ? made[blade] : [...stocked].sort((a, b) => a.mean - b.mean);
};

const isSolid = ({ kind }: Profile): boolean => kind === "solid" || kind === "bundle of solids";

/** Two teeth in the thinnest lasting part, and three across a solid. */
const lawful = (profile: Profile, pitch: Pitch): boolean =>
  profile.thinnest / pitch.mean >= k.fewestTeeth.value * k.ruleSlack.value &&
  (!isSolid(profile) || profile.meanWidth / pitch.mean >= k.fewestSolidTeeth.value * k.ruleSlack.value);

const teethText = (n: number): string => String(Number(n.toPrecision(2)));

/** What a bi-metal band would be, for work that carbide is too coarse for. */
const biMetalAdvice = (work: CutWork): string => {
  try {
    return `A bi-metal ${choosePitch({ ...work, blade: "bi-metal" }).text} fits`;
  } catch (refusal) {
    if (refusal instanceof InputError) return "No bi-metal pitch fits either";
    throw refusal;
  }
};

/** No pitch keeps the rules: the finest bi-metal one is taken while three quarters of a tooth stand in the wall. */
function finestOrRefuse(work: CutWork, profile: Profile, on: readonly Pitch[]): Pitch {
  const finest = on[0];
  if (finest === undefined)
    throw new InputError("none", "", "None of the pitches stocked is made as a {blade} band", { blade: work.blade });
  const solid = isSolid(profile);
  const part = solid ? profile.meanWidth : profile.thinnest;
  const facts = {
    teeth: teethText(part / finest.mean),
    pitch: finest.text,
    wall: { number: profile.thinnest, quantity: "size" as const },
  };
  if (work.shop.pitchesStocked !== undefined)
    throw new InputError(
      "none",
      "",
      "No pitch in stock suits: the finest, {pitch}, leaves {teeth} teeth in the thinnest part",
      facts,
    );
  if (work.blade === "carbide")
    throw new InputError(
      "none",
      "",
      `Carbide bands are made 3/4 and coarser; that leaves {teeth} teeth in ${solid ? "the work" : "the thinnest part"}. {biMetal}`,
      { ...facts, biMetal: biMetalAdvice(work) },
    );
  if (solid)
    throw new InputError(
      "none",
      "",
      "Only {teeth} teeth would be in the work at the finest pitch made, {pitch}",
      facts,
    );
  if (profile.thinnest / finest.mean < k.fewestFinestTeeth.value)
    throw new InputError(
      "none",
      "",
      "The wall is {wall}, less than three quarters of a tooth at the finest pitch made, {pitch}",
      facts,
    );
  return finest;
}

/** The pitch below which the widest contact would be overfull or shaved [mm]. */
const widePitch = (profile: Profile, prepared: PreparedCut, chipVolume: number, interrupted: number): number => {
  const least = Math.min(k.rubbingChip.value, prepared.nominalChip * interrupted);
  const byGullet = Math.sqrt((chipVolume * least * profile.longestJoined) / (k.gulletArea.value * k.gulletFill.value));
  const byChip = (profile.maximumWidth * least) / (prepared.nominalChip * k.referenceTeeth.value);
  return Math.max(byGullet, Math.min(byChip, 1.5 * byGullet));
};

/** Pitch at which the teeth aimed at stand on the mean width [mm]. */
const targetPitch = ({ meanWidth }: Profile, letter: string, group: string): number => {
  const teeth = Math.min(14, Math.max(8, k.targetTeeth.value * (meanWidth / 80) ** 0.2));
  const factor =
    letter === "N"
      ? group === "aluminium bronze"
        ? 1
        : k.softTarget.value
      : letter === "S" || letter === "H"
        ? k.hardTarget.value
        : 1;
  return meanWidth / (teeth * factor);
};

const distance = (pitch: Pitch, target: number): number => Math.abs(Math.log(pitch.mean / target));

/** Of the lawful pitches, the one for a saw that limits nothing. */
function freePitch(prepared: PreparedCut, profile: Profile, fit: readonly Pitch[]): Pitch {
  const { group, chipVolume, chips } = prepared.forPitch(fit[0]!);
  const wide =
    isSolid(profile) && profile.kind === "solid"
      ? 0
      : widePitch(profile, prepared, chipVolume, chips.load / chips.fullLoad);
  const scored = fit.map((pitch) => {
    const widthPenalty = Math.min(1, pitch.mean / wide) ** k.widePenalty.value;
    const thinPenalty = Math.min(1, profile.thinnest / (3 * pitch.greatest)) ** k.thinPenalty.value;
    return { pitch, score: runCut(prepared.forPitch(pitch)).rate * (wide === 0 ? 1 : widthPenalty) * thinPenalty };
  });
  const best = Math.max(...scored.map((s) => s.score));
  const target = targetPitch(profile, group.letter, group.name);
  const near = scored.filter((s) => s.score >= best * k.nearBest.value).map((s) => s.pitch);
  return near.reduce((a, b) => (distance(b, target) < distance(a, target) ? b : a));
}

/** Rate at a pitch on a saw, at its best band speed. */
const rateOn = (prepared: PreparedCut, pitch: Pitch): number =>
  bestSpeed({ cut: prepared.forPitch(pitch), slowest: prepared.slowestSpeed, wanted: prepared.wantedSpeed }).run.rate;

/** All that can hold a tooth back but the motor. */
const holding = ["bandWidth", "maximumFeed", "maximumFeedForce", "maximumBandSpeed", "minimumBandSpeed"] as const;
const freed = (shop: Shop): Shop => ({ ...shop, ...Object.fromEntries(holding.map((key) => [key, undefined])) });

/**
 * A saw whose band or feed is too weak for a pitch takes the one that is fastest there, of those that would not be
 * faster without these limits, on its motor or on a stronger one. So every rate compared grows as a limit is loosened,
 * and so does the greatest of them.
 */
function mendedPitch(work: CutWork, free: Pitch, fit: readonly Pitch[]): Pitch {
  if (holding.every((key) => work.shop[key] === undefined)) return free;
  const on = (shop: Shop) => {
    const prepared = prepareCut({ ...work, shop }, scenarios.nominal);
    return (pitch: Pitch): number => rateOn(prepared, pitch);
  };
  const [here, strong] = [on(work.shop), on(freed(work.shop))];
  let [best, most] = [free, here(free) * (1 + 1e-9)];
  const ceiling = strong(free);
  if (most >= ceiling) return free;
  const unlimited = on({ ...freed(work.shop), motorPower: undefined });
  const utmost = unlimited(free) * (1 + 1e-9);
  for (const pitch of fit) {
    const rate = here(pitch);
    if (rate > most && unlimited(pitch) <= utmost && strong(pitch) <= ceiling * (1 + 1e-9))
      [best, most] = [pitch, rate];
  }
  return best;
}

/**
 * Chooses the tooth pitch. Of the pitches that keep two teeth in the thinnest lasting part (three across a solid), the
 * best score = integrated rate on a saw that limits nothing × penalties for an overfull widest contact and for fewer than
 * three teeth in the thinnest part; within 4 % of the best, the one nearest 8 to 14 teeth on the mean width. Where the
 * band or the feed of the saw is too weak for it, the pitch that is fastest there.
 * @param work section, material, blade, shop
 * @returns the pitch [1/in, mm]
 * @throws InputError "none": no pitch made (or stocked) suits, with the reason
 * @source tooth rules: see data/cuttingConstants; the score and its penalties: judgement
 */
export function choosePitch(work: CutWork): Pitch {
  const profile = work.section.profile();
  // Neither a weak motor nor the shop's own rate factor changes the pitch: a factor above 1 must never lead to a slower cut.
  const plain = { ...work, material: { ...work.material, rateFactor: 1 } };
  prepareCut(plain, scenarios.nominal);
  const on = offered(work);
  const fit = on.filter((p) => lawful(profile, p));
  if (fit.length === 0) return finestOrRefuse(work, profile, on);
  const free = freePitch(
    prepareCut({ ...plain, shop: { ...freed(work.shop), motorPower: undefined } }, scenarios.nominal),
    profile,
    fit,
  );
  return mendedPitch(plain, free, fit);
}
