import type { Profile } from "./profile";
import type { Section } from "./section";

/** A section with its profile, which is made when first asked for: most questions about a size need only its area. */
export interface Shape extends Section {
  readonly profile: () => Profile;
  /** What was solved for this section and the very same other things, else what `solve` gives; left out, nothing is kept. */
  readonly solved?: <T>(what: string, by: readonly unknown[], solve: () => T) => T;
}
