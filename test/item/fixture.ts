import { readFileSync } from "node:fs";
import { InputError } from "../../src/errors";
import { soundRefusal } from "../soundRefusal";

/** Rows of a fixture whose cells are parted by " | "; comment lines left out. */
export function fixture(name: string): string[][] {
  const lines = readFileSync(new URL(`../data/item/${name}`, import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));
  return lines.map((line) => line.split("|").map((cell) => cell.trim()));
}

/** The sentence of a refusal, with its facts put in. */
export function sentence(value: unknown): string {
  if (!(value instanceof InputError)) throw new Error(`not refused: ${JSON.stringify(value)}`);
  if (soundRefusal(value).parameter === "") throw new Error("a refusal of a line without its argument");
  return value.problem.replace(/\{(\w+)\}/g, (_, name: string) => String(value.facts[name]));
}
