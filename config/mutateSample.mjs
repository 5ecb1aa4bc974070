// Draws places at random, in minutes instead of eight hours. Only the smallest pieces of code that are changed are drawn,
// none that holds another one: what is found out is the share of those, give or take the sample's error.
import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { Instrumenter } from "@stryker-mutator/instrumenter";

const quiet = { debug: () => undefined, info: () => undefined, warn: () => undefined, isDebugEnabled: () => false };

const filesIn = (folder) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((f) => join(folder, f))
    .filter((f) => f.endsWith(".ts") && !f.startsWith(join("src", "data")));

/** Whether `a` ends before `b` does, in lines and columns. */
const upTo = (a, b) => a.line < b.line || (a.line === b.line && a.column <= b.column);
const holds = (outer, inner) => upTo(outer.start, inner.start) && upTo(inner.end, outer.end);
const key = ({ start, end }) => `${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`;

/** The smallest places of one file, as ranges of Stryker. */
async function placesOf(file) {
  const content = readFileSync(file, "utf8");
  const options = { plugins: null, excludedMutations: [], ignorers: [], noHeader: false };
  const { mutants } = await new Instrumenter(quiet).instrument([{ name: file, mutate: true, content }], options);
  const places = [...new Map(mutants.map(({ location }) => [key(location), location])).values()];
  return places
    .filter((place) => places.every((other) => other === place || !holds(place, other)))
    .map((place) => `${file}:${key(place)}`);
}

/** `count` of the smallest places of these folders without the tables, the same for the same seed as long as the code stays the same. */
export async function drawn(folders, count, seed) {
  const all = (await Promise.all(folders.flatMap(filesIn).map(placesOf))).flat();
  const order = (place) => createHash("sha256").update(`${seed} ${place}`).digest("hex");
  return all
    .map((place) => [order(place), place])
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .slice(0, count)
    .map(([, place]) => place);
}
