import type { Pitch } from "../blade/pitch";
import { cuttingConstants as k } from "../data/cuttingConstants";
import { InputError, orRefusal, type Fact } from "../errors";
import type { Text } from "../phrase";
import type { Shop } from "../shop/shop";
import { choosePitch } from "./choosePitch";
import type { CutWork } from "./cut";
import type { SeenCut } from "./cutSigns";
import { gulletRoom } from "./gulletRoom";
import { judgeCut, type Seen } from "./judgeCut";
import { meanChip } from "./meanChip";
import { predictCut, type CutPrediction } from "./predictCut";
import type { Trouble } from "./trouble";

export interface CutCheckInput extends CutWork {
  readonly pitch: Pitch;
  readonly bandSpeed: number;
  readonly minutes: number;
  /** What is wrong with it, or undefined: nothing is said. */
  readonly symptom?: Trouble | undefined;
}

/** What a cut that runs is judged by; the refusal where nothing can be predicted for it. */
type Judged =
  | InputError
  | (Omit<Seen, "predicted"> & { readonly predicted: CutPrediction; readonly at: (pitch: Pitch) => CutPrediction });

/** The same saw with nothing that limits a cut. */
const freed = (shop: Shop): Shop => ({
  ...shop,
  motorPower: undefined,
  maximumFeed: undefined,
  maximumFeedForce: undefined,
  bandWidth: undefined,
  minimumBandSpeed: undefined,
  maximumBandSpeed: Infinity,
});

/** Predictions with the group's own spread, never the shop's: what is judged is the cut, not the log. */
function judged(input: CutCheckInput, rate: number): Judged {
  const shop = { ...input.shop, rateSpread: undefined, rateSpreads: [] };
  const at = (pitch: Pitch): CutPrediction => predictCut({ ...input, shop, pitch });
  const { bandSpeed, pitch } = input;
  return orRefusal(() => {
    const best = choosePitch(input);
    const predicted = at(pitch);
    const free = predictCut({ ...input, shop: freed(shop), pitch });
    const load = rate / bandSpeed / (predicted.rate / predicted.run.speed);
    const chip = meanChip({ rate, pitch, speed: bandSpeed, profile: predicted.cut.profile });
    return { rate, bandSpeed, chip, gulletFill: predicted.run.gulletFill * load, predicted, free, best, at };
  });
}

/** Nothing can be predicted: the verdict is the reason, and what runs is still given. */
function unjudged(refusal: InputError, { material, pitch, bandSpeed }: CutCheckInput, rate: number) {
  const { group } = material;
  const brief = Object.fromEntries(
    Object.entries(refusal.facts).map(([name, fact]): [string, Fact] => [
      name,
      typeof fact === "string" ? fact : { ...fact, digits: k.saidDigits.value },
    ]),
  );
  return {
    verdict: { template: refusal.problem, facts: { ...brief, parameter: refusal.parameter } } as Text,
    gulletFill: group === undefined ? refusal : rate / bandSpeed / gulletRoom(pitch.mean, group),
    speedAgainstGroup: refusal,
    bandSpeedToSet: refusal,
    feedToSet: refusal,
    minutesSaved: refusal,
    expectedLow: refusal,
    expectedHigh: refusal,
  };
}

/** The verdict, what to set by it and what it saves. */
function advised(seen: Exclude<Judged, InputError>, { minutes }: CutCheckInput) {
  const { predicted, best, bandSpeed, at } = seen;
  const { says, set } = judgeCut(seen);
  const { height } = predicted.cut.profile;
  const better = set === "best pitch" ? at(best) : predicted;
  const now = { bandSpeedToSet: bandSpeed, feedToSet: height / minutes, minutesSaved: 0 };
  const then = {
    bandSpeedToSet: better.run.speed,
    feedToSet: height / better.run.minutes,
    minutesSaved: minutes - better.run.minutes,
  };
  return {
    verdict: says as Text,
    gulletFill: seen.gulletFill,
    speedAgainstGroup: bandSpeed / predicted.cut.speeds.wanted,
    ...(set === "as it runs" ? now : then),
    expectedLow: predicted.rateLow,
    expectedHigh: predicted.rateHigh,
  };
}

/** What is known of a cut for the causes of its trouble. */
const knownOf = (
  seen: Judged,
  chip: number,
  result: ReturnType<typeof unjudged> | ReturnType<typeof advised>,
): SeenCut => {
  const known = <T>(value: T | InputError): T | undefined => (value instanceof InputError ? undefined : value);
  const { predicted, free, best } = seen instanceof InputError ? ({} as Partial<Exclude<Judged, InputError>>) : seen;
  return {
    chip,
    gulletFill: known(result.gulletFill) ?? NaN,
    predicted,
    free,
    best,
    bandSpeedToSet: known(result.bandSpeedToSet),
    feedToSet: known(result.feedToSet),
  };
};

/**
 * What is seen of a cut that runs: its chip, the verdict with what to set by it, and what tells causes of trouble apart.
 * Where nothing can be predicted the verdict is the reason.
 * @param input section; material; blade; pitch [1/in]; bandSpeed v [mm/min]; minutes of cutting [min]; shop
 * @returns chip [mm]; the judgement [mm/min, min, -]; what is known of it for causes
 * @throws InputError "invalid": an area alone
 * @source judgeCut, predictCut
 */
export function seeCut(input: CutCheckInput) {
  const { section, pitch, bandSpeed, minutes } = input;
  const profile = section.profile();
  const rate = section.area / minutes;
  const seen = judged(input, rate);
  const result = seen instanceof InputError ? unjudged(seen, input, rate) : advised(seen, input);
  const chip = meanChip({ rate, pitch, speed: bandSpeed, profile });
  return { chip, result, known: knownOf(seen, chip, result) };
}
