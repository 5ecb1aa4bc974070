import { shopConstants as k } from "../data/shopConstants";
import { InputError } from "../errors";
import { quantities, type Quantity } from "../quantities";
import { compactDesignation } from "./compactDesignation";
import type { Material } from "./material";

export interface OwnMaterial {
  readonly name: string;
  /** The known material whose values hold where the shop states none. */
  readonly like: Material;
  /** Rate of this material against the prediction [-]. */
  readonly rateFactor: number | undefined;
  /** [kg/mm³] */
  readonly density: number | undefined;
  /** [money/kg] */
  readonly price: number | undefined;
}

const parameter = "own material";

function checkName(name: string): string {
  const trimmed = name.trim();
  if (compactDesignation(trimmed) === "") throw new InputError("invalid", parameter, "{parameter} has no name");
  if (trimmed.length > k.longestName.value)
    throw new InputError("invalid", parameter, "the name is longer than {most} characters", {
      most: String(k.longestName.value),
    });
  return trimmed;
}

function checkRange(
  value: number | undefined,
  name: string,
  what: string,
  quantity: Quantity,
  least: number,
  most: number,
): void {
  if (value === undefined || (value >= least && value <= most)) return;
  const facts = { name, what, least: { number: least, quantity }, most: { number: most, quantity } };
  throw new InputError("invalid", parameter, "{name}: the {what} must be from {least} to {most}", facts);
}

/**
 * A material of the shop block: the values of a like grade, with the shop's own density, price and rate factor where they
 * are stated. It is held to the same ranges as the table: density from 1000 to 23000 kg/m³ (magnesium-lithium to tungsten),
 * a rate factor from 0.05 to 20 (beyond that the like grade is the wrong one), a price above 0.
 * @param input name [text]; like, a known material [-]; rateFactor [-]; density [kg/mm³]; price [money/kg]; undefined where not stated
 * @returns the material, marked as own [-]
 * @throws InputError "invalid": no name, a name too long, or a value out of range
 * @source the shop's own data; ranges: judgement
 */
export function ownMaterial({ name, like, rateFactor, density, price }: OwnMaterial): Material {
  const own = checkName(name);
  checkRange(rateFactor, own, "rate factor", "ratio", k.rateFactorFrom.value, k.rateFactorTo.value);
  checkRange(density, own, "density", "density", k.densityFrom.value, k.densityTo.value);
  checkRange(price, own, "price", "pricePerMass", 1e-6, quantities.pricePerMass.most);
  return {
    ...like,
    key: own,
    grade: own,
    isDefault: true,
    name: own,
    density: density ?? like.density,
    designations: [],
    tradeNames: [],
    sources: density === undefined ? like.sources : `${like.sources.charAt(0)}+${like.sources.slice(2)}`,
    own: true,
    ...(rateFactor === undefined ? {} : { rateFactor }),
    ...(price === undefined ? {} : { price }),
  };
}
