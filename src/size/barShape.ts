/** A bar's nominal shape, sizes in mm. Radii: outer and inner corner of a box; root and toe of a rolled shape. */
export type BarShape =
  | { readonly kind: "round"; readonly diameter: number }
  | { readonly kind: "flat"; readonly width: number; readonly thickness: number }
  | { readonly kind: "hexagon" | "octagon" | "square"; readonly across: number }
  | { readonly kind: "tube"; readonly diameter: number; readonly wall: number }
  | {
      readonly kind: "box";
      readonly width: number;
      readonly height: number;
      readonly wall: number;
      readonly outer: number;
      readonly inner: number;
    }
  | {
      readonly kind: "angle";
      readonly long: number;
      readonly short: number;
      readonly thickness: number;
      readonly root: number;
      readonly toe: number;
    }
  | ({ readonly kind: "beam" | "channel" | "tee" } & Flanged);

export interface Flanged {
  readonly depth: number;
  readonly width: number;
  readonly web: number;
  /** Mean thickness of the flange outside the web [mm]. */
  readonly flange: number;
  /** Fall of the flange's inner face towards its tip [-]. */
  readonly slope: number;
  readonly root: number;
  readonly toe: number;
}
