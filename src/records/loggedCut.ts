import type { BladeClass } from "../blade/bladeClass";
import type { Pitch } from "../blade/pitch";
import type { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Text } from "../phrase";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import type { PitchedWork } from "../cutting/cut";

/** A column of a log: a value, a hole, or what is wrong with the cell. */
export type Rows<T> = readonly (T | InputError | undefined)[];

/** The cut log, column by column; shops are the saws of its rows. */
export interface CutLog {
  readonly section: Rows<Shape>;
  readonly material: Rows<Material>;
  readonly blade: Rows<BladeClass>;
  readonly minutes: Rows<number>;
  readonly pitch: Rows<Pitch> | undefined;
  readonly leaveOut: Rows<boolean> | undefined;
  readonly shops: readonly (Shop | InputError)[];
}

/** Neighbouring equal cuts: one observation with their mean minutes. */
export interface LoggedCut {
  /** Places in the log, from 1. */
  readonly rows: readonly number[];
  readonly work: PitchedWork;
  readonly minutes: number;
}

/** A row of the log that is not used, and why. */
export interface LeftOut {
  readonly row: number;
  readonly why: Text;
}

export interface ReadLog {
  readonly cuts: readonly LoggedCut[];
  readonly left: readonly LeftOut[];
  /** Rows that the log marks to be left out. */
  readonly marked: number;
}
