import { describe, expect, it } from "vitest";
import { choice, number } from "../../../functions/kinds";
import { cellSchema } from "../../../functions/kinds/schema";
import { unkept, type Reading } from "../../../functions/kinds/kind";

const inch: Reading = { units: "inch", memo: unkept, shop: undefined };
const issue = (schema: ReturnType<typeof cellSchema>, cell: unknown): string | undefined => {
  const parsed = schema.safeParse(cell);
  return parsed.success ? undefined : parsed.error.issues[0]!.message;
};

describe("a kind as a schema", () => {
  it("gives what the kind gives, in the core's unit", () => {
    expect(cellSchema(number("size"), inch, "Kerf").parse(2)).toBe(50.8);
    expect(cellSchema(choice("good", "worn"), inch, "Saw condition").parse(" Worn ")).toBe("worn");
  });

  it("refuses in the kind's own words, with the name of the value", () => {
    const kerf = cellSchema(number("size", { least: 25.4, most: 50.8 }), inch, "Kerf");
    expect(issue(kerf, 3)).toBe("Kerf must be at most 2 in; it is 3 in");
    expect(issue(kerf, "3")).toBe("Kerf is text, not a number");
  });

  it("lets a bug surface", () => {
    const broken = { ...number("size"), read: () => ({}) as never };
    expect(() =>
      cellSchema({ ...broken, read: () => (null as unknown as { x: number }).x as never }, inch, "x").safeParse(1),
    ).toThrow(TypeError);
  });
});
