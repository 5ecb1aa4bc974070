import type { Edge } from "./outlineEdges";

/** The edges of one row of bars that cross a slab, from left to right; two and two enclose metal. */
export interface Course {
  readonly edges: readonly Edge[];
  /** Depth of the row's top and sideways shift of its first bar [mm]. */
  readonly drop: number;
  readonly shift: number;
}

/** Between two neighbouring breaks (corners, ends and extremes of arcs) every edge runs from top to bottom. */
export interface Slab {
  readonly top: number;
  readonly bottom: number;
  readonly courses: readonly Course[];
}

/** A slab and how the stack repeats it. */
export interface Part {
  readonly slab: Slab;
  readonly times: number;
  /** Depth of the first one's frame in the stack [mm]. */
  readonly above: number;
}

/** Slabs that the stack repeats: repetition i has its depths at i × period. */
export interface Layer {
  readonly times: number;
  readonly period: number;
  /** Every second repetition is upside down: the halves of a bar that is its own mirror image. */
  readonly mirrored: boolean;
  readonly slabs: readonly Slab[];
}

export interface Stack {
  readonly layers: readonly Layer[];
  readonly height: number;
  readonly barHeight: number;
  /** Width of the whole stack, square to the bars [mm]. */
  readonly width: number;
  readonly spread: Spread;
}

/** What the band meets at one depth [mm]; see Station. */
export interface Contact {
  readonly contact: number;
  readonly extent: number;
  readonly longest: number;
  readonly shortest: number;
}

/** How the widths of one row of bars become those of the stack. */
export interface Spread {
  readonly columns: number;
  /** Distance of the columns [mm]. */
  readonly spacing: number;
  /** 1/cos(mitre) [-]: every distance along the band. */
  readonly secant: number;
  /** Published area / outline area [-]: every contact. */
  readonly share: number;
}
