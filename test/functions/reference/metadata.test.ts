import { readFileSync } from "node:fs";
import * as z from "zod";
import vm from "node:vm";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../../functions/catalogue";
import { slots } from "../../../functions/bind/slots";

/** functions.json against what Excel's documentation says of custom-function metadata. */

const line = (most: number) =>
  z
    .string()
    .min(1)
    .max(most)
    .regex(/^[^\r\n]*$/);
const schema = z.strictObject({
  allowErrorForDataTypeAny: z.literal(true),
  allowCustomDataForDataTypeAny: z.literal(false),
  functions: z.array(
    z.strictObject({
      id: z.string().regex(/^[A-Z][A-Z0-9._]{2,63}$/),
      name: z.string().regex(/^[A-Z][A-Z0-9._]{2,63}$/),
      description: line(120),
      helpUrl: z.url({ protocol: /^https$/ }),
      parameters: z.array(
        z.union([
          z.strictObject({
            name: line(64),
            description: line(100),
            type: z.literal("any"),
            dimensionality: z.literal("matrix"),
            optional: z.literal(true).optional(),
            repeating: z.literal(true).optional(),
          }),
          z.strictObject({
            name: z.literal("units"),
            description: line(100),
            type: z.literal("string"),
            dimensionality: z.literal("scalar"),
            optional: z.literal(true),
            customEnumId: z.string(),
          }),
        ]),
      ),
      result: z.strictObject({ type: z.literal("any"), dimensionality: z.literal("matrix") }),
    }),
  ),
  enums: z.array(
    z.strictObject({
      id: z.string(),
      type: z.literal("string"),
      values: z.array(z.strictObject({ name: line(64), stringValue: line(64), tooltip: line(128) })).min(2),
    }),
  ),
});
const metadata = schema.parse(JSON.parse(readFileSync("functions/functions.json", "utf8")));

const takenNames = /^([A-Z]{1,3}\d{1,7}|R\d*C\d*|RUN|ECHO|CALL|REGISTER|EVALUATE|ARGUMENT|RETURN|HALT|GOTO)$/;

describe("functions.json", () => {
  it("names no cell, no macro word, nothing twice", () => {
    expect(metadata.functions.filter((f) => takenNames.test(f.id))).toEqual([]);
    expect(new Set(metadata.functions.map((f) => f.id)).size).toBe(metadata.functions.length);
  });

  it("has optional arguments after required ones only, and every enum defined", () => {
    for (const f of metadata.functions) {
      const optional = f.parameters.map((p) => p.optional === true);
      expect(optional.lastIndexOf(false), f.id).toBe(
        optional.indexOf(true) < 0 ? optional.length - 1 : optional.indexOf(true) - 1,
      );
      for (const p of f.parameters)
        if ("customEnumId" in p) expect(metadata.enums.map((e) => e.id)).toContain(p.customEnumId);
    }
  });

  it("keeps the order of arguments that workbooks have stored", () => {
    // A released order is a file format: only an optional argument may be added, at the end.
    const released: Readonly<Record<string, string>> = {
      CUTRATE: "section, material, blade, pitch, settings, saw, units",
      PITCH: "section, material, blade, settings, saw, units",
      TEETH: "section, pitch, show, units",
      CUTDATA: "section, material, blade, show, pitch, settings, saw, units",
      CUTTIME: "section, rate, handling, settings, saw, units",
      CUTCOST: "section, rate, hourly cost, price, life, settings, saw, show, units",
      BREAKEVEN: "current, offer, saw hour value, change, current kerf cost, offer kerf cost, show",
      AREA: "section, units",
      VERSION: "",
    };
    for (const [id, names] of Object.entries(released))
      expect(
        metadata.functions
          .find((f) => f.id === id)
          ?.parameters.map((p) => p.name)
          .join(", "),
        id,
      ).toBe(names);
  });

  it("is the catalogue, argument by argument", () => {
    expect(metadata.functions.map((f) => [f.id, f.parameters.length])).toEqual(
      catalogue.map((e) => [e.name, slots(e).length]),
    );
  });
});

describe("dist/functions.js", () => {
  const script = readFileSync("dist/functions.js", "utf8");
  const load = () => {
    const ids: string[] = [];
    const context = vm.createContext({ CustomFunctions: { associate: (id: string) => ids.push(id) } });
    const before = new Set(vm.runInContext("Object.getOwnPropertyNames(globalThis)", context) as string[]);
    vm.runInContext(script, context);
    const after = vm.runInContext("Object.getOwnPropertyNames(globalThis)", context) as string[];
    return { ids, added: after.filter((n) => !before.has(n)) };
  };

  it("associates exactly the functions of functions.json, with no Error or ErrorCode there yet", () => {
    expect(load().ids).toEqual(metadata.functions.map((f) => f.id));
  });

  it("is a classic script that needs no other global; zod leaves its two registries behind", () => {
    expect(load().added).toEqual(["__zod_globalConfig", "__zod_globalRegistry"]);
    expect(script).not.toMatch(/\bimport\s*\(|\bimport\s*[{*"]|\bexport\s/);
  });
});
