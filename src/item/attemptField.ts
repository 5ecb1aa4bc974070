import { InputError, orRefusal } from "../errors";
import { itemRefusal } from "./itemRefusal";

/**
 * What a reader gives, or its refusal as that of one field of the line: the line holds no answer that the reader takes.
 * @param read asks a reader [-]
 * @returns the value, or the refusal with reason "none" [-]
 * @source definition
 */
export function attemptField<T>(read: () => T): T | InputError {
  const field = orRefusal(read);
  return field instanceof InputError ? itemRefusal(field.problem, field.facts) : field;
}
