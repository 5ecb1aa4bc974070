import { choosePitch } from "../../src/cutting/choosePitch";
import { cutCheck } from "../../src/cutting/cutCheck";
import { cutSigns } from "../../src/cutting/cutSigns";
import { predictCut } from "../../src/cutting/predictCut";
import { readPitch } from "../../src/blade/readPitch";
import { readSymptom } from "../../src/cutting/readSymptom";
import { InputError } from "../../src/errors";
import { work } from "./fixture";
import type { symptomCases } from "./symptomCases";

/** The numbers of a cut, with predictions made here from the model's own parts. */
export function signsOf([typed, size, grade, blade, pitch, speed, minutes, saw]: (typeof symptomCases)[number]) {
  const cut = {
    ...work(size, grade, blade, { ...saw, given: Object.keys(saw) }),
    pitch: readPitch(/^\d+$/.test(pitch) ? Number(pitch) : pitch),
  };
  const bandSpeed = speed * 304.8;
  const input = { ...cut, bandSpeed, minutes, trouble: readSymptom(typed) };
  const predicted = predictCut(cut);
  const free = predictCut({ ...cut, shop: { ...cut.shop, motorPower: undefined, bandWidth: undefined } });
  const got = cutCheck(input);
  return cutSigns(input, {
    chip: got.chipThickness,
    gulletFill: got.gulletFill instanceof InputError ? NaN : got.gulletFill,
    predicted,
    free,
    best: choosePitch(cut),
    bandSpeedToSet: undefined,
    feedToSet: undefined,
  });
}
