import * as z from "zod/mini";
import type { Cell } from "./cell";
import type { Kind, Reading } from "./kind";
import { attempt } from "./refusal";
import { printText } from "./sentence";

/**
 * One cell of something that is read once from outside, by the kind that reads the same value as an argument: no range and
 * no word stands twice. What the kind refuses is the schema's issue, with `name` for the value.
 */
export const cellSchema = <T>(kind: Kind<T>, reading: Reading, name: string) =>
  z.pipe(
    z.unknown(),
    z.transform((cell, context): T => {
      const read = attempt(() => kind.read([cell as Cell], 0, reading, name));
      if ("value" in read) return read.value;
      const { refusal } = read;
      const facts = "facts" in refusal ? { ...refusal.facts, parameter: name } : {};
      const problem = "problem" in refusal ? refusal.problem : refusal.message;
      const template = name === "" || problem.includes("{parameter}") ? problem : `{parameter}: ${problem}`;
      context.issues.push({ code: "custom", message: printText({ template, facts }, reading.units), input: cell });
      return z.core.NEVER;
    }),
  );
