import { describeDesignation } from "./describeDesignation";
import { formsByFirst } from "./materialIndex";

function sharedStart(a: string, b: string): number {
  let i = 0;
  while (i < a.length && i < b.length && a[i] === b[i]) i++;
  return i;
}

/** Trade names are words: three letters in common are no likeness. */
const leastOfTradeName = 4;

/**
 * The designations that begin like an unknown one: longest shared beginning, at least half of it and two characters. No
 * edit distance: a grade with one other digit is another grade, and is offered only as a name to choose.
 * @param form compact form of the unknown designation [text]
 * @returns at most three designations, each of another grade [text]
 * @source common practice, no source
 */
export function nearestDesignations(form: string): readonly string[] {
  let longest = Math.max(2, form.length / 2);
  let found = new Map<string, string>();
  for (const [candidate, [entry]] of formsByFirst().get(form.charAt(0)) ?? []) {
    const shared = sharedStart(form, candidate);
    if (shared < longest || (shared < leastOfTradeName && entry!.designation.kind === "trade name")) continue;
    if (shared > longest) found = new Map();
    longest = shared;
    const { grade } = entry!.material;
    if (found.size < 3 && !found.has(grade)) found.set(grade, describeDesignation(entry!));
  }
  return [...found.values()];
}
