import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { bwgWalls, sheetWalls } from "../../src/data/gauges";
import { pipeSchedules } from "../../src/data/pipeSchedules";
import { sectionSources } from "../../src/data/sectionSources";
import { ignoredWords, materialWords, phrases, rolledNames, shapeWords, tagWords, unitWords } from "../../src/data/sectionWords";
import { seriesFamilies, seriesWords } from "../../src/data/seriesWords";
import { europeanSections } from "../../src/data/sectionsEn";
import { americanSections } from "../../src/data/sectionsUs";

const families = [...americanSections, ...europeanSections];
const lines = (rows: string) => rows.trim().split("\n");

describe("section tables", () => {
  it("1,541 rows, each with a source and its figures as numbers", () => {
    let count = 0;
    for (const { name, kind, source, rows } of families) {
      expect(Object.keys(sectionSources)).toContain(source);
      for (const row of lines(rows)) {
        count += 1;
        const [keys = "", ...figures] = row.split(",");
        expect(keys, row).toMatch(/^[\d.]+(x[\d.]+)*(\|[\d.]+x[\d.]+)?$/);
        const [from, to] = { beam: [6, 7], channel: [6, 7], tee: [2, 2], angle: [2, 3] }[kind];
        expect(figures.length >= from! && figures.length <= to!, `${name} ${row}`).toBe(true);
        expect(figures.every((figure) => Number(figure) > 0 || (kind === "angle" && figure === "")), `${name} ${row}`).toBe(true);
      }
    }
    expect(count).toBe(1541);
  });
  it("no designation twice in a table, none shared by a metric and an American one", () => {
    for (const name of new Set(families.map((family) => `${family.name} ${family.unit}`))) {
      const keys = families.filter((family) => `${family.name} ${family.unit}` === name).flatMap(({ rows }) => lines(rows).flatMap((row) => row.split(",")[0]!.split("|")));
      expect(new Set(keys).size, name).toBe(keys.length);
    }
  });
  it("American numbers are under 45 and metric ones above (nearestRows relies on it)", () => {
    for (const { rows } of americanSections) {
      for (const row of lines(rows)) {
        const [american = "", metric] = row.split(",")[0]!.split("|");
        expect(Number(american.split("x")[0])).toBeLessThan(45);
        if (metric !== undefined) expect(Number(metric.split("x")[0])).toBeGreaterThan(45);
      }
    }
  });
  it("pipes: 289 walls, thinner than half the diameter, rising with the number of the schedule", () => {
    const walls = lines(pipeSchedules).flatMap((line) => {
      const [, diameter, list = ""] = line.split(",");
      const numbered = list.split(" ").filter((pair) => /^\d/.test(pair)).map((pair) => Number(pair.split(":")[1]));
      expect([...numbered].sort((a, b) => a - b)).toEqual(numbered);
      return list.split(" ").map((pair) => Number(pair.split(":")[1]) / Number(diameter));
    });
    expect(walls).toHaveLength(289);
    expect(Math.max(...walls)).toBeLessThan(0.5);
  });
  it("gauges: the higher the number, the thinner", () => {
    for (const table of [sheetWalls, bwgWalls]) {
      const walls = [...table.values()].map(Number);
      expect([...walls].sort((a, b) => b - a)).toEqual(walls);
    }
  });
  it("under 23 kB compressed", () => {
    const all = families.map(({ rows }) => rows).join("") + pipeSchedules;
    expect(gzipSync(all, { level: 9 }).length).toBeLessThan(23_000);
  });
});

describe("tables of further standards", () => {
  it("1,026 rows of numbers, each with a source; KS D 3502, GB/T 11263 and the channels П share the rows of others", () => {
    const own = new Set(seriesFamilies.map(({ rows }) => rows));
    expect([...own].reduce((count, rows) => count + lines(rows).length, 0)).toBe(1026);
    for (const { name, source, cells, key, rows } of seriesFamilies) {
      expect(Object.keys(sectionSources)).toContain(source);
      for (const row of lines(rows)) {
        const figures = row.split(",").map(Number);
        expect(figures.every((figure) => figure >= 0), `${name} ${row}`).toBe(true);
        expect(figures.length, `${name} ${row}`).toBeGreaterThanOrEqual(Math.max(key, ...cells) + (source === "ks" ? 0 : 1));
      }
    }
  });
  it("no row twice in a table", () => {
    for (const { rows } of seriesFamilies) expect(new Set(lines(rows)).size).toBe(lines(rows).length);
  });
});

describe("words", () => {
  it("no word has two meanings", () => {
    for (const word of ignoredWords) {
      expect(shapeWords.has(word), word).toBe(false);
      expect(materialWords.has(word), word).toBe(false);
      expect(tagWords.has(word), word).toBe(false);
      expect(unitWords.has(word), word).toBe(false);
    }
  });
  it("every rolled word has its table", () => {
    for (const [word, family] of shapeWords) {
      if (family === "rolled") expect(families.some(({ name }) => name === rolledNames.get(word)) || seriesWords.has(`${word} 0`), word).toBe(true);
    }
  });
  it("phrases are in small letters and become one word at most", () => {
    for (const [phrase] of phrases) expect(phrase).toMatch(/^[a-z]+( [a-z]+)*$/);
  });
});
