import type { Fact } from "../errors";
import type { Phrase } from "../phrase";

/**
 * A text with facts, without its parts in brackets where a fact of theirs is not known.
 * @param template text with {facts} and parts in [brackets]
 * @param facts what is known, by name
 * @returns the phrase [text]
 * @source own notation
 */
export function knownParts(template: string, facts: Readonly<Record<string, Fact>>): Phrase {
  const known = template.replace(/\[([^\]]*)\]/g, (_, part: string) =>
    [...part.matchAll(/\{(\w+)\}/g)].every(([, name]) => facts[name!] !== undefined) ? part : "",
  );
  return { template: known, facts };
}
