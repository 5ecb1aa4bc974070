import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineWords } from "../../src/data/lineWords";
import { shapeWords, tagWords, unitWords } from "../../src/data/sectionWords";
import { InputError } from "../../src/errors";
import { readItem } from "../../src/item/readItem";

const rows = lineWords.rows
  .trim()
  .split("\n")
  .map((row) => row.split(",").map((cell) => cell.replace(/[*-]/g, "")));
const foreign = rows.map(([, word]) => word!);
const units = [
  ...rows.flatMap(([, word, meaning]) => (/^(?:in|ft|mm|cm|m)$/.test(meaning!) ? [word!] : [])),
  ...unitWords.keys(),
];
/** A unit of length is written. */
const written = new RegExp(`["”″]|${units.map((word) => word.replaceAll(".", "\\.")).join("|")}`, "iu");
const words = [...foreign, ...shapeWords.keys(), ...tagWords.keys(), ...unitWords.keys()];
const signs = ["x", "×", "х", "Ø", "φ", "□", "/", "-", ",", "(", ")", '"', "'", "mm", "L=", "@", "#", "T", "½"];
const numbers = fc.oneof(
  fc.integer({ min: 1, max: 999 }).map(String),
  fc.constantFrom("1/2", "3-1/4", "33,7", "2.5", "4140", "304", "1.4301", "1.250", "6061-T6", "S235JR"),
);
const pieces = fc.oneof(
  { arbitrary: fc.constantFrom(...words), weight: 3 },
  { arbitrary: numbers, weight: 4 },
  { arbitrary: fc.constantFrom(...signs), weight: 2 },
);
const lines = fc
  .array(fc.tuple(pieces, fc.constantFrom("", " ", " ")), { minLength: 1, maxLength: 12 })
  .map((list) => list.map(([piece, gap]) => piece + gap).join(""))
  .filter((line) => line.length <= 200 && line.trim() !== "");

const runs = Number(process.env.LINES ?? 2_000);
const largest = 2000 * 645.16; // mm²

const facts = (line: string, units: "inch" | "metric" | undefined): string => {
  try {
    const { size, grade, length, quantity, section } = readItem(line, units, []);
    if (!(section instanceof InputError) && !(section.area > 0)) return "no area";
    if (!(section instanceof InputError) && section.area > largest && !written.test(line))
      return `large: ${section.text}`;
    const shown = [size, grade instanceof InputError ? grade : grade.key, length, quantity];
    return shown.map((value) => (value instanceof InputError ? "!" : String(value))).join(" | ");
  } catch (refusal) {
    if (refusal instanceof InputError) return "refused";
    throw refusal;
  }
};

describe("lines put together at random from the words, numbers and signs of the data", () => {
  it(
    `${String(runs)} of them: an area above zero and of a bar, twice the same, in every case the same`,
    () => {
      fc.assert(
        fc.property(lines, fc.constantFrom("inch" as const, "metric" as const, undefined), (line, units) => {
          const first = facts(line, units);
          if (first === "no area" || first.startsWith("large")) throw new Error(`${line}: ${first}`);
          if (facts(line, units) !== first) throw new Error(`${line}: not the same twice`);
          // Letters whose capital is another letter's, such as ı, are left out.
          const upper = line.toUpperCase();
          if (upper.toLowerCase() === line.toLowerCase() && facts(upper, units) !== first)
            throw new Error(`${line}: ${first}; in capitals ${facts(upper, units)}`);
        }),
        { seed: 20261126, numRuns: runs },
      );
    },
    Math.max(600_000, runs * 20),
  );

  const patterns =
    "½|Ø|x|1|a|1x|2 |RD 3 |管|角钢|(1)|1/2 |-|'|\"|12' |mm |é|Rohr |t|1t|#|/|1/|1.|1,|ф|х|4140 |S235 |l=|@|(|))|. |LG |pcs |Inconel 600 |50x50x5 |round tube |x 1 mm |µ".split(
      "|",
    );
  it.each(patterns)("%s, 32,767 characters and 200 of it, takes under 20 ms", (pattern) => {
    for (const length of [32_767, 200]) {
      const line = pattern.repeat(Math.ceil(length / pattern.length)).slice(0, length);
      // The quickest of several: the machine is shared.
      const times = Array.from({ length: 5 }, () => {
        const begun = performance.now();
        facts(line, undefined);
        return performance.now() - begun;
      });
      expect(Math.min(...times)).toBeLessThan(20);
    }
  });
});
