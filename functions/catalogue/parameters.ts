import { bladeClass, material, number, pitch, section } from "../kinds";
import { each, fromBlock, one, optional, orElse } from "../bind/entry";

/** Arguments that mean the same wherever they stand. */
export const sections = () => each(section, 'size with its shape, such as "round 7", "flat 6x1", "W12x50"');
export const oneSection = () => one(section, 'size with its shape, such as "round 7", "flat 6x1", "W12x50"');
export const materials = () => each(material, 'any designation of the grade, such as "304", "4140" or "1.4301"');
export const blades = () => each(bladeClass, '"bi-metal" or "carbide"');
export const pitches = () => each(pitch, 'teeth per inch: "3/4" as text is variable, 4 is straight');
export const optionalPitches = () =>
  optional(each(pitch, 'teeth per inch, "3/4" as text; left out: the one that PITCH gives'));
export const rates = () => each(number("areaRate"), "removal rate, area cut per minute");
const change = number("minutes", { zeroIsValue: true });
const changeHelp = "minutes to change a blade";
export const changes = () => orElse(each(change, changeHelp), 0);
export const oneChange = () => orElse(one(change, changeHelp), 0);
const kerfCost = number("money", { zeroIsValue: true });
const kerfHelp = (of: string): string => `${of}: chips, per area: kerf × density × material price less scrap`;
export const kerfCosts = (of: string) => orElse(each(kerfCost, kerfHelp(of)), 0);
export const oneKerfCost = (of: string) => orElse(one(kerfCost, kerfHelp(of)), 0);
const hourValue = number("moneyPerHour", { zeroIsValue: true });
const hourValueHelp =
  "worth of a saw hour: shop rate to quote; near 0 when idle; as bottleneck, what waiting work earns";
export const sawHourValues = () => each(hourValue, hourValueHelp);
export const oneSawHourValue = () => one(hourValue, hourValueHelp);
export const handlings = () =>
  fromBlock(
    orElse(
      each(number("minutes", { zeroIsValue: true }), "minutes per cut outside the cutting (clamp, index, return)"),
      0,
    ),
    "handlingMinutes",
  );
