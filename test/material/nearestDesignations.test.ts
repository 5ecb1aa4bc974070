import { expect, it } from "vitest";
import { nearestDesignations } from "../../src/material/nearestDesignations";

it("gives at most three that share the longest beginning, each of another grade", () => {
  expect(nearestDesignations("4141")).toEqual(["SAE 4140", "4147", "SAE 4145"]);
  expect(nearestDesignations("1.4302").every((text) => text.startsWith("W.-Nr. 1.430"))).toBe(true);
  expect(nearestDesignations("1.4302")).toHaveLength(3);
});

it("an alloy family without this number offers the family's others by their UNS numbers, never by a trade name", () => {
  expect(nearestDesignations("HASTELLOYC9")).toContain("UNS N10276");
  for (const text of nearestDesignations("INCOL")) expect(text).toMatch(/^UNS [NS]\d{5}$/);
});

it.each(["", "Q", "ZZZZ", "CONSTRUCTOR", "MONDAY"])("nothing begins like %j", (form) => {
  expect(nearestDesignations(form)).toEqual([]);
});
