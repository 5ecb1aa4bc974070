import { workingOf } from "../steps";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { cutTime } from "./cutTime";
import { cuttingMinutes } from "./cuttingMinutes";

interface TimeInput {
  readonly section: Shape;
  readonly rate: number;
  readonly handling: number;
  readonly shop: Shop;
}

/** The working of CUTTIME. */
// prettier-ignore
export const timeWorking = workingOf((input: TimeInput) => {
  const { section, rate, handling, shop: { maximumFeed } } = input;
  const cutting = cuttingMinutes({ section, rate, maximumFeed });
  return {
    area: section.area, rate, maximumFeed, handling,
    plain: maximumFeed === undefined ? cutting : undefined,
    capped: maximumFeed === undefined ? undefined : cutting,
    minutes: cutTime(input),
  };
}, [
  ["area", "A", "cut area", "", "area", "geometry of the size"],
  ["rate", "rate", "removal rate", "", "areaRate", "yours"],
  ["maximumFeed", "", "maximum feed", "", "feed", "shop block"],
  ["plain", "Tc", "minutes of cutting", "A / rate", "minutes", "German vocational tables book, sawing page (read)"],
  ["capped", "Tc", "minutes of cutting", "Σ travel / min(rate / L, maximum feed)", "minutes", "sum over the way of the band"],
  ["handling", "handling", "handling minutes", "", "minutes", "yours, else the shop block's"],
  ["minutes", "T", "minutes per cut", "Tc + handling", "minutes", "definition"],
]);
