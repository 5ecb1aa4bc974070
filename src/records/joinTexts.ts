import type { Fact } from "../errors";
import type { Phrase, Text } from "../phrase";

const phraseOf = (text: string | Phrase): Phrase => (typeof text === "string" ? { template: text, facts: {} } : text);

/**
 * Several texts as one, a sign between them; facts of the same name stay apart.
 * @param texts plain or with facts
 * @param sign that stands between them
 * @returns one phrase [text]
 * @source definition
 */
export function joinTexts(texts: readonly Text[], sign: string): Phrase {
  const facts: Record<string, Fact> = {};
  const templates = texts.map((text, i) => {
    const { template, facts: own } = phraseOf(Array.isArray(text) ? joinTexts(text, " ") : (text as string | Phrase));
    for (const [name, fact] of Object.entries(own)) facts[`${name}_${i}`] = fact;
    return template.replace(/\{(\w+)\}/g, (hole, name: string) => (name in own ? `{${name}_${i}}` : hole));
  });
  return { template: templates.filter((t) => t !== "").join(sign), facts };
}
