import { describe, expect, it } from "vitest";
import { call } from "../../functions/bind/call";
import { CellError, type Cell } from "../../functions/kinds/cell";
import { fuzz } from "./fuzz";
import { laws } from "./laws";
import { chance } from "./sheet";

/** Small seeds of the commands fuzz and laws; the long runs are theirs (docs/trust.md). */
describe.each([20, 26])("20,000 random calls, seed %i", (seed) => {
  const got = fuzz(20_000, seed);
  it("throw nothing, give only what a cell can hold, change no argument, answer alike on replay, read no text, TRUE or blank as a number", () => {
    expect(got.faults).toEqual([]);
    expect(got.answered).toBeGreaterThan(4000);
  });
});

describe("laws between the answers, 100 cases each", () => {
  it.each(laws.map((law) => [law.name, law] as const))("%s", (_, { broken }) => {
    const pick = chance(19);
    expect(Array.from({ length: 100 }, () => broken(pick)).filter((what) => what !== undefined)).toEqual([]);
  });
});

describe("a fault planted in the calls is found", () => {
  it.each([
    ["a number that is none", (cells: Cell[][]): Cell[][] => (typeof cells[0]![0] === "number" ? [[NaN]] : cells)],
    ["an answer that changes", (cells: Cell[][]): Cell[][] => [[...cells[0]!.slice(1), Math.random()]]],
    ["rows of different lengths", (cells: Cell[][]): Cell[][] => [...cells, []]],
    [
      "a refusal that is lost",
      (cells: Cell[][]): Cell[][] => cells.map((row) => row.map((c) => (c instanceof CellError ? 0 : c))),
    ],
    [
      "a sentence with a hole",
      (cells: Cell[][]): Cell[][] =>
        cells.map((row) => row.map((c) => (c instanceof CellError ? new CellError(c.code, "it is undefined") : c))),
    ],
  ] as const)("%s", (_, spoil) => {
    expect(fuzz(1000, 1, (...given) => spoil(call(...given))).faults.length).toBeGreaterThan(0);
  });

  it("arguments that are changed", () => {
    const spoil: typeof call = (entry, args, memo) => {
      (args[0] as Cell[][] | null)?.pop();
      return call(entry, args, memo);
    };
    expect(fuzz(100, 1, spoil).faults.length).toBeGreaterThan(0);
  });
});
