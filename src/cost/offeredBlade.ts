import type { InputError } from "../errors";
import type { Blade } from "./blade";

/** A blade as a supplier offers it; life and rate in the buyer's own area unit. */
export interface OfferedBlade extends Blade {
  readonly name: string;
  /** Minutes to change this blade [min]. */
  readonly change: number;
  /** Share of the price taken off [-], from this many blades on. */
  readonly rebate: number;
  readonly rebateFrom: number;
}

/** An offer that cannot be read: the others are ranked without it. */
export interface UnreadOffer {
  readonly name: string;
  readonly refusal: InputError;
}
