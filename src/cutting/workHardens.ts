import type { Group } from "../data/groups";

/**
 * Whether the surface of a metal hardens under a rubbing tooth: nickel, titanium and heat-resisting alloys, austenitic,
 * duplex and precipitation-hardening stainless.
 * @param group a cutting group
 * @returns true or false [-]
 * @source common practice, no source
 */
export function workHardens({ name, letter }: Group): boolean {
  return letter === "S" || name === "austenitic stainless" || name === "duplex and PH stainless";
}
