import { expect, it } from "vitest";
import { cutPlan } from "../../src/plan/cutPlan";
import { defaultShop } from "../../src/shop/defaultShop";
import { order } from "./fixture";

const rows = (pieces: Parameters<typeof order>[0], stocks: Parameters<typeof order>[1], usefulRemnant?: number) => {
  const input = order(pieces, stocks, { kerf: 2, trim: 10, grip: 60 });
  return cutPlan({ ...input, shop: { ...defaultShop, usefulRemnant } });
};

it("one row a pattern, then the sums with the bound and the proof (by hand)", () => {
  const list = rows([[1000, 10]], [[6000]]);
  // (6000 − 70) / 1002 = 5 a bar; left 6000 − 10 − 5 × 1002 = 980.
  expect(list).toEqual([
    {
      stock: 6000,
      bars: 2,
      pattern: { template: "5 × {length0}", facts: { length0: { number: 1000, quantity: "length" } } },
      piecesPerBar: 5,
      remnant: 980,
      yield: 5000 / 6000,
      bound: undefined,
      note: "",
    },
    {
      stock: undefined,
      bars: 2,
      pattern: "all",
      piecesPerBar: 5,
      remnant: 1960,
      yield: 5000 / 6000,
      bound: 2,
      note: "2 bars; no plan needs fewer: proven least",
    },
  ]);
});

it("a remnant that goes back to stock is named; several stocks say cost", () => {
  const list = rows([[1000, 6]], [[3000], [6000]], 900);
  expect(list.map(({ note }) => note)).toContain("remnant back to stock");
  expect(list.at(-1)!.note).toMatch(/no plan costs less: proven least$/);
});

it("a single bar is no bars", () => {
  expect(rows([[1000, 1]], [[6000]]).at(-1)!.note).toMatch(/^1 bar;/);
});

it("nothing to cut", () => {
  expect(() => rows([[1000, 0]], [[6000]])).toThrow(expect.objectContaining({ reason: "invalid" }) as Error);
});

it("notes whole", () => {
  const note = (...args: Parameters<typeof rows>) => rows(...args).at(-1)!.note;
  expect(note([[1000, 6]], [[3000], [6000]])).toMatch(/^\d bars?; no plan costs less: proven least$/);
  expect(note([[1000, 1]], [[6000]])).toBe("1 bar; no plan needs fewer: proven least");
  let refusal: unknown;
  try {
    rows([[1000, 0]], [[6000]]);
  } catch (error) {
    refusal = error;
  }
  expect(refusal).toMatchObject({
    reason: "invalid",
    parameter: "quantities",
    problem: "{parameter} are empty: nothing to cut",
  });
  // 980 are left: a remnant is useful from its shortest length on.
  expect(rows([[1000, 5]], [[6000]], 980)[0]!.note).toBe("remnant back to stock");
  expect(rows([[1000, 5]], [[6000]], 981)[0]!.note).toBe("");
});
