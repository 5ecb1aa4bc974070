import { describe, expect, it } from "vitest";
import { cutProblem } from "../../src/plan/cutProblem";
import { InputError } from "../../src/errors";
import { soundRefusal } from "../soundRefusal";
import { order } from "./fixture";

const refusalOf = (run: () => unknown): InputError => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return soundRefusal(error);
    throw error;
  }
  throw new Error("not refused");
};

describe("the order in whole numbers", () => {
  it("equal lengths are one, longest first; 1/64 in is a whole number of nanometres", () => {
    const { lengths, demand, widths } = cutProblem(
      order(
        [
          [25.796875, 2],
          [30, 1],
          [25.796875, 3],
        ],
        [[100]],
        { kerf: 0.396875 },
      ),
    );
    expect(lengths).toEqual([30_000_000, 25_796_875]);
    expect(demand).toEqual([1, 5]);
    expect(widths).toEqual([30_396_875, 26_193_750]);
  });
  it.each([
    ["with a grip each piece is sawn off", 60, 5930],
    ["without one the last piece may be the bar's end", 0, 5992],
  ])("%s", (_, grip, capacity) => {
    expect(cutProblem(order([[100, 1]], [[6000]], { kerf: 2, trim: 10, grip })).stocks[0]!.capacity).toBe(
      capacity * 1e6,
    );
  });
  it("costs are whole multiples of the grain", () => {
    const { stocks, grain } = cutProblem(
      order(
        [[100, 1]],
        [
          [3000, null, 1.5],
          [6000, null, 2.7],
        ],
      ),
    );
    expect(stocks.map(({ cost }) => cost)).toEqual([15, 27]);
    expect(grain).toBe(3);
  });
  it.each([
    [
      "lengths",
      order(
        [
          [100, 1],
          [7000, 1],
        ],
        [[6000]],
      ),
    ],
    ["stockCosts", order([[100, 1]], [[6000, null, 3], [3000]])],
    ["lengths", order([[100, 20_001]], [[6000]])],
    [
      "lengths",
      order(
        Array.from({ length: 201 }, (_, i) => [i + 10, 1] as const),
        [[6000]],
      ),
    ],
  ])("refuses by %s", (parameter, input) => {
    expect(() => cutProblem(input)).toThrow(expect.objectContaining({ reason: "invalid", parameter }) as Error);
  });
});

describe("refusals whole, and the limits themselves", () => {
  const says = (input: Parameters<typeof cutProblem>[0]) => {
    const { parameter, problem, facts } = refusalOf(() => cutProblem(input));
    return [
      parameter,
      problem.replace(/\{(\w+)\}/g, (all, name: string) => {
        const fact = facts[name];
        return fact === undefined ? all : typeof fact === "string" ? fact : `${fact.number} ${fact.quantity}`;
      }),
    ];
  };
  const lines = (count: number) => Array.from({ length: count }, (_, i) => [i + 10, 1] as const);
  it("200 rows and 20,000 pieces are the most", () => {
    const most = ["lengths", "a plan takes at most 200 rows and 20,000 pieces"];
    expect(says(order(lines(201), [[6000]]))).toEqual(most);
    expect(says(order([[100, 20_001]], [[6000]]))).toEqual(most);
    expect(cutProblem(order(lines(200), [[6000]])).lengths).toHaveLength(200);
    expect(cutProblem(order([[100, 20_000]], [[6000]])).demand).toEqual([20_000]);
  });
  it("a length that fits no bar, by its row", () => {
    // 6000 − 10 − 60 − 2 of kerf; without a grip the last piece needs no kerf.
    const all = { kerf: 2, trim: 10 };
    const pieces = [
      [100, 1],
      [5929, 1],
    ] as const;
    expect(says(order(pieces, [[3000], [6000]], { ...all, grip: 60 }))).toEqual([
      "lengths",
      "{parameter}, row 2: 5929 length does not fit: 5928 length of a bar can be cut",
    ]);
    expect(cutProblem(order([[5928, 1]], [[6000]], { ...all, grip: 60 })).demand).toEqual([1]);
    expect(cutProblem(order([[5990, 1]], [[6000]], all)).demand).toEqual([1]);
    expect(says(order([[5991, 1]], [[6000]], all))[1]).toContain("5990 length of a bar can be cut");
  });
  it("prices of some stocks only", () => {
    expect(says(order([[100, 1]], [[6000, null, 3], [3000]]))).toEqual([
      "stockCosts",
      "{parameter} are given for some stocks only: give all or none",
    ]);
  });
  it("without prices one length counts bars, several count length", () => {
    const costs = (stocks: Parameters<typeof order>[1]) =>
      cutProblem(order([[100, 1]], stocks)).stocks.map(({ cost }) => cost);
    expect(costs([[6000]])).toEqual([1]);
    expect(costs([[6000], [3000]])).toEqual([6e9, 3e9]);
    expect(costs([[6000, null, 0.125], [3000, null, 1]])).toEqual([125, 1000]); // prettier-ignore
    expect(costs([[6000, null, 0.12345], [3000, null, 1]])).toEqual([1235, 10_000]); // prettier-ignore
  });
});
