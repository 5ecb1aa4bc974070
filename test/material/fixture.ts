import { readFileSync } from "node:fs";

/** Rows of a fixture: comment lines and the heading left out, quoted cells unquoted. */
export function fixture(name: string): string[][] {
  const lines = readFileSync(new URL(`../data/material/${name}`, import.meta.url), "utf8")
    .trim()
    .split("\n")
    .filter((line) => !line.startsWith("#"));
  return lines
    .slice(1)
    .map((line) => [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map((cell) => cell[1] ?? cell[2] ?? ""));
}
