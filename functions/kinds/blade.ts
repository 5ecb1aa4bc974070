import type { BladeClass } from "../../src/blade/bladeClass";
import type { Pitch } from "../../src/blade/pitch";
import { readPitch } from "../../src/blade/readPitch";
import type { Blade, Offer } from "../../src/cost/blade";
import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { isBlank, type Cell } from "./cell";
import type { Kind } from "./kind";
import { readNumber } from "./number";
import { choice, renamed, textual } from "./text";

/** A tooth pitch: "3/4", or a number for a straight one. */
export const pitch: Kind<Pitch> = textual(
  "pitch",
  'teeth per inch, "3/4" for variable, 4 for straight',
  (value, _, parameter) => renamed(parameter, () => readPitch(value)),
  () => "",
);

/** More than any shop stocks, and each is tried for each cut. */
const mostPitches = 40;

/** Pitches to choose from, in one cell. */
export const pitchList: Kind<readonly Pitch[]> = textual(
  "pitches",
  "pitches such as 2/3, 3/4, 4/6",
  (value, _, parameter) => {
    const list = (typeof value === "number" ? [value] : value.split(/[,;]/)).filter((p) => String(p).trim() !== "");
    if (list.length > mostPitches)
      throw new InputError("invalid", parameter, "{parameter} holds {count} pitches; at most {most} are looked at", {
        count: String(list.length),
        most: String(mostPitches),
      });
    return list.map((p) => renamed(parameter, () => readPitch(p)));
  },
  () => undefined,
);

/** The class of band. */
export const bladeClass: Kind<BladeClass> = choice("bi-metal", "carbide");

const bladeCells = ["price", "life", "rate"] as const;
const bladeQuantity = { price: "money", life: "ownArea", rate: "ownArea" } as const;

const readBladeCell = (cells: readonly Cell[], at: number, units: Units, parameter: string, which: number): number => {
  const name = `${parameter} ${bladeCells[which]!}`;
  const cell = cells[at + which];
  if (isBlank(cell, false)) throw new InputError("invalid", name, "{parameter} is empty or 0");
  return readNumber(cell, bladeQuantity[bladeCells[which]!], {}, units, name);
};

/** A rate as large as the life would wear a blade out within a minute: the two cells are swapped. */
export const refuseSwapped = (life: number | undefined, rate: number | undefined, parameter: string): void => {
  if (life !== undefined && rate !== undefined && rate >= life)
    throw new InputError(
      "invalid",
      parameter,
      "{parameter}: the rate is not less than the life; the three cells are price, life, rate, in that order",
    );
};

/** A blade bought or in use: three neighbouring cells of one row, price, life, rate. */
export const blade: Kind<Blade> = {
  name: "blade",
  width: 3,
  zeroIsValue: false,
  says: () => "three neighbouring cells: price, life, rate, each more than 0",
  read: (cells, at, { units }, parameter) => {
    const [price, life, rate] = [0, 1, 2].map((i) => readBladeCell(cells, at, units, parameter, i)) as [
      number,
      number,
      number,
    ];
    refuseSwapped(life, rate, parameter);
    return { price, life, rate };
  },
};

/** A blade whose life is logged: the same three cells, of which the life is not used. */
export const triedBlade: Kind<Pick<Blade, "price" | "rate">> = {
  name: "blade",
  width: 3,
  zeroIsValue: false,
  says: () => "three neighbouring cells: price, life, rate; the life is not used and may be blank",
  read: (cells, at, { units }, parameter) => {
    const [price, rate] = [0, 2].map((i) => readBladeCell(cells, at, units, parameter, i)) as [number, number];
    return { price, rate };
  },
};

/** A blade of which one cell may be blank: the one that is solved for. */
export const offer: Kind<Offer> = {
  name: "offer",
  width: 3,
  zeroIsValue: false,
  says: () => "three neighbouring cells: price, life, rate; the one solved for may be blank",
  read: (cells, at, { units }, parameter) => {
    const given = [0, 1, 2].map((i) =>
      isBlank(cells[at + i], false) ? undefined : readBladeCell(cells, at, units, parameter, i),
    );
    const missing = given.filter((x) => x === undefined).length;
    if (missing > 1)
      throw new InputError("invalid", parameter, "{parameter}: at most one of price, life and rate may be blank");
    const [price, life, rate] = given;
    refuseSwapped(life, rate, parameter);
    return { price, life, rate };
  },
};
