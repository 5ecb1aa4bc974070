import { InputError } from "../errors";

/**
 * A value of the shop block that has no default.
 * @param value as the block gives it, in its unit [-]
 * @param label of the block that gives it [text]
 * @returns the value [its unit]
 * @throws InputError "invalid": the block does not give it
 * @source definition
 */
export function needed(value: number | undefined, label: string): number {
  if (value === undefined) throw new InputError("invalid", "settings", '{parameter} give no "{label}"', { label });
  return value;
}
