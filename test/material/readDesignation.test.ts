import { expect, it } from "vitest";
import { readDesignation } from "../../src/material/readDesignation";

it("the most literal reading comes first", () => {
  expect(readDesignation("AISI 4140 HT")[0]).toEqual({ form: "AISI4140HT", families: [], condition: "" });
});

it.each([
  ["AISI 4140 HT", { form: "4140", families: [], condition: "QT" }],
  ["6061T651", { form: "6061", families: [], condition: "T651" }],
  ["17-4PH H1150", { form: "174PH", families: [], condition: "H1150" }],
  ["360 brass", { form: "C360", families: ["copper"], condition: "" }],
  ["Grade 2 titanium", { form: "TI2", families: ["titanium"], condition: "" }],
  ["1050 steel", { form: "1050", families: ["steel"], condition: "" }],
  ["SS 304", { form: "304", families: ["stainless"], condition: "" }],
  ["A276 316", { form: "316", families: [], condition: "" }],
  ["42CrMo4+A", { form: "42CRMO4", families: [], condition: "A" }],
  ["UNS S30400", { form: "S30400", families: ["UNS"], condition: "" }],
])("%s can be read as $form", (text, reading) => {
  expect(readDesignation(text)).toContainEqual(reading);
});

it("gives no reading twice and none that is empty", () => {
  const readings = readDesignation("ASTM A276 SS 304 annealed").map((reading) => JSON.stringify(reading));
  expect(new Set(readings).size).toBe(readings.length);
  expect(readDesignation("steel").every(({ form }) => form !== "")).toBe(true);
});
