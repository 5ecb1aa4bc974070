import type { Shape } from "../section/shape";
import type { Pitch } from "./pitch";
import { teethInCut } from "./teethInCut";

/**
 * Teeth in the cut of a section: mean, most, and fewest in one lasting contact.
 * @param input section; pitch [1/in]
 * @returns mean, most, fewest [-]
 * @throws InputError "invalid": an area alone has no shape
 * @source see teethInCut
 */
export function teeth({ section, pitch }: { readonly section: Shape; readonly pitch: Pitch }): ReturnType<typeof teethInCut> {
  return teethInCut({ profile: section.profile(), pitch });
}
