import type { Shape } from "./shape";

/** What the worksheet shows of a section; lengths [mm], area [mm²]. */
export interface SectionData {
  readonly area: number;
  readonly height: number;
  readonly meanWidth: number;
  readonly maximumWidth: number;
  readonly longestContact: number;
  readonly thinnestContact: number;
  readonly read: string;
}

/**
 * The figures of a section and how its size was read.
 * @param profile of the stack [-]
 * @returns area [mm²]; height, mean, maximum width, longest single and thinnest lasting contact [mm]; read [text]
 * @source geometry
 */
export function sectionData({ section: shape }: { readonly section: Shape }): SectionData {
  const { area, height, meanWidth, maximumWidth, longestContact, thinnest, section } = shape.profile();
  return { area, height, meanWidth, maximumWidth, longestContact, thinnestContact: thinnest, read: section.note };
}
