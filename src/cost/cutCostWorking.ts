import { workingOf } from "../steps";
import { minutesPerHour } from "../quantities";
import { cuttingMinutes } from "../time/cuttingMinutes";
import { cutCost, type CutCostInput } from "./cutCost";
import { kerfWidth } from "./kerfWidth";

/** The working of CUTCOST. */
// prettier-ignore
export const cutCostWorking = workingOf((input: CutCostInput) => {
  const { section, rate, hourlyCost, price, life, shop } = input;
  const minutes = cuttingMinutes({ section, rate, maximumFeed: shop.maximumFeed });
  const priced = shop.materialPrice !== undefined;
  return {
    ...cutCost(input), area: section.area, rate, hourlyCost, price, life, availability: shop.availability,
    perMinute: hourlyCost / (minutesPerHour * shop.availability),
    plain: shop.maximumFeed === undefined ? minutes : undefined,
    capped: shop.maximumFeed === undefined ? undefined : minutes,
    handlingMinutes: shop.handlingMinutes, changeMinutes: shop.changeMinutes, blades: section.area / life,
    breakInArea: shop.breakInArea, share: shop.breakInFeedShare,
    slot: priced ? kerfWidth(input) : undefined, density: priced ? shop.density : undefined,
    materialPrice: shop.materialPrice, scrapPrice: priced ? shop.scrapPrice : undefined,
    kerfCost: priced ? cutCost(input).kerf : undefined, noKerf: priced ? undefined : 0,
  };
}, [
  ["area", "A", "cut area", "", "area", "geometry of the size"],
  ["rate", "rate", "removal rate", "", "areaRate", "yours"],
  ["hourlyCost", "hour", "hourly cost", "", "moneyPerHour", "yours, else the shop block's"],
  ["availability", "av", "availability", "", "share", "shop block"],
  ["perMinute", "m", "paid minute", "hour / (60 × av)", "money", "an hour is paid whether the saw runs or not"],
  ["plain", "T", "minutes of cutting", "A / rate", "minutes", "German vocational tables book, sawing page (read)"],
  ["capped", "T", "minutes of cutting", "Σ travel / min(rate / L, maximum feed)", "minutes", "sum over the way of the band"],
  ["cutting", "cutting", "cutting", "m × T", "money", "machining economics"],
  ["handlingMinutes", "th", "handling minutes", "", "minutes", "shop block"],
  ["handling", "handling", "handling", "m × th", "money", "machining economics"],
  ["price", "price", "price of a blade", "", "money", "yours"],
  ["life", "life", "area that one blade cuts", "", "area", "yours"],
  ["blades", "n", "blades a cut", "A / life", "ratio", "definition"],
  ["bladeWear", "wear", "blade wear", "price × n", "money", "machining economics"],
  ["changeMinutes", "tc", "blade change minutes", "", "minutes", "shop block"],
  ["bladeChange", "change", "blade change", "m × tc × n", "money", "P. C. Sharma, A Textbook of Production Engineering, 11th ed., Ex. 4.7"],
  ["breakInArea", "Ab", "break-in area", "", "area", "shop block"],
  ["share", "share", "break-in feed share", "", "share", "shop block"],
  ["break-in", "breakin", "break-in", "m × Ab / rate × (1 / share − 1) × n", "money", "common practice"],
  ["slot", "kerf", "kerf", "", "size", "shop block, else the usual band's"],
  ["density", "density", "density", "", "density", "shop block"],
  ["materialPrice", "bar", "material price", "", "pricePerMass", "shop block"],
  ["scrapPrice", "scrap", "scrap price", "", "pricePerMass", "shop block"],
  ["kerfCost", "chips", "bar turned into chips", "A × kerf × density × (bar − scrap)", "money", "definition"],
  ["noKerf", "chips", "bar turned into chips", "", "money", "0: the shop block gives no material price"],
  ["cost", "cost", "cost of the cut", "cutting + handling + wear + change + breakin + chips", "money", "the sum of the parts"],
]);
