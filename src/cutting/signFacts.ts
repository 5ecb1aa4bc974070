import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Fact } from "../errors";
import type { Quantity } from "../quantities";
import type { CutSigns } from "./cutSigns";

const of = (quantity: Quantity, number: number | undefined): Fact => ({
  number: number ?? NaN,
  quantity,
  digits: k.saidDigits.value,
});

/** Numbers that compare: times, shares, teeth. */
const ratios = (signs: CutSigns): Readonly<Record<string, Fact>> =>
  Object.fromEntries(
    Object.entries({
      thinTeeth: signs.thinTeeth,
      teeth: signs.teeth,
      load: signs.load,
      heavy: signs.heavy,
      fill: signs.gulletFill,
      speedTimes: signs.speed,
      push: signs.push,
      motor: signs.motor,
      hardness: signs.hardness,
      varying: signs.varying,
      times: 1 / signs.factor,
    }).map(([name, number]) => [name, of("ratio", number)]),
  );

/**
 * The numbers of a cut as facts for sentences, three digits each. A number that is not known is left out.
 * @param signs the numbers of the cut
 * @returns facts by name [in their quantities' units]
 * @source the same numbers as cutSigns gives
 */
export function signFacts(signs: CutSigns): Readonly<Record<string, Fact>> {
  const { section, shop, band, best, predicted } = signs;
  const minutes = (rate: number | undefined): Fact =>
    of("minutes", rate === undefined ? undefined : section.area / rate);
  const facts: Readonly<Record<string, Fact>> = {
    ...ratios(signs),
    chip: of("chip", signs.chip),
    speed: of("bandSpeed", signs.bandSpeed),
    wanted: of("bandSpeed", predicted?.cut.speeds.wanted),
    bandSpeedToSet: of("bandSpeed", signs.bandSpeedToSet),
    feedToSet: of("feed", signs.feedToSet),
    guideGap: of("size", shop.given.includes("guideGap") ? shop.guideGap : undefined),
    thickness: of("size", band.thickness),
    width: of("size", band.width),
    extent: of("size", section.profile().maximumExtent),
    tension: of("stress", shop.bandTension),
    bending: of("stress", signs.bending),
    marks: of("size", signs.marks),
    minutes: of("minutes", signs.minutes),
    minutesLow: minutes(predicted?.rateHigh),
    minutesHigh: minutes(predicted?.rateLow),
    pitch: signs.pitch.text,
    best: best?.text ?? of("ratio", undefined),
  };
  return Object.fromEntries(
    Object.entries(facts).filter(([, fact]) => typeof fact === "string" || Number.isFinite(fact.number)),
  );
}
