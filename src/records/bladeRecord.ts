/** Why a blade came off, or that it has not. */
export const endings = ["worn", "broke", "teeth lost", "still in use", "pulled"] as const;
export type Ending = (typeof endings)[number];

/** Money saved per unit of area, with the band that it lies in with 80 %. */
export interface Saving {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}
