import { InputError, type Fact } from "../errors";

/**
 * The refusal of one field of a line: the line does not say it, or leaves it open.
 * @param problem template of the sentence [text]
 * @param facts for the template [-]
 * @returns the refusal, reason "none" [-]
 * @source definition
 */
export function itemRefusal(problem: string, facts: Readonly<Record<string, Fact>> = {}): InputError {
  return new InputError("none", "item", problem, facts);
}
