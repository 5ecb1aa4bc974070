import { symptoms, type Symptom } from "../data/symptoms";
import { InputError } from "../errors";
import { once } from "../once";
import type { Trouble } from "./trouble";

const fold = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z]+/g, " ")
    .trim();

/** Every name of a symptom, the longest first. */
const names: () => readonly (readonly [name: string, symptom: Symptom])[] = once(() =>
  symptoms()
    .flatMap((symptom) => [symptom.name, ...symptom.alsoTyped].map((name) => [fold(name), symptom] as const))
    .sort(([a], [b]) => b.length - a.length),
);

/**
 * Reads a symptom as a sawyer types it: its name or one of its other names, with "new blade" or "old blade" anywhere in
 * it; else the longest name all of whose words stand in the text.
 * @param text such as "teeth broken off, new blade"
 * @returns the symptom and the age of the blade [text]
 * @throws InputError "none": no symptom of that name, with the names
 * @source the names: common practice, data/symptoms
 */
export function readSymptom(text: string): Trouble {
  const folded = fold(text);
  const blade = /\b(new|old) blade\b/.exec(folded)?.[1] as Trouble["blade"];
  const rest = folded.replace(/\b(new|old) blade\b/, " ").trim();
  const words = new Set(rest.split(" "));
  const found =
    names().find(([name]) => name === rest) ??
    names().find(([name]) => name.split(" ").every((word) => words.has(word)));
  if (found !== undefined) return { symptom: found[1], blade };
  throw new InputError("none", "symptom", '"{text}" is no symptom known here; choose from {names}', {
    text: text.slice(0, 100),
    names: symptoms()
      .map((s) => s.name)
      .join(", "),
  });
}
