import { expect, it } from "vitest";
import { tuningText } from "../../src/cutting/tuningText";

it("says the factor in three digits and what stands behind it, or nothing", () => {
  expect(tuningText({ rateFactor: 0.86234, factorFrom: "7 own cuts" })).toBe("Rate factor 0.862 from 7 own cuts");
  expect(tuningText({ rateFactor: 0.86, factorFrom: undefined })).toBe("");
});
