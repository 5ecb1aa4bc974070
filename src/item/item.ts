import type { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Units } from "../quantities";
import type { Section } from "../section/section";
import type { Shape } from "../section/shape";

/** What one description cell means. Each field that the line does not say, or leaves open, holds its own refusal. */
export interface Item {
  /** Canonical size: reading it again gives an equal section. */
  readonly size: string | InputError;
  readonly section: Section | InputError;
  /** Display name of the material: it resolves to the same material. */
  readonly material: string | InputError;
  readonly grade: Material | InputError;
  /** [mm] */
  readonly length: number | InputError;
  /** Pieces [-]. */
  readonly quantity: number | InputError;
  /** Words that no reader knows, and numbers that only label the line, in their order; empty where there are none. */
  readonly unread: string;
  /** What was assumed, in words. */
  readonly notes: readonly string[];
}

/** What QUOTE takes of an item: its size with the profile, grade and length, each given or refused. */
export interface OrderItem {
  readonly shape: Shape | InputError;
  readonly grade: Material | InputError;
  readonly length: number | InputError;
  /** What was assumed, in words. */
  readonly notes: readonly string[];
}

/** What an atom was read as; "" is not yet read. */
export type Role = "" | "quantity" | "length" | "material" | "size" | "unread" | "read";

/** The smallest piece of a line. */
export interface Atom {
  /** code: letters and figures that are no size; mark: one sign. */
  readonly kind: "number" | "x" | "word" | "code" | "mark";
  /** In plain English letters. */
  readonly text: string;
  /** As written. */
  readonly typed: string;
  /** A space stands before it. */
  readonly spaced: boolean;
}

/** A line while it is read: its atoms and, one for each, what it was read as. */
export interface Line {
  readonly atoms: readonly Atom[];
  readonly roles: Role[];
  /** Unit of bare numbers. */
  readonly units: Units;
}
