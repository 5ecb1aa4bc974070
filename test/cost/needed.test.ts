import { expect, it } from "vitest";
import { needed } from "../../src/cost/needed";
import { refused } from "./fixture";

it("gives what is there, 0 too, and names the label of what is not", () => {
  expect(needed(0, "Hourly cost")).toBe(0);
  expect(refused(() => needed(undefined, "Hourly cost"))).toMatchObject({ reason: "invalid", parameter: "settings" });
});
