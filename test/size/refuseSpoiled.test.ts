import { expect, it } from "vitest";
import { refuseSpoiled } from "../../src/size/refuseSpoiled";
import { refusal } from "../section/fixture";

it.each([
  ["", "no size given"],
  [7, "7 is only a number: round 7, or area 7"],
  [45720, "is a date serial number"],
  [10958, "is only a number"],
  [10959, "is a date serial number"], // 1 January 1930
  [73050, "is a date serial number"], // 31 December 2099
  [73051, "is only a number"],
  [45720.5, "is only a number"],
  ["45720", "is a date serial number"],
  ["4-mar", "is a date: Excel has changed a fraction"],
  ["#n/a", "the Excel error #N/A"],
  ["7".repeat(121), "at most 120 characters"],
])("%s: %s", (text, part) => {
  expect(refusal(() => refuseSpoiled(text, String(text))).sentence).toContain(part);
});
it("a size passes", () => {
  expect(refuseSpoiled("round 7", "round 7")).toBeUndefined();
});
