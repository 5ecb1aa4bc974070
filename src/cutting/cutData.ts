import { cuttingConstants as k } from "../data/cuttingConstants";
import type { Basis } from "../data/groups";
import type { Text } from "../phrase";
import { cautionsOf } from "./cautionsOf";
import type { PitchedWork } from "./cut";
import { cutNotes } from "./cutNotes";
import { idlePower } from "./idlePower";
import { limitWords } from "./limitWords";
import { meanChip } from "./meanChip";
import { predictCut, type CutPrediction } from "./predictCut";
import { solvedOnce } from "./solvedOnce";
import { tuningText } from "./tuningText";

const breakInText = ({ shop }: PitchedWork, { run }: CutPrediction): Text =>
  shop.breakInArea === 0
    ? "New blade: same band speed, about half the feed for the first cuts, then raise it step by step."
    : {
        template: "New blade: same band speed, {feed} for the first {area}, then raise it step by step.",
        facts: {
          feed: { number: run.rate * shop.breakInFeedShare, quantity: "areaRate" },
          area: { number: shop.breakInArea, quantity: "area" },
        },
      };

const said = ({ mark, text }: Basis): string => `${mark}, ${text}`;

/** Which figures are the handbook's, which are derived, which are judgement, and which the shop's own. */
const basisText = ({ cut }: CutPrediction, { material, blade }: PitchedWork): string => {
  const { speed, bite, spread } = cut.row.basis;
  const own = material.biteFactor;
  const times = own === undefined || blade === "carbide" ? "" : `; × ${own.value} for this grade: ${said(own.basis)}`;
  const tuned = cut.factorFrom === undefined ? "" : ` ${tuningText(cut)}.`;
  const band =
    cut.rateSpread === undefined ? spread : "about 80 % of your own cuts, by the Rate spread of the shop block";
  return `Band speed: ${said(speed)}. Pitch and size: Machinery's Handbook, 31st ed., p. 1245, read to 8 in wide. Bite: ${said(bite)}${times}.${tuned} Low to high: ${band}.`;
};

/**
 * The running sheet of one cut: what to set, what it gives with low and high, power and force, what holds it back,
 * minutes = area / rate, what stands behind the figures and what to change first.
 * @param input section; material; blade class; pitch [1/in] or undefined; shop
 * @returns named values in core units [mm, mm/min, mm²/min, W, N, min] and sentences
 * @throws InputError as predictCut
 * @source data/groups, data/cuttingConstants; each constant with its mark
 */
export function cutData(input: PitchedWork) {
  return solvedOnce("data", input, () => dataOf(input));
}

function dataOf(input: PitchedWork) {
  const prediction = predictCut(input);
  const { cut, run, pitch, rate } = prediction;
  const { profile } = cut;
  const { limit, changeFirst } = limitWords(prediction);
  return {
    bandSpeed: run.speed,
    feed: profile.height / run.minutes,
    pitch: pitch.text as Text,
    teeth: profile.meanWidth / pitch.mean,
    bite: rate / run.speed,
    chipThickness: meanChip({ rate, pitch, speed: run.speed, profile }),
    rate,
    rateLow: prediction.rateLow,
    rateHigh: prediction.rateHigh,
    minutes: run.minutes,
    minutesLow: profile.area / prediction.rateHigh,
    minutesHigh: profile.area / prediction.rateLow,
    limit: limit as Text,
    changeFirst,
    basis: basisText(prediction, input) as Text,
    powerAtBand: run.greatestPower,
    powerAtMotor: run.greatestPower / input.shop.driveEfficiency + idlePower(input.shop),
    feedForce: run.greatestForce * k.feedShare.value,
    gulletFill: run.gulletFill,
    bandWidth: cut.saw.band.width,
    "break-in": breakInText(input, prediction),
    notes: cutNotes(prediction, input) as Text,
    cautions: cautionsOf(input.material) as Text,
  };
}
