import { once } from "../../src/once";
import { quantities } from "../../src/quantities";
import { readSection } from "../../src/section/readSection";
import type { Section } from "../../src/section/section";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Shape } from "../../src/section/shape";
import { readLength } from "../../src/size/readLength";
import type { Kind } from "./kind";
import { numberWords } from "./units";
import { readNumber, type Limits } from "./number";
import { renamed, textual } from "./text";

/** A section with its profile, made when first wanted and kept with it. */
export const withProfile = (read: Section): Shape => ({ ...read, profile: once(() => sectionProfile(read)) });

/** A size string. */
export const section: Kind<Shape> = textual(
  "section",
  'a size with its shape, such as "round 7" or "W12x50"',
  (value, { units }, parameter) => renamed(parameter, () => withProfile(readSection(value, units))),
  ({ units }) => units,
);

/** A length: a number in the call's unit, or text with its own. */
export const length = (limits: Limits = {}): Kind<number> => ({
  name: "length",
  width: 1,
  quantity: "length",
  zeroIsValue: limits.zeroIsValue ?? false,
  says: (units) => `${numberWords("length", units, "length")}, or text such as "20 ft" or "6 m"`,
  read: (cells, at, { units, memo }, parameter) => {
    const cell = cells[at];
    if (typeof cell !== "string") return readNumber(cell, "length", limits, units, parameter);
    const mm = memo.get("length", `${units}|${cell}`, () => renamed(parameter, () => readLength(cell, units)));
    return readNumber(mm / quantities.length[units].factor, "length", limits, units, parameter);
  },
});
