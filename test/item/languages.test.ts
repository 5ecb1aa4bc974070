import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readItem } from "../../src/item/readItem";
import { fixture } from "./fixture";

const rows = fixture("languages.txt");

describe("lines in eighteen languages (invented; words: src/data/lineWords.ts)", () => {
  it("are at least 300", () => {
    expect(rows.length).toBeGreaterThanOrEqual(300);
    expect(new Set(rows.map(([language]) => language)).size).toBe(18);
  });
  it.each(rows)("%s: %s", (_, line, size, key, length, quantity) => {
    const item = readItem(line!, "metric", []);
    expect(item.size).toBe(size);
    expect(item.grade instanceof InputError ? item.grade : item.grade.key).toBe(key);
    expect(item.length).toBeCloseTo(Number(length), 6);
    expect(item.quantity).toBe(Number(quantity));
  });
  it("without units, a line reads as in millimetres, or is refused", () => {
    for (const [, line, size, , length] of rows) {
      const item = readItem(line!, undefined, []);
      if (!(item.section instanceof InputError)) expect([line, item.size]).toEqual([line, size]);
      if (!(item.length instanceof InputError)) expect([line, Math.round(item.length)]).toEqual([line, Number(length)]);
    }
  });
});
