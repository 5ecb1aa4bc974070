import { quantities } from "../../src/quantities";
import { readSection } from "../../src/section/readSection";
import type { Section } from "../../src/section/section";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Shape } from "../../src/section/shape";
import { readLength } from "../../src/size/readLength";
import type { Kept, Kind } from "./kind";
import { numberWords } from "./units";
import { readNumber, type Limits } from "./number";
import { renamed, textual } from "./text";

/** Profiles that are kept: they are large, and asked for again only until a cut of their section is solved. */
const profiles = 100;

/** A section with its profile, made when first wanted and kept for a while, and with what is solved for it. */
export function withProfile(read: Section, memo: Kept): Shape {
  // Field by field: copying an object with two more takes ten times as long.
  return {
    text: read.text,
    note: read.note,
    area: read.area,
    pieces: read.pieces,
    rows: read.rows,
    columns: read.columns,
    nested: read.nested,
    pieceArea: read.pieceArea,
    hollow: read.hollow,
    mitre: read.mitre,
    outline: read.outline,
    profile: () => memo.get("profile", "", read, () => sectionProfile(read), profiles),
    solved: (what, by, solve) => memo.solved(what, [read, ...by], solve),
  };
}

/** A size string. */
export const section: Kind<Shape> = textual(
  "section",
  'a size with its shape, such as "round 7" or "W12x50"',
  (value, { units, memo }, parameter) => renamed(parameter, () => withProfile(readSection(value, units), memo)),
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
    const mm = memo.get("length", units, cell, () => renamed(parameter, () => readLength(cell, units)));
    return readNumber(mm / quantities.length[units].factor, "length", limits, units, parameter);
  },
});
