import { readFileSync } from "node:fs";
import { InputError } from "../../src/errors";
import type { Units } from "../../src/quantities";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Shape } from "../../src/section/shape";
import { soundRefusal } from "../soundRefusal";

/** Rows of a fixture: comment lines and the heading left out, quoted cells unquoted. */
export function fixture(name: string): string[][] {
  const lines = readFileSync(new URL(`../data/section/${name}`, import.meta.url), "utf8")
    .trim()
    .split("\n")
    .filter((line) => !line.startsWith("#"));
  return lines
    .slice(1)
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map((cell) =>
        (cell[1] ?? cell[2] ?? "").replace(/""/g, '"'),
      ),
    );
}

/** The refusal that a call ends in: reason, parameter and its sentence with the facts put in. */
export function anyRefusal(run: () => unknown): { reason: string; parameter: string; sentence: string } {
  try {
    run();
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const sentence = soundRefusal(error).problem.replace(/\{(\w+)\}/g, (_, name: string) => String(error.facts[name]));
    return { reason: error.reason, parameter: error.parameter, sentence };
  }
  throw new Error("not refused");
}

/** The same of a size or a length, which always names its argument. */
export function refusal(run: () => unknown): ReturnType<typeof anyRefusal> {
  const refused = anyRefusal(run);
  if (refused.parameter === "") throw new Error("a refusal of a size or length without its argument");
  return refused;
}

/** A size with its profile, as the worksheet's reader makes it. */
export function shape(text: string, units: Units = "inch"): Shape {
  const section = readSection(text, units);
  return { ...section, profile: () => sectionProfile(section) };
}
