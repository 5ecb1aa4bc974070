import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Text } from "../phrase";
import { cautionsOf } from "./cautionsOf";
import { changeFirst } from "./changeFirst";
import { cutNotes } from "./cutNotes";
import { limitPhrase } from "./limitPhrase";
import type { Pitch } from "../blade/pitch";
import { predictCut, type CutPrediction } from "./predictCut";
import type { CutWork } from "./prepareCut";
import { teethInCut } from "./teethInCut";

/** Motor power that the cut takes: through the drive, and what the band takes idle. */
const motorPower = (bandPower: number, { shop }: CutWork): number => {
  const { motorPower: motor, idlePower, driveEfficiency } = shop;
  const idle =
    idlePower ??
    (motor === undefined
      ? k.unknownIdle.value
      : Math.min(k.idleMost.value * motor, k.idleBase.value + k.idleShare.value * motor));
  return bandPower / driveEfficiency + idle;
};

const breakInText = ({ shop }: CutWork, { run }: CutPrediction): Text =>
  shop.breakInArea === 0
    ? "New blade: same band speed, about half the feed for the first cuts, then raise it step by step."
    : {
        template: "New blade: same band speed, {feed} for the first {area}, then raise it step by step.",
        facts: {
          feed: { number: run.rate * shop.breakInFeedShare, quantity: "areaRate" },
          area: { number: shop.breakInArea, quantity: "area" },
        },
      };

/**
 * The running sheet of one cut: pitch, band speed, chip thickness, feed, rate with low and high, power and force,
 * what holds it back, minutes = area / rate, and what to change first.
 * @param input section; material; blade class; pitch [1/in] or undefined; shop
 * @returns named values in core units [mm, mm/min, mm²/min, W, N, min] and sentences
 * @throws InputError as predictCut
 * @source data/groups, data/cuttingConstants; each constant with its mark
 */
export function cutData(input: CutWork & { readonly pitch: Pitch | undefined }) {
  const prediction = predictCut(input);
  const { cut, run, prepared, pitch, speed } = prediction;
  const teeth = teethInCut({ profile: cut.profile, pitch });
  return {
    pitch: pitch.text,
    teeth: teeth.mean,
    bandSpeed: speed,
    chipThickness: run.meanChip,
    feed: cut.profile.height / run.minutes,
    rate: prediction.rate,
    rateLow: prediction.rateLow,
    rateHigh: prediction.rateHigh,
    powerAtBand: run.greatestPower,
    powerAtMotor: motorPower(run.greatestPower, input),
    feedForce: run.greatestForce * k.feedShare.value,
    gulletFill: run.gulletFill * k.gulletFill.value,
    limit: limitPhrase(prediction) as Text,
    minutes: run.minutes,
    minutesLow: cut.profile.area / prediction.rateHigh,
    minutesHigh: cut.profile.area / prediction.rateLow,
    "break-in": breakInText(input, prediction),
    bandWidth: prepared.band.width,
    notes: cutNotes(prediction) as Text,
    changeFirst: changeFirst(prediction) as Text,
    cautions: cautionsOf(input.material) as Text,
  };
}
