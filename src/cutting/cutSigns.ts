import { cuttingConstants as k } from "../data/cuttingConstants";
import { symptomConstants as s } from "../data/symptomConstants";
import type { Pitch } from "../blade/pitch";
import { wattWork } from "../quantities";
import { bandForce } from "./bandForce";
import type { CutWork } from "./cut";
import { cuttingForce } from "./cuttingForce";
import { idlePower } from "./idlePower";
import type { CutPrediction } from "./predictCut";
import type { Trouble } from "./trouble";
import { usualBand } from "./usualBand";

/** A cut that runs, and what is wrong with it. */
export interface TroubledCut extends CutWork {
  readonly pitch: Pitch;
  readonly bandSpeed: number;
  readonly minutes: number;
  readonly trouble: Trouble;
}

/** What CUTCHECK has seen of it; predictions are undefined where nothing can be predicted. */
export interface SeenCut {
  readonly chip: number;
  readonly gulletFill: number;
  readonly predicted: CutPrediction | undefined;
  readonly free: CutPrediction | undefined;
  readonly best: Pitch | undefined;
  readonly bandSpeedToSet: number | undefined;
  readonly feedToSet: number | undefined;
}

/** Feed force against half of what the band stands, and power against the motor: at the chip that runs. */
function forces({ shop, section, bandSpeed, pitch }: TroubledCut, { chip, predicted }: SeenCut) {
  if (predicted === undefined) return { push: NaN, motor: NaN };
  const { cut } = predicted;
  const { meanWidth, maximumExtent: extent } = section.profile();
  const force = cuttingForce({ chip, teeth: meanWidth / pitch.mean, law: cut.saw.force });
  const stands = bandForce({ ...cut.saw.band, span: cut.saw.span, extent, tension: shop.bandTension });
  const power = (force * bandSpeed) / wattWork / shop.driveEfficiency + idlePower(shop);
  return {
    push: (force * k.feedShare.value) / (stands * k.bucklingShare.value),
    motor: shop.motorPower === undefined ? NaN : power / shop.motorPower,
  };
}

/** How the cut runs against what is predicted for it. */
function against({ bandSpeed, section, minutes }: TroubledCut, seen: SeenCut) {
  const { predicted, free } = seen;
  if (predicted === undefined || free === undefined)
    return { load: NaN, heavy: NaN, factor: NaN, speed: NaN, low: NaN };
  const perTravel = section.area / minutes / bandSpeed;
  const { cut, pitch } = predicted;
  const tooFine = pitch.mean < cut.plan.target;
  const freeLoad = perTravel / (free.rate / free.run.speed);
  return {
    load: perTravel / (predicted.rate / predicted.run.speed),
    // With a pitch too fine a usual rate would read as too heavy a feed: it is judged at the pitch that suits.
    heavy: tooFine ? freeLoad * cut.pitchFactor : freeLoad,
    factor: cut.pitchFactor,
    speed: bandSpeed / cut.speeds.wanted,
    low: predicted.rateLow,
  };
}

/** The band that runs against the usual one, the guides, and the numbers of wheel and turn. */
function bandSigns({ shop, section, bandSpeed, minutes }: TroubledCut) {
  const { maximumExtent: extent, height } = section.profile();
  const band = usualBand({ extent, shop });
  const { wheelDiameter, bandLength, guideGap } = shop;
  return {
    band,
    thick: band.thickness / usualBand({ extent, shop: { ...shop, bandThickness: undefined } }).thickness,
    wide: band.width / usualBand({ extent, shop: { ...shop, bandWidth: undefined } }).width,
    guides: (guideGap + extent / 2) / (2 * s.guideRoom.value + extent / 2),
    bending: wheelDiameter === undefined ? undefined : (k.modulus.value * band.thickness) / wheelDiameter,
    marks: bandLength === undefined ? undefined : ((height / minutes) * bandLength) / bandSpeed,
  };
}

/**
 * The numbers by which causes of trouble are told apart: teeth t/p in the thinnest part and W/p on the mean width; load c =
 * bite that runs / predicted, and c × g against what the metal takes at the right pitch; chip, gullet fill, speed / wanted;
 * push 0.8·Fc / half the buckling load; power / motor; what close guides would gain (gap + e/2)/(50 mm + e/2); bending
 * stress E·t/D at the wheels; marks of one turn, feed × band length / band speed. What is not known is NaN or undefined.
 * @param work section; material; blade; pitch [mm]; bandSpeed [mm/min]; minutes [min]; shop; trouble
 * @param seen chip [mm], fill [-], predictions, what to set [mm/min]
 * @returns the signs [-], bending [N/mm²], marks [mm]
 * @source kinematics, beam bending, data/symptomConstants; push and power: as the prediction
 */
export function cutSigns(work: TroubledCut, seen: SeenCut) {
  const { section, pitch, material } = work;
  const { thinnest, meanWidth, longestContact } = section.profile();
  const { least, most } = material.hardness;
  return {
    ...work,
    ...seen,
    ...forces(work, seen),
    ...against(work, seen),
    ...bandSigns(work),
    rate: section.area / work.minutes,
    group: material.group,
    spread: seen.predicted?.cut.row.spread ?? NaN,
    target: seen.predicted?.cut.plan.target ?? NaN,
    thinTeeth: thinnest / pitch.mean,
    teeth: meanWidth / pitch.mean,
    varying: longestContact / meanWidth,
    hardness: material.group === undefined ? NaN : (least + most) / 2 / material.group.maximumHardness,
  };
}

export type CutSigns = ReturnType<typeof cutSigns>;
