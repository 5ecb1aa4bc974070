import { itemConstants as k } from "../data/itemConstants";
import { InputError } from "../errors";
import { itemRefusal } from "./itemRefusal";

/** What a refusal proposes to write instead, at its end. */
const proposal = /[;:,.?]? ?(?:write|Write|did you mean|first|give) (?:for example )?"?([^"]+?)"?\??$/;

/**
 * A refusal as a person can use it: without a proposal that would itself be refused, with the line where there is room, and never too long.
 * @param refusal of a field [-]
 * @param line as it stands in the cell [text]
 * @param isGood whether a proposed text is read [-]
 * @returns the refusal [-]
 * @source definition
 */
export function tellRefusal(refusal: InputError, line: string, isGood: (proposed: string) => boolean): InputError {
  const facts = Object.entries(refusal.facts);
  if (facts.length === 0 || facts.some(([, fact]) => typeof fact !== "string")) return refusal;
  const told = refusal.problem.replace(
    /\{(\w+)\}/g,
    (hole, name: string) => (refusal.facts[name] as string | undefined) ?? hole,
  );
  const proposed = examples.test(told) ? proposal.exec(told) : null;
  const text =
    proposed === null || isGood(proposed[1]!)
      ? told
      : told.slice(0, proposed.index) + (/\?/.test(proposed[0].charAt(0)) ? "?" : "");
  const quoted = `${text} (in: ${line.trim().replace(/\s+/g, " ")})`;
  const room = k.longestRefusal.value;
  return itemRefusal("{text}", {
    text: quoted.length <= room ? quoted : text.length <= room ? text : `${text.slice(0, room - "…".length)}…`,
  });
}

const examples = /(?:for example|did you mean) "?[^"]+"?\??$/;
