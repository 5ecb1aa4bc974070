import { describe, expect, it } from "vitest";
import { hazardTexts } from "../../src/data/cautions";
import { materialRows } from "../../src/data/materials";
import { materialSources } from "../../src/data/materialSources";
import { builtInMaterials } from "../../src/material/builtInMaterials";
import { fixture } from "./fixture";

const factor: Record<string, number> = {
  "g/cm3": 1e-6,
  "kg/m3": 1e-9,
  "lb/in3": 0.45359237 / 25.4 ** 3,
  "lb/ft3": 0.45359237 / 304.8 ** 3,
};

describe("density against a second source", () => {
  const rows = fixture("densities.csv");
  it("at least 30 grades", () => {
    expect(rows.length).toBeGreaterThanOrEqual(30);
  });
  it.each(rows)("%s is %s %s within %s %% (%s, from memory)", (key, value, unit, percent) => {
    const material = builtInMaterials().find((candidate) => candidate.key === key)!;
    const second = Number(value) * factor[unit!]!;
    expect(Math.abs(material.density / second - 1) * 100).toBeLessThanOrEqual(Number(percent));
  });
});

describe("every material", () => {
  /** Widest plausible density by family [kg/m³]; judgement. */
  const densities: [RegExp, number, number][] = [
    [/tool steel/, 7400, 8700],
    [/stainless/, 7600, 8100],
    [/steel/, 7650, 8700],
    [/heat-resistant/, 7800, 8100],
    [/cast iron/, 7000, 7400],
    [/aluminium/, 2600, 2900],
    [/copper/, 7400, 9000],
    [/nickel|cobalt/, 7900, 9300],
    [/titanium/, 4400, 4600],
    [/magnesium/, 1700, 1900],
    [/zinc/, 4900, 6700],
    [/refractory/, 6400, 19_300],
  ];

  it.each(builtInMaterials())(
    "$key lies in plausible ranges",
    ({ density, family, hardness, tensile, machinability, force, group, letter, condition }) => {
      const [, least, most] = densities.find(([pattern]) => pattern.test(family))!;
      expect(density * 1e9).toBeGreaterThanOrEqual(least);
      expect(density * 1e9).toBeLessThanOrEqual(most);
      expect(hardness.least).toBeGreaterThanOrEqual(25);
      expect(hardness.least).toBeLessThan(hardness.most);
      expect(hardness.most).toBeLessThanOrEqual(700);
      expect(tensile).toBeGreaterThanOrEqual(100);
      expect(tensile).toBeLessThanOrEqual(2200);
      if (machinability !== undefined) expect(machinability.percent).toBeGreaterThan(5);
      if (machinability !== undefined)
        expect(machinability.percent).toBeLessThanOrEqual(machinability.basis.startsWith("C36000") ? 100 : 500);
      if (force !== undefined)
        expect([force.kc11 >= 250 && force.kc11 <= 3500, force.mc >= 0.1 && force.mc <= 0.3]).toEqual([true, true]);
      expect("PMKNSH").toContain(letter);
      if (group !== undefined) expect("PMKNSH").toContain(group.letter);
      expect(condition).not.toBe("");
    },
  );

  it("tensile strength and hardness of a steel belong together: Rm is 2.6 to 4.3 times the mean HB (about 3.4, EN ISO 18265)", () => {
    for (const { family, tensile, hardness, key } of builtInMaterials().filter((material) =>
      /carbon|structural|alloy steel|tool/.test(material.family),
    )) {
      const ratio = tensile / ((hardness.least + hardness.most) / 2);
      expect([key, family, ratio > 2.6 && ratio < 4.3]).toEqual([key, family, true]);
    }
  });

  it("has unique keys and names, and one default per grade", () => {
    expect(new Set(builtInMaterials().map(({ key }) => key)).size).toBe(builtInMaterials().length);
    expect(new Set(builtInMaterials().map(({ name }) => name.toLowerCase())).size).toBe(builtInMaterials().length);
    for (const grade of new Set(builtInMaterials().map((material) => material.grade)))
      expect([
        grade,
        builtInMaterials().filter((material) => material.grade === grade && material.isDefault).length,
      ]).toEqual([grade, 1]);
  });

  it("has known sources, marks and hazards, and says so where a value is from memory or estimated", () => {
    for (const row of materialRows) {
      const [sources, marks, hazards] = [row[24], row[25], row[23]];
      expect(sources).toMatch(/^[\w-]{4}$/);
      for (const source of sources.replace(/-/g, "")) expect(materialSources.has(source)).toBe(true);
      expect(marks).toMatch(/^[sme]{2}[sme-]$/);
      for (const hazard of hazards.split(" ").filter((key) => key !== "")) expect(hazardTexts.has(hazard)).toBe(true);
    }
    // A513 was added from memory, with its machinability estimated; 304's density was seen
    expect(builtInMaterials().find(({ key }) => key === "a513")).toMatchObject({ sources: "mmme", marks: "mme" });
    expect(materialSources.get(builtInMaterials().find(({ key }) => key === "304")!.sources[1]!)).not.toContain(
      "memory",
    );
  });

  it("gives the plain columns of a row back: 17-4PH H900 (ASTM A564, W.-Nr. 1.4542)", () => {
    const material = builtInMaterials().find(({ key }) => key === "17-4ph-h900")!;
    expect(material).toMatchObject({
      grade: "17-4ph",
      isDefault: false,
      condition: "H900",
      density: 7800e-9,
      hardness: { least: 388, most: 448 },
      tensile: 1340,
    });
    expect(material.designations.map(({ kind, text }) => `${kind} ${text}`)).toEqual([
      "UNS S17400",
      "AISI, SAE or ASTM AISI 630",
      "W.-Nr. 1.4542",
      "EN name X5CrNiCuNb16-4",
      "JIS SUS630",
    ]);
    expect(material.group?.name).toBe("duplex and PH stainless");
  });

  it("has no cutting group on purpose where a band saw has no data", () => {
    expect(
      builtInMaterials()
        .filter(({ group }) => group === undefined)
        .map(({ key }) => key),
    ).toEqual(["mn-steel", "adi-1050", "mo", "tzm", "w-90", "w-95", "ta", "nb", "c103-nb"]);
  });

  it("shows no registered trade name and no code of a private list, in key, name and designations", () => {
    const text = JSON.stringify(
      builtInMaterials().map(({ key, grade, name, designations, group }) => [
        key,
        grade,
        name,
        designations,
        group?.name,
      ]),
    ).toLowerCase();
    for (const part of [
      "inconel",
      "monel",
      "hastelloy",
      "incoloy",
      "nimonic",
      "stellite",
      "nitronic",
      "waspaloy",
      "invar",
      "hardox",
      "zamak",
      "ampco",
      "v2a",
      "v4a",
      "stressproof",
      "toolox",
      "toughmet",
      "mic-6",
      "haynes",
      "zeron",
      "custom 4",
      "kovar",
      "vascomax",
      "cpm",
      "elektron",
      "corten",
      "carpenter",
      "certal",
    ])
      expect(text).not.toContain(part);
  });
});
