import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { itemRefusal } from "../../src/item/itemRefusal";
import { readItem } from "../../src/item/readItem";
import { tellRefusal } from "../../src/item/tellRefusal";
import { once } from "../../src/once";
import { readSection } from "../../src/section/readSection";
import { fixture, sentence } from "./fixture";

it("quotes the line, and drops a proposal that is refused (definition)", () => {
  const refusal = itemRefusal('which shape is {text}? Write for example "{text}"', { text: "40" });
  expect(sentence(tellRefusal(refusal, "bar 40", () => false))).toBe("which shape is 40? (in: bar 40)");
  expect(sentence(tellRefusal(refusal, "bar 40", () => true))).toBe(
    'which shape is 40? Write for example "40" (in: bar 40)',
  );
});

describe("every refusal of the fixtures", () => {
  const lines = [...fixture("lines.txt").map((row) => row[1]!), ...fixture("languages.txt").map((row) => row[1]!)];
  const refusals = once(() =>
    lines.flatMap((line) =>
      ([undefined, "inch", "metric"] as const).flatMap((units) => {
        const { size, material, length, quantity } = readItem(line, units, []);
        return [size, material, length, quantity].flatMap((field) =>
          field instanceof InputError ? [sentence(field)] : [],
        );
      }),
    ),
  );
  it("takes at most 160 characters with the name of its argument", () => {
    expect(refusals().filter((text) => `item: ${text}`.length > 160)).toEqual([]);
  });
  it("proposes only what is read", () => {
    for (const text of refusals()) {
      const proposed = /Write for example "([^"]+)"/.exec(text)?.[1];
      if (proposed !== undefined) expect(() => readSection(proposed, "inch")).not.toThrow();
    }
  });
});
