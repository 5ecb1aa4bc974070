import type { Text } from "../phrase";
import { cautionsOf } from "./cautionsOf";
import { coachText } from "./coachText";
import { seeCut, type CutCheckInput } from "./seeCut";

/**
 * Judges a cut as it runs now: rate = A/minutes, mean chip = rate·p/(v·W), teeth W/p, gullet fill, speed against the one
 * wanted, feed H/minutes, and what to change first with the settings that follow from it. With a symptom its likely causes come first.
 * @param input section; material; blade; pitch [1/in]; bandSpeed v [mm/min]; minutes of cutting [min]; symptom; shop
 * @returns verdict [text]; rates [mm²/min]; chipThickness [mm]; teeth, gulletFill, speedAgainstGroup [-]; feeds and speeds [mm/min]; minutesSaved [min]; cautions [text]
 * @throws InputError "invalid": an area alone
 * @source kinematics: German vocational tables book, sawing page (read); the verdict: see judgeCut
 */
export function cutCheck(input: CutCheckInput) {
  const { section, material, pitch, minutes, symptom } = input;
  const profile = section.profile();
  const { chip, result, known } = seeCut(input);
  const causes: Text = symptom === undefined ? "" : coachText({ ...input, trouble: symptom }, known);
  return {
    verdict: causes === "" ? result.verdict : ([causes, "As it is set:", result.verdict] as Text),
    rate: section.area / minutes,
    chipThickness: chip,
    teeth: profile.meanWidth / pitch.mean,
    gulletFill: result.gulletFill,
    speedAgainstGroup: result.speedAgainstGroup,
    feed: profile.height / minutes,
    bandSpeedToSet: result.bandSpeedToSet,
    feedToSet: result.feedToSet,
    minutesSaved: result.minutesSaved,
    expectedLow: result.expectedLow,
    expectedHigh: result.expectedHigh,
    causes,
    cautions: cautionsOf(material) as Text,
  };
}
