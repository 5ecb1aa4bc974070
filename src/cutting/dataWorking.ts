import { cuttingConstants as k } from "../data/cuttingConstants";
import { workingOf, type StepLines } from "../steps";
import type { PitchedWork } from "./cut";
import { cutRecord, rateLines } from "./cutWorking";
import { idlePower } from "./idlePower";
import { meanChip } from "./meanChip";
import { predictCut } from "./predictCut";

/** Low and high are the rate ÷ and × S where no saw limits it and the shop has no spread of its own; else runs of their own. */
function endValues(work: PitchedWork) {
  const { cut, rateLow, rateHigh } = predictCut(work);
  const { maximumFeed, feedForce, power } = cut.saw.limits;
  const plain =
    cut.rateSpread === undefined && maximumFeed === undefined && feedForce === undefined && power === undefined;
  return {
    spread: cut.rateSpread ?? cut.row.spread,
    low: plain ? rateLow : undefined,
    high: plain ? rateHigh : undefined,
    lowRun: plain ? undefined : rateLow,
    highRun: plain ? undefined : rateHigh,
    minutesLow: cut.profile.area / rateHigh,
    minutesHigh: cut.profile.area / rateLow,
  };
}

const record = (work: PitchedWork) => {
  const { cut, run, rate, pitch } = predictCut(work);
  const { profile } = cut;
  const idle = idlePower(work.shop);
  return {
    ...cutRecord(work),
    meanSpeed: run.speed,
    teeth: profile.meanWidth / pitch.mean,
    biteRun: rate / run.speed,
    chip: meanChip({ rate, pitch, speed: run.speed, profile }),
    ...endValues(work),
    force: run.greatestForce,
    feedForce: run.greatestForce * k.feedShare.value,
    power: run.greatestPower,
    idle,
    efficiency: work.shop.driveEfficiency,
    motorNeeded: run.greatestPower / work.shop.driveEfficiency + idle,
    fill: run.gulletFill,
    feed: profile.height / run.minutes,
  };
};

/** Lines of the running sheet, after those of the rate. */
// prettier-ignore
export const dataLines: StepLines<Omit<ReturnType<typeof record>, "sources">> = [
  ...rateLines,
  ["meanSpeed", "vm", "band speed to set", "Σ v × time / T: slower where the motor holds", "bandSpeed", "mean over the time"],
  ["teeth", "z", "teeth in the cut", "W / p", "ratio", "German vocational tables book, sawing page (read)"],
  ["biteRun", "", "bite as it runs", "rate / vm", "chip", "definition"],
  ["chip", "f", "mean chip thickness", "rate × p / (vm × W)", "chip", "German vocational tables book, sawing page (read)"],
  ["spread", "S", "spread of the rate", "", "ratio", "group and class, or the shop block's: docs/sources.md"],
  ["low", "low", "low rate", "rate / S", "areaRate", "docs/sources.md, spreads"],
  ["high", "high", "high rate", "rate × S", "areaRate", "docs/sources.md, spreads"],
  ["lowRun", "low", "low rate", "Σ the cut again with everything uncertain against it", "areaRate", "docs/method.md, low and high"],
  ["highRun", "high", "high rate", "Σ the cut again with everything uncertain for it", "areaRate", "docs/method.md, low and high"],
  ["minutesLow", "", "minutes at the high rate", "A / high", "minutes", "definition"],
  ["minutesHigh", "", "minutes at the low rate", "A / low", "minutes", "definition"],
  ["force", "Fc", "greatest cutting force", `Σ the most on the way of kerf × ${k.sawFactor.value} × ${k.wearFactor.value} × n × f × kc`, "force", "Kienzle's law: German vocational tables book, sawing page (read)"],
  ["feedForce", "", "feed force", `${k.feedShare.value} × Fc`, "force", "memory"],
  ["power", "Pb", "greatest power at the band", "Σ the most on the way of Fc × v / 60000", "power", "definition"],
  ["idle", "P0", "idle power", "", "power", "shop block, else from the motor's size"],
  ["efficiency", "eff", "drive efficiency", "", "ratio", "shop block"],
  ["motorNeeded", "", "power at the motor", "Pb / eff + P0", "power", "definition"],
  ["fill", "", "fullest gullet", `Σ the most on the way of u × L / (${k.gulletArea.value} × ${k.gulletFill.value} × p / R)`, "ratio", "derived"],
  ["feed", "", "feed to set", "H / T", "feed", "mean over the way down"],
];

/** The working of CUTDATA. */
export const dataWorking = workingOf(record, dataLines);
