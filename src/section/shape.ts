import type { Profile } from "./profile";
import type { Section } from "./section";

/** A section with its profile, which is made when first asked for: most questions about a size need only its area. */
export interface Shape extends Section {
  readonly profile: () => Profile;
}
