import type { InputError } from "../src/errors";

/**
 * A refusal that can be told: one of the two reasons, an argument's name in small letters (or none), and a fact for every
 * place of its sentence. Anything else is a fault of the refusal itself.
 */
export function soundRefusal(refusal: InputError): InputError {
  const { reason, parameter, problem, facts } = refusal;
  if (!["invalid", "none"].includes(reason)) throw new Error(`no reason: ${reason}`);
  if (!/^[a-z-]*(?: [a-z-]+)*$/i.test(parameter)) throw new Error(`no argument's name: ${parameter}`);
  for (const [, name] of problem.matchAll(/\{(\w+)\}/g))
    if (name !== "parameter" && facts[name!] === undefined) throw new Error(`no fact {${name!}} for: ${problem}`);
  return refusal;
}
