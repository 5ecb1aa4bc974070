import type { Phrase } from "../phrase";
import { limitNames, type LimitName } from "./cut";
import type { CutPrediction } from "./predictCut";

const percent = (share: number): string => String(Math.round(share * 100));

/** The limits by their share of the time, largest first, as places in limitNames. */
const ranked = (shares: readonly number[]): readonly number[] =>
  shares.map((_, i) => i).sort((a, b) => shares[b]! - shares[a]!);

const sentences: Readonly<Record<LimitName, string>> = {
  "usual rate": "Usual rate for {group}",
  "tooth load": "Tooth load: only {teeth} teeth share the thinnest part",
  gullet: "Gullets full where the work is widest, {widest}; a coarser pitch has more room",
  "maximum feed": "Maximum feed of the saw",
  "feed force": "Feed force: a {band} band over a span of {span}",
  "motor power": "Motor: {power} are left at the band",
};

/** What binds when the shares of the time alone do not say it. */
const overall = ({ slowed, prepared, run }: CutPrediction): string | undefined => {
  if (slowed) return "Motor: {power} are left at the band, so the band runs slower";
  if (prepared.capped === "none" || run.shares[0]! < 0.5) return undefined;
  return prepared.capped === "saw"
    ? "Maximum band speed of the saw, {speed}"
    : "Usual top speed of a general saw, {speed}: give your saw's own";
};

/**
 * What holds the cut back, in words: the limit with the largest share of the cutting time, and a second one above 20 %.
 * @param prediction a predicted cut; shares of the time [-]
 * @returns the sentence [text] with its measured facts
 * @source the share of time as the measure: judgement
 */
export function limitPhrase(prediction: CutPrediction): Phrase {
  const { run, cut, prepared, speed } = prediction;
  const [first, second] = ranked(run.shares) as [number, number];
  const special = overall(prediction);
  const main = special ?? `${sentences[limitNames[first]!]} ({share} % of the time)`;
  const other = special === undefined ? second : first === 0 ? second : first;
  const also = limitNames[other]!;
  const tail =
    run.shares[other]! > 0.2 && also !== "usual rate" && !(special !== undefined && also === "motor power")
      ? `; ${also} for {also} %`
      : "";
  const mode = cut.limits.constantFeed ? "; constant feed, set at a depth of {depth}" : "";
  const size = (number: number) => ({ number, quantity: "size" as const });
  return {
    template: `${main}${tail}${mode}.`,
    facts: {
      group: cut.group.name,
      teeth: String(Number((cut.profile.thinnest / cut.pitch.mean).toPrecision(2))),
      widest: size(cut.profile.maximumWidth),
      band: size(prepared.band.width),
      span: size(prepared.span),
      power: { number: cut.limits.power ?? 0, quantity: "power" },
      speed: { number: speed, quantity: "bandSpeed" },
      share: percent(run.shares[first]!),
      also: percent(run.shares[other]!),
      depth: size(run.governingDepth),
    },
  };
}
