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

it.each([
  ["A", "304", ["304 annealed", "304 ann", "304 solution annealed", "304 solution-annealed", "304 (annealed)"]],
  ["A", "304", ["304 cond A", "304 cond. A", "304 condition A", "304, condition-A", "304+A", "304 + AT", "304+AT"]],
  ["QT", "4140", ["4140 QT", "4140 Q T", "4140 Q&T", "4140 Q & T", "4140 Q+T", "4140QT", "4140 HT", "4140HT"]],
  ["QT", "4140", ["4140 PH", "4140 prehard", "4140 pre-hard", "4140 prehardened", "4140 pre-hardened", "4140 (HT)"]],
  ["QT", "4140", ["4140 heat treated", "4140 heat-treated", "4140 quenched and tempered", "4140 quenched & tempered"]],
  ["N", "4140", ["4140 normalized", "4140 normalised", "4140 norm", "4140+N", "4140 + N", "4140 (normalized)"]],
  ["HR", "1018", ["1018 HR", "1018 HRS", "1018 HF", "1018 AR", "1018 as rolled", "1018 as-rolled", "1018-HR"]],
  ["HR", "1018", ["1018 hot rolled", "1018 hot-rolled", "1018 hot finished", "1018 hot - finished", "1018 (HR)"]],
  ["CD", "1018", ["1018 CD", "1018 CDS", "1018 CF", "1018 CR", "1018 CRS", "1018 cold drawn", "1018 cold-drawn"]],
  ["CD", "1018", ["1018 cold finished", "1018 cold rolled", "1018 cold - rolled", "1018+C", "1018 + C", "1018 (CD)"]],
  ["AGED", "2205", ["2205 aged", "2205 age hardened", "2205 age-hardened", "2205 age - hardened"]],
  ["AGED", "2205", ["2205 precipitation hardened", "2205 precipitation-hardened", "2205 (aged)"]],
  ["H1150", "630", ["630 H1150", "630-H1150", "630H1150", "630 cond H1150", "630 condition H1150", "630 cond. H1150"]],
  ["T6", "6061", ["6061-T6", "6061T6", "6061 T6", "6061 (T6)", "6061+T6", "6061, T6"]],
  ["O", "6061", ["6061-O", "6061 O"]],
  ["F", "6061", ["6061-F", "6061 F"]],
  ["TF00", "C17200", ["C17200 TF00", "C17200-TF00"]],
] as const)(
  "condition %s of %s: %j (names and symbols of ASTM A941 and EN 10027-1; common practice)",
  (condition, form, texts) => {
    for (const text of texts) expect(readDesignation(text), text).toContainEqual({ form, families: [], condition });
  },
);

it.each(["420 C", "304 N", "annealed", "4140 normal", "4140 QTX", "1018 HRX", "aged 2205"])(
  "%s has no condition: a letter alone, a longer word or one in front is none",
  (text) => {
    expect(readDesignation(text).map(({ condition }) => condition)).toEqual(readDesignation(text).map(() => ""));
  },
);

it.each(["CP Grade 2 titanium", "CP-Gr 2 titanium", "CP - Gr. 2 titanium", "Gr 2 titanium", "titanium grade 2"])(
  "%s is titanium of grade 2 (ASTM B348)",
  (text) => {
    expect(readDesignation(text)).toContainEqual({ form: "TI2", families: ["titanium"], condition: "" });
  },
);

it.each(["AISI", "AISI -", "grade", "DIN EN"])("%s alone names nothing: no reading is empty", (text) => {
  expect(readDesignation(text).filter(({ form }) => form === "")).toEqual([]);
});
