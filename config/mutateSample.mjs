// Draws places at random for `npm run mutate -- --checkers sample`: the share of planted faults that the tests notice is
// then that of all places, give or take the sample's error, in half an hour instead of eight hours. A place that is not
// drawn is reported as "CompileError", the only way by which a checker can leave one out.
import { createHash } from "node:crypto";
import { relative } from "node:path";
import { PluginKind, declareClassPlugin } from "@stryker-mutator/api/plugin";

const oneOf = 60;
const seed = process.env.SEED ?? "1";

/** The same places for the same seed as long as the code stays the same, wherever the copy of it lies. */
const drawn = ({ fileName, location, mutatorName, replacement }) => {
  const file = fileName.replace(/^.*\/sandbox-[^/]+\//, "");
  const place = JSON.stringify([seed, relative(process.cwd(), file), location, mutatorName, replacement]);
  return createHash("sha256").update(place).digest().readUInt32BE(0) % oneOf === 0;
};

class Sample {
  init() {
    return Promise.resolve();
  }
  // Each carries the list of its tests: all at once are more than a message holds.
  group(mutants) {
    const ids = mutants.map((m) => m.id);
    return Promise.resolve(
      Array.from({ length: Math.ceil(ids.length / 50) }, (_, i) => ids.slice(50 * i, 50 * i + 50)),
    );
  }
  check(mutants) {
    const result = (m) => (drawn(m) ? { status: "passed" } : { status: "compileError", reason: "not drawn" });
    return Promise.resolve(Object.fromEntries(mutants.map((m) => [m.id, result(m)])));
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Checker, "sample", Sample)];
