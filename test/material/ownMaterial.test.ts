import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { findMaterial } from "../../src/material/findMaterial";
import { materialData } from "../../src/material/materialData";
import { soundRefusal } from "../soundRefusal";
import { ownMaterial, type OwnMaterial } from "../../src/material/ownMaterial";

const like = findMaterial("316L", []);
const none = { rateFactor: undefined, density: undefined, price: undefined };

describe("ownMaterial", () => {
  it("the sentence of a value out of range names it with its unit", () => {
    const facts = (own: Partial<OwnMaterial>) => {
      try {
        ownMaterial({ name: "X", like, ...none, ...own });
      } catch (error) {
        return error;
      }
      throw new Error("not refused");
    };
    for (const [own, quantity] of [
      [{ rateFactor: 21 }, "ratio"],
      [{ density: 0.9e-6 }, "density"],
      [{ price: 0 }, "pricePerMass"],
    ] as const)
      expect(JSON.stringify(facts(own))).toContain(`"quantity":"${quantity}"`);
  });
  it("takes from the like grade what the shop does not state", () => {
    expect(ownMaterial({ name: "  Pump shaft bar ", like, ...none })).toEqual({
      ...like,
      key: "Pump shaft bar",
      grade: "Pump shaft bar",
      name: "Pump shaft bar",
      isDefault: true,
      designations: [],
      own: true,
    });
  });

  it("keeps the shop's own values and says whose they are", () => {
    const own = ownMaterial({ name: "Duplex X", like, rateFactor: 0.8, density: 7810e-9, price: 6.5 });
    expect(own).toMatchObject({ rateFactor: 0.8, density: 7810e-9, price: 6.5, group: like.group });
    expect(own.sources).toBe(`${like.sources[0]}+${like.sources.slice(2)}`);
    expect(materialData({ material: { material: own, matched: own.name, note: "" } }).confidence).toContain(
      "density the shop's own, hardness from memory",
    );
  });

  it.each<[string, Partial<OwnMaterial>]>([
    ["no name", { name: " - " }],
    ["a long name", { name: "n".repeat(61) }],
    ["rate factor 0", { rateFactor: 0 }],
    ["rate factor 21", { rateFactor: 21 }],
    ["rate factor not a number", { rateFactor: Number.NaN }],
    ["density in kg/m³", { density: 7810 }],
    ["density of water and less", { density: 0.9e-6 }],
    ["price 0", { price: 0 }],
    ["negative price", { price: -2 }],
  ])("%s is invalid", (_, wrong) => {
    try {
      ownMaterial({ name: "X", like, ...none, ...wrong });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
      expect(error).toMatchObject({ reason: "invalid", parameter: "own material" });
    }
  });
});

it.each([
  [{ name: "x".repeat(200) }, /^the name is longer than \d+ characters$/],
  [{ name: " - " }, /^\{parameter\} has no name$/],
  [{ name: "X", rateFactor: 21 }, /^X: the rate factor must be from/],
  [{ name: "X", density: 1e-7 }, /^X: the density must be from/],
  [{ name: "X", price: 0 }, /^X: the price must be from/],
] as const)("%j is refused in a whole sentence", (own, says) => {
  let refusal: unknown;
  try {
    ownMaterial({ like, ...none, ...own });
  } catch (error) {
    refusal = error;
  }
  if (!(refusal instanceof InputError)) throw new Error("not refused");
  const { problem, facts, parameter } = soundRefusal(refusal);
  const text = (value: unknown): string => (typeof value === "string" ? value : "…");
  expect(
    problem.replace(/\{(\w+)\}/g, (all, name: string) => (name === "parameter" ? all : text(facts[name]))),
  ).toMatch(says);
  expect(parameter).toBe("own material");
});
