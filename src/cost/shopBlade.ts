import type { BladeClass } from "../blade/bladeClass";
import { InputError } from "../errors";
import type { Material } from "../material/material";
import type { Shop } from "../shop/shop";
import { specialValue } from "../shop/specialValue";

const labels: Readonly<Record<BladeClass, string>> = { "bi-metal": "Bi-metal", carbide: "Carbide" };

/**
 * Price and life of a class of blade in one material, from the shop block: a life for the grade wins over one for its
 * cutting group, and both over the general one.
 * @param input blade class; material; shop
 * @returns price [money], life [mm²]
 * @throws InputError "invalid": the shop block gives no price, or no life
 * @source the shop's own data
 */
export function shopBlade({
  blade,
  material,
  shop,
}: {
  readonly blade: BladeClass;
  readonly material: Material;
  readonly shop: Shop;
}): { readonly price: number; readonly life: number } {
  const price = shop.prices[blade];
  const life = specialValue(shop.specialLives[blade], material)?.value ?? shop.lives[blade];
  if (price === undefined || life === undefined)
    throw new InputError("invalid", "settings", '{parameter} give no "{label}"', {
      label: `${labels[blade]} ${price === undefined ? "price" : "life"}`,
    });
  return { price, life };
}
