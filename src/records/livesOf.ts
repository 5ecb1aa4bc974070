import type { Life } from "../statistics/weibullFit";
import type { Ending } from "./bladeRecord";

const running: readonly Ending[] = ["still in use", "pulled"];

/**
 * Lives of a blade log: worn, broke and teeth lost are ends, because a new blade is then bought; still in use and pulled are
 * areas reached without an end. For the wear alone a breakage is no end.
 * @param areas area cut by each blade [area]
 * @param why each came off; undefined: all worn
 * @param counts what counts as an end
 * @returns lives [area]
 * @source renewal: the cost per area counts blades bought; wear apart from breakage: standard (competing risks)
 */
export function livesOf(
  areas: readonly number[],
  why: readonly Ending[] | undefined,
  counts: "cost" | "wear",
): readonly Life[] {
  return areas.map((area, i) => {
    const ending = why?.[i] ?? "worn";
    return { area, ended: counts === "wear" ? ending === "worn" : !running.includes(ending) };
  });
}
