import { expect, it } from "vitest";
import { rolledRow } from "../../src/size/rolledRow";

it("by American, metric and European designation", () => {
  expect(rolledRow("W", "12x50")).toMatchObject({ key: "12x50", figures: [12.2, 8.08, 0.37, 0.64, 0.5, 14.6] });
  expect(rolledRow("W", "310x74")).toMatchObject({ key: "12x50" });
  expect(rolledRow("L", "100x100x10", "mm")).toMatchObject({ family: { source: "en10056" } });
});
it.each([
  ["W", "12x51"],
  ["W", "2x50"],
  ["W", ""],
  ["constructor", "12x50"],
])("%s %s is not there", (name, key) => {
  expect(rolledRow(name, key)).toBeUndefined();
});
it("an angle in inches is not one in millimetres", () => {
  expect(rolledRow("L", "100x100x10", "in")).toBeUndefined();
});
