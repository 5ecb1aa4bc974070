import { expect, it } from "vitest";
import { lookAlikes } from "../../src/material/lookAlikes";
import { materialIndex } from "../../src/material/materialIndex";

const grade = (form: string) => lookAlikes(form)?.[0]?.material.key;

it("Latin letters for the Cyrillic ones of GOST 5632 and GOST 4543, and the other way round", () => {
  expect(grade("12X18H10T")).toBe("321");
  expect(grade("40X")).toBe("5140");
  expect(grade("30ХМ")).toBe("4130");
  // SCM440 with a Cyrillic С and М
  expect(grade("SСМ440")).toBe("4140-ann");
});

it("Latin letters without an X stay Latin: M1 and C45 are steels of their own, B95 and P18 are not guessed", () => {
  for (const form of ["M1", "C45", "B95", "P18", "BT6", "C345"]) expect(lookAlikes(form)).toBeUndefined();
});

it("every designation with Cyrillic letters finds itself", () => {
  const forms = [...materialIndex().keys()].filter((form) => /[\u0400-\u04ff]/.test(form));
  expect(forms.length).toBeGreaterThan(80);
  for (const form of forms) expect(lookAlikes(form)).toEqual(expect.arrayContaining([...materialIndex().get(form)!]));
});
