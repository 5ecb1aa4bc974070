import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Basis } from "../data/groups";
import type { Text } from "../phrase";
import { workingOf, type StepLines } from "../steps";
import type { PitchedWork } from "./cut";
import { idlePower } from "./idlePower";
import { limitWords } from "./limitWords";
import { predictCut, type CutPrediction } from "./predictCut";

const said = ({ mark, text }: Basis): string => `${mark}: ${text}`;
const middle = ({ least, most }: { readonly least: number; readonly most: number }): number => (least + most) / 2;

/** What the work and the material bring. */
const workValues = ({ section, material }: PitchedWork, { cut: { profile, group, row } }: CutPrediction) => ({
  size: section.text as Text,
  material: material.name as Text,
  group: group.name as Text,
  area: profile.area,
  height: profile.height,
  meanWidth: profile.meanWidth,
  thinnest: profile.thinnest,
  gradeSpeed: row.speed,
  groupHardness: group.maximumHardness,
  hardness: middle(material.hardness),
  gradeBite: row.bite,
  chipVolume: group.chipVolume,
});

/** Speed, pitch, bite, room. */
const cutValues = ({ cut, pitch }: CutPrediction) => ({
  sizeFactor: cut.speeds.factors.size,
  hardnessFactor: cut.speeds.factors.hardness,
  coolant: cut.speeds.factors.coolant,
  wornSpeed: cut.speeds.factors.worn,
  wanted: cut.speeds.wanted,
  slowest: cut.speeds.slowest,
  top: Number.isFinite(cut.speeds.top) ? cut.speeds.top : ("none" as Text),
  speed: cut.speeds.speed,
  credit: cut.credit,
  sizePitch: cut.plan.bySize,
  finest: cut.plan.made[0]!.mean,
  target: cut.plan.target,
  pitchText: pitch.text as Text,
  pitch: pitch.mean,
  best: cut.plan.best?.mean ?? cut.plan.target,
  factor: cut.pitchFactor,
  interruption: cut.interruption,
  wornBite: cut.worn,
  rateFactor: cut.rateFactor,
  bite: cut.bite,
  room: cut.room,
});

/** What a saw that is described holds back. */
const sawValues = ({ shop }: PitchedWork, { cut: { saw } }: CutPrediction) => ({
  motor: shop.motorPower,
  motorEfficiency: shop.motorPower === undefined ? undefined : shop.driveEfficiency,
  motorIdle: shop.motorPower === undefined ? undefined : idlePower(shop),
  bandPower: saw.limits.power,
  maximumFeed: saw.limits.maximumFeed,
  maximumFeedForce: shop.maximumFeedForce,
  bandForce: saw.limits.feedForce?.(0),
  bandWidth: saw.limits.feedForce === undefined ? undefined : saw.band.width,
  feedMode: saw.limits.constantFeed ? ("constant feed" as Text) : undefined,
});

/** Every value on the way to a rate, by the names of its lines. */
export const cutRecord = (work: PitchedWork) => {
  const prediction = predictCut(work);
  const { cut, run, rate } = prediction;
  const { speed, bite } = cut.row.basis;
  return {
    ...workValues(work, prediction),
    ...cutValues(prediction),
    ...sawValues(work, prediction),
    minutes: run.minutes,
    rate,
    limit: limitWords(prediction).limit as Text,
    sources: { gradeSpeed: said(speed), gradeBite: said(bite) },
  };
};

type CutRecord = Omit<ReturnType<typeof cutRecord>, "sources">;

/** Lines of the rate: method.md prints them as they stand. */
// prettier-ignore
export const rateLines: StepLines<CutRecord> = [
  ["size", "", "size", "", "text", "as it was read"],
  ["material", "", "material", "", "text", "as it was found"],
  ["group", "", "cutting group", "", "text", "of the material"],
  ["area", "A", "cut area", "", "area", "geometry of the size"],
  ["height", "H", "way of the band", "", "size", "geometry of the size"],
  ["meanWidth", "W", "mean width", "A / H", "size", "definition"],
  ["thinnest", "t", "thinnest lasting part", "", "size", "geometry of the size"],
  ["gradeSpeed", "vg", "band speed of the grade at a mean width of 4 in", "", "bandSpeed", "docs/sources.md, cutting groups and grades"],
  ["sizeFactor", "s", "factor of the mean width", "", "ratio", "Machinery's Handbook, 31st ed., p. 1245 (read)"],
  ["groupHardness", "HB0", "hardness from which the speed falls", "", "hardness", "docs/sources.md, cutting groups"],
  ["hardness", "HB", "hardness, middle of the material's range", "", "hardness", "the material's row"],
  ["hardnessFactor", "h", "factor of the hardness", `max(${k.hardnessLeast.value}, min(1, HB0 / HB) ^ ${k.hardnessSpeed.value})`, "ratio", "derived"],
  ["coolant", "c", "factor of the coolant", "", "ratio", `flood 1, mist ${k.mistSpeed.value}, dry ${k.drySpeed.value}; grey iron and magnesium 1`],
  ["wornSpeed", "a", "factor of the saw's condition on the speed", "", "ratio", `good 1, worn ${k.wornSpeed.value}`],
  ["wanted", "vw", "band speed wanted", "vg × s × h × c × a", "bandSpeed", "Machinery's Handbook, 31st ed., p. 1245 (read)"],
  ["slowest", "slowest", "slowest band speed of the saw", "", "bandSpeed", "shop block; 0 where it is not given"],
  ["top", "top", "fastest band speed of the saw", "", "bandSpeed", `shop block; ${k.generalTopSpeed.value} mm/min for letter N, else none`],
  ["speed", "v", "band speed", "max(slowest, min(vw, top))", "bandSpeed", "definition"],
  ["credit", "credit", "share left where the saw runs too fast", "min(1, vw / v)", "ratio", "judgement"],
  ["sizePitch", "ps", `pitch of the mean width, × ${k.bulkyPitch.value} in bulky metals`, "", "size", "Machinery's Handbook, 31st ed., p. 1245 (read)"],
  ["finest", "pf", "finest pitch made", "", "size", "common practice"],
  ["target", "p*", "pitch aimed at", `max(pf, min(ps, t / ${k.fewestTeeth.value}))`, "size", "two teeth in the thinnest part: US Navy training manual (read)"],
  ["pitchText", "", "tooth pitch, yours or the one chosen", "", "text", "teeth per inch"],
  ["pitch", "p", "pitch", "", "size", "50.8 / (coarse + fine)"],
  ["best", "pb", "best pitch made; p* where none suits", "", "size", "nearest to p* that keeps two teeth"],
  ["factor", "g", "pitch factor", "min(1, exp(abs(ln(pb / p*)) − abs(ln(p / p*))))", "ratio", "derived"],
  ["gradeBite", "bg", "bite of the grade", "", "chip", "docs/sources.md, cutting groups and grades"],
  ["interruption", "i", "factor of interruption", "", "ratio", `solid 1, hollow ${k.hollowBite.value}, bundle of solids ${k.solidBundleBite.value}, bundle of hollow ${k.hollowBundleBite.value}: common practice`],
  ["wornBite", "d", "factor of the saw's condition on the bite", "", "ratio", `good 1, worn ${k.wornBite.value}: common practice`],
  ["rateFactor", "rf", "rate factor", "", "ratio", "shop block; 1 where it is not given"],
  ["bite", "b", "bite", "bg × i × d × rf × credit", "chip", "rate = band speed × bite: definition"],
  ["chipVolume", "R", "room of the chips against the metal", "", "ratio", "docs/sources.md, cutting groups"],
  ["room", "B", "room of the gullets as a bite", `${k.gulletArea.value} × ${k.gulletFill.value} × p* / R × credit`, "chip", "derived"],
  ["motor", "Pm", "motor power", "", "power", "shop block"],
  ["motorIdle", "P0", "idle power", "", "power", "shop block, else from the motor's size"],
  ["motorEfficiency", "eff", "drive efficiency", "", "ratio", "shop block"],
  ["bandPower", "P", "power at the band", "eff × (Pm − P0)", "power", "definition"],
  ["maximumFeed", "", "maximum feed", "", "feed", "shop block"],
  ["maximumFeedForce", "", "maximum feed force", "", "force", "shop block"],
  ["bandWidth", "", "band width", "", "size", "shop block, else the usual one"],
  ["bandForce", "", "feed force that saw and band stand at mid span", "", "force", "buckling: docs/method.md"],
  ["feedMode", "", "feed mode", "", "text", "shop block"],
  ["limit", "", "what holds the cut back", "", "text", "largest share of the time"],
  ["minutes", "T", "minutes of cutting", `Σ travel / (u × v), u = min(b × min(1, L / (${k.fullTeeth.value} × p*)), B) × g / L, at most what a saw that is described allows`, "minutes", "sum over the way of the band"],
  ["rate", "rate", "removal rate", "A / T", "areaRate", "cutting time = area / area rate: German vocational tables book, sawing page (read)"],
];

/** The working of CUTRATE. */
export const rateWorking = workingOf(cutRecord, rateLines);
