import { describe, expect, it } from "vitest";
import { each, entry, fromBlock, optional, orElse } from "../../../functions/bind/entry";
import { isRequired, repeats, slotHelp, slotName, slotSays, slots } from "../../../functions/bind/slots";
import { catalogue } from "../../../functions/catalogue";
import { length, number, text } from "../../../functions/kinds";
import { words } from "./fixture";

const e = entry({
  ...words,
  run: ({
    kerf,
  }: {
    readonly note: string | undefined;
    readonly sawHourValue: number;
    readonly kerf: number;
    readonly stock: number;
  }) => kerf,
  params: {
    note: optional(each(text, "a note")),
    sawHourValue: each(number("moneyPerHour", { zeroIsValue: true }), "worth of a saw hour"),
    kerf: fromBlock(orElse(each(length({ zeroIsValue: true }), "bar that a cut takes"), 0), "kerf"),
    stock: fromBlock(each(length(), "length of the bars"), "stockLength"),
  },
  takes: { settings: "optional", saw: true, units: true },
  result: { form: "cell", as: "count", help: "" },
});

describe("the places of a function's arguments", () => {
  it("have the required ones first, then the optional ones, then what bind reads", () => {
    expect(slots(e).map((s) => (isRequired(s) ? slotName(s) : `[${slotName(s)}]`))).toEqual([
      "saw hour value",
      "stock",
      "[note]",
      "[kerf]",
      "[settings]",
      "[saw]",
      "[units]",
    ]);
  });

  it("say a default only where there is one, and whose", () => {
    expect(slots(e).map(slotHelp)).toEqual([
      "worth of a saw hour",
      "length of the bars; default the shop block's",
      "a note",
      "bar that a cut takes; default the shop block's, else 0",
      "the shop block: labels in its first column, first row Units",
      "which column of the shop block",
      '"inch" or "metric"; default the shop block\'s, else inch',
    ]);
    const plain = { ...e, takes: { units: true as const } };
    expect(slotHelp(slots(plain).at(-1)!)).toBe('"inch" or "metric"; default inch');
  });

  it("say what a cell may hold in words: amount per hour, length in inches", () => {
    expect(slots(e).map((s) => slotSays(s, "inch"))).toEqual([
      "amount per hour, 0 or more",
      'length in inches, or text such as "20 ft" or "6 m"',
      "text",
      'length in inches, or text such as "20 ft" or "6 m"',
      "a range",
      "text",
      '"inch" or "metric"',
    ]);
  });
});

it("nothing that bind reads stands where nothing is taken; the last argument may repeat", () => {
  expect(slots({ ...e, takes: {} }).map(({ name }) => name)).toEqual(["sawHourValue", "stock", "note", "kerf"]);
  const working = catalogue.find(({ name }) => name === "WORKING")!;
  const places = slots(working);
  expect(places.map(({ name }) => name)).toEqual(["function", "arguments"]);
  expect(places.map(repeats)).toEqual([false, true]);
  expect(places.map(isRequired)).toEqual([true, false]);
  expect(slotHelp(places[1]!)).toBe("its arguments, in their order, as many as it takes");
  expect(slotSays(places[1]!, "inch")).toBe("what that function takes there");
});
it("show and settings that are required stand behind the required arguments", () => {
  const takes = { show: "required", settings: "required", saw: true } as const;
  const places = slots({ ...e, takes } as never);
  expect(places.map((s) => (isRequired(s) ? slotName(s) : `[${slotName(s)}]`))).toEqual([
    "saw hour value",
    "stock",
    "show",
    "settings",
    "[note]",
    "[kerf]",
    "[saw]",
  ]);
  expect(slotHelp(places[2]!)).toBe("results by name, all, or card");
  expect(slotSays(places[2]!, "inch")).toBe("text");
});
