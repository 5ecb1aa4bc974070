import type { Symptom } from "../data/symptoms";

/** What a sawyer sees, and the age of the blade where it is said. */
export interface Trouble {
  readonly symptom: Symptom;
  readonly blade: "new" | "old" | undefined;
}
