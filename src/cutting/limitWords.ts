import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Phrase, Text } from "../phrase";
import { limitNames, type LimitName } from "./cut";
import type { CutPrediction } from "./predictCut";

/** What holds a cut back, and what to change first to cut faster. */
interface LimitWords {
  readonly limit: Phrase;
  readonly changeFirst: Text;
}

const percent = (share: number): string => String(Math.round(share * 100));

const sentences: Readonly<Record<LimitName, string>> = {
  "usual rate": "Usual rate for {group}{judged} ({share} % of the time)",
  gullet: "Gullets full where the work is widest, {widest} ({share} % of the time)",
  "maximum feed": "Maximum feed of the saw ({share} % of the time)",
  "feed force": "Feed force: a {band} band over a span of {span} ({share} % of the time)",
  "motor power": "Motor-limited: {power} available at the band ({share} % of the time)",
};

const advice: Readonly<Record<LimitName, string>> = {
  "usual rate": "Nothing on this saw holds the cut back: a better class of blade, or your own timed rate, changes it.",
  gullet: "The gullets hold no more at the pitch for this work: lay it so that less of it is cut at once.",
  "maximum feed": "The saw feeds no faster: cut more bars at once.",
  "feed force": "Set the guides closer, turn the work, or use a wider band.",
  "motor power": "The motor holds the cut back: first have its idle current measured, then weigh a bigger one.",
};

/** What binds when the usual rate holds most of the time: the saw's top speed. */
const capWords = {
  none: undefined,
  saw: "Maximum band speed of the saw, {speed}",
  general: "Usual top speed of a general saw, {speed}: give your saw's own",
} as const;

/** First what the usual rate itself is held by: the pitch, then the speeds of the saw. */
function changeFirst({ cut, pitch }: CutPrediction, first: LimitName): Text {
  if (first === "usual rate") {
    const { best } = cut.plan;
    if (cut.pitchFactor < k.ruleSlack.value && best !== undefined)
      return {
        template: "Take {best}: at {pitch} this cut takes {times} times as long.",
        facts: { best: best.text, pitch: pitch.text, times: (1 / cut.pitchFactor).toPrecision(3) },
      };
    if (cut.credit < 1)
      return "The slowest speed of this saw is above the usual one for this material: a slower saw would spare the blade.";
    if (cut.speeds.capped === "saw") return "A saw with a faster band would cut this sooner.";
    if (cut.speeds.capped === "general") return "Give the top band speed of your saw.";
    return advice[first];
  }
  return cut.saw.limits.constantFeed
    ? `A feed that slows only where the work is wide would help most: the whole cut runs at what one depth allows. ${advice[first]}`
    : advice[first];
}

/**
 * What holds the cut back, in words: the limit with the largest share of the cutting time, and a second one above 20 %;
 * and what to change first to cut faster.
 * @param prediction a predicted cut; shares of the time [-]
 * @returns the limit and the advice [text] with measured facts
 * @source the share of time as the measure: judgement
 */
export function limitWords(prediction: CutPrediction): LimitWords {
  const { run, cut } = prediction;
  const { shares } = run;
  const [first, second] = [...limitNames].sort((a, b) => shares[b] - shares[a]) as [LimitName, LimitName];
  const cap = first === "usual rate" ? capWords[cut.speeds.capped] : undefined;
  const tail = shares[second] > k.worthSaying.value && second !== "usual rate" ? `; ${second} for {also} %` : "";
  const mode = cut.saw.limits.constantFeed ? "; constant feed, set at a depth of {depth}" : "";
  const size = (number: number) => ({ number, quantity: "size" as const });
  const limit = {
    template: `${cap ?? sentences[first]}${tail}${mode}.`,
    facts: {
      group: cut.group.name,
      judged: cut.judged ? ", which is judgement" : "",
      widest: size(cut.profile.maximumWidth),
      band: size(cut.saw.band.width),
      span: size(cut.saw.span),
      power: { number: cut.saw.limits.power ?? 0, quantity: "power" as const },
      speed: { number: run.speed, quantity: "bandSpeed" as const },
      share: percent(shares[first]),
      also: percent(shares[second]),
      depth: size(run.governingDepth),
    },
  };
  return { limit, changeFirst: changeFirst(prediction, first) };
}
