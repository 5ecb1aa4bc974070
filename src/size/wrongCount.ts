import { InputError } from "../errors";

/**
 * The refusal of a size with too few or too many dimensions.
 * @param name of the shape [text]
 * @param takes what it takes, in words with an example [text]
 * @param found number of dimensions found [-]
 * @param most number that it takes at most [-]
 * @returns the refusal [-]
 * @source common practice, no source
 */
export function wrongCount(name: string, takes: string, found: number, most: number): InputError {
  if (found === 0)
    return new InputError("invalid", "section", '"{name}" has no dimensions; {name} needs {takes}', { name, takes });
  const long = found > most ? ". The cut length does not belong in the size" : "";
  const noun = found === 1 ? "dimension" : "dimensions";
  return new InputError("invalid", "section", `{name} takes {takes}; found {found} ${noun}${long}`, {
    name,
    takes,
    found: String(found),
  });
}
