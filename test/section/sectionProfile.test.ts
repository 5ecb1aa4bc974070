import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { contactRows } from "../../src/section/contactRows";
import { outlineArea } from "../../src/section/outlineArea";
import { readSection } from "../../src/section/readSection";
import { splitStations } from "../../src/section/splitStations";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Profile } from "../../src/section/profile";
import { fixture, refusal } from "./fixture";

/** A profile with its stations, undivided. */
const withStations = (profile: Profile) => ({
  ...profile,
  stations: splitStations({ profile, width: 0, sums: false }),
});
type Measured = ReturnType<typeof withStations>;
const profile = (text: string) => withStations(sectionProfile(readSection(text, "inch")));
const total = ({ stations }: Measured) => stations.reduce((sum, { travel, contact }) => sum + travel * contact, 0);
const way = ({ stations }: Measured) => stations.reduce((sum, { travel }) => sum + travel, 0);
/** The station that stands for the longest way: the walls or the web. */
const middle = ({ stations }: Measured) =>
  stations.reduce((most, station) => (station.travel > most.travel ? station : most));
const inch = 25.4;

describe("33 width vectors (geometry, by a separate program, to five figures)", () => {
  const rows = fixture("profiles.csv");
  it("all are there", () => {
    expect(rows).toHaveLength(33);
  });
  it.each(rows)("%s %s", (name, orientation, unit, ...figures) => {
    const lies = new Map([
      ["-", ""],
      ["flat", "on flat"],
      ["edge", "on edge"],
    ]);
    const size = name!
      .replace(" (nominal wall)", "")
      .replace("oct", "octagon")
      .replace(" EN 10210-2", "")
      .replace(" EN 10219-2", " cold");
    const section = readSection(`${size} ${lies.get(orientation!) ?? orientation}`, "inch");
    const found = withStations(sectionProfile(section));
    const mm = unit === "in" ? inch : 1;
    // The vectors are those of the outline; ours carry the published area.
    const width = mm * (section.pieceArea / outlineArea(section.outline!));
    const rowsAt = contactRows({ section: { ...section, profile: () => found }, steps: 50 });
    const at = [1, 2.5, 5, 12.5, 25, 37.5, 45, 47.5, 49].map((step) =>
      Number.isInteger(step)
        ? rowsAt[step]!
        : contactRows({ section: { ...section, profile: () => found }, steps: 1000 })[step * 20]!,
    );
    const [height, area, greatest, mean, cuts, longest, ...widths] = figures.map(Number);
    const close = (value: number, expected: number) =>
      expect(Math.abs(value - expected), `${value} ${expected}`).toBeLessThanOrEqual(1e-4 * expected + 1e-9);
    close(found.height / mm, height!);
    close(found.area / width / mm, area!);
    close(found.maximumWidth / width, greatest!);
    close(found.meanWidth / width, mean!);
    close(found.longestContact / width, longest!);
    at.forEach((row, i) => close(row.width / width, widths[i]!));
    expect(found.stations.some((station) => station.longest < station.contact * (1 - 1e-9))).toBe(cuts! > 1);
  });
});

describe("sums", () => {
  const sizes = [
    ...fixture("rolled.csv").map(([, , designation]) => designation!),
    ...fixture("hollow.csv").map(([, , , size]) => size!),
    ...fixture("pipes.csv").map(([nps, schedule]) => `NPS ${nps} Sch ${schedule}`),
  ];
  it("travel adds up to the height and travel × contact to the area, to 1e-9, for every row of every table", () => {
    for (const size of sizes) {
      const found = profile(size);
      expect(Math.abs(total(found) / found.area - 1), size).toBeLessThan(1e-9);
      expect(Math.abs(way(found) / found.height - 1), size).toBeLessThan(1e-9);
      expect(found.stations.length, size).toBeLessThanOrEqual(45);
    }
  });
  it("the same when turned, stacked, nested and mitred", () => {
    const bars = fc.constantFrom(
      "W12x50",
      "C8X11.5",
      "HEB 200",
      "L6X4X1/2",
      "UPN 200",
      "IPN 200",
      "NPS 4 Sch 40",
      "box 100 mm x 60 mm x 5 mm",
      "round 50 mm",
      "hex 30 mm",
      "octagon 40 mm",
      "flat 60 mm x 10 mm",
      "WT6x25",
    );
    fc.assert(
      fc.property(
        bars,
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 0, max: 60 }),
        (bar, turn, rows, columns, mitre) => {
          const nested = bar.startsWith("round") && rows * columns > 1 ? " nested" : "";
          const found = profile(`${bar} rot ${turn} bundle ${rows}x${columns}${nested} mitre ${mitre}`);
          expect(Math.abs(total(found) / found.area - 1)).toBeLessThan(1e-9);
          expect(Math.abs(way(found) / found.height - 1)).toBeLessThan(1e-9);
          for (const { contact, extent, longest, shortest } of found.stations) {
            const share = 1.02; // published areas scale the contacts and not the extent
            expect(shortest).toBeLessThanOrEqual(longest * (1 + 1e-12));
            expect(longest).toBeLessThanOrEqual(contact * (1 + 1e-12));
            expect(contact).toBeLessThanOrEqual(extent * share);
            expect(extent).toBeLessThanOrEqual(found.maximumExtent * (1 + 1e-9));
          }
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });
});

describe("closed forms (geometry)", () => {
  it("round: maximum width d, mean π·d/4, a fifth of the way has contacts under 0.6 d", () => {
    const found = profile("round 100 mm");
    expect(found.maximumWidth).toBeCloseTo(100, 9);
    expect(found.meanWidth).toBeCloseTo(25 * Math.PI, 9);
    expect(found.thinnest).toBeCloseTo(60, 12);
    for (const { depth, contact } of found.stations)
      expect(contact).toBeCloseTo(2 * Math.sqrt(depth * (100 - depth)), 6);
  });
  it("a round is the unit round times its diameter: the same as by its outline, which a bundle of one and a mitre take", () => {
    const [one, mitred] = [profile("round 73 mm"), profile("round 73 mm mitre 1")];
    const secant = 1 / Math.cos(Math.PI / 180);
    expect(mitred.stations).toHaveLength(one.stations.length);
    one.stations.forEach(({ depth, travel, contact, extent, longest, shortest }, i) => {
      const other = mitred.stations[i]!;
      expect([depth, travel]).toEqual([expect.closeTo(other.depth, 9), expect.closeTo(other.travel, 9)]);
      for (const width of ["contact", "extent", "longest", "shortest"] as const)
        expect({ contact, extent, longest, shortest }[width] * secant).toBeCloseTo(other[width], 9);
    });
    expect(Math.abs(one.thinnest / mitred.thinnest - 1)).toBeLessThan(0.005);
  });
  it("tube: maximum width √(D² − d²) where the band touches the bore", () => {
    const found = profile("tube 120 mm x 15 mm");
    expect(found.maximumWidth).toBeCloseTo(Math.sqrt(120 ** 2 - 90 ** 2), 9);
    expect(found.meanWidth).toBeCloseTo(((120 ** 2 - 90 ** 2) * Math.PI) / 480, 9);
    expect(found.kind).toBe("hollow");
  });
  it("square on a corner: w = 2 min(y, a√2 − y); thinnest lasting 0.2·a√2", () => {
    const found = profile("square 100 mm diamond");
    expect(found.height).toBeCloseTo(100 * Math.SQRT2, 9);
    for (const { depth, contact } of found.stations)
      expect(contact).toBeCloseTo(2 * Math.min(depth, 100 * Math.SQRT2 - depth), 9);
    expect(Math.abs(found.thinnest / (20 * Math.SQRT2) - 1)).toBeLessThan(0.005);
  });
  it("box: walls of t, and no station on a level side (the same width at both ends)", () => {
    const found = profile("box 100 mm x 100 mm x 5 mm");
    const rows = contactRows({ section: { ...found.section, profile: () => found }, steps: 20 });
    expect(rows[1]!.width).toBeCloseTo(rows[19]!.width, 9);
    expect(rows[1]!.width).toBeGreaterThan(90);
    expect(found.thinnest).toBeCloseTo(5, 9);
  });
  it("mitre 60: widths double, height stays", () => {
    const [square, mitred] = [profile("flat 100 mm x 50 mm"), profile("flat 100 mm x 50 mm mitre 60")];
    expect(mitred.height).toBe(square.height);
    expect(mitred.maximumWidth / square.maximumWidth).toBeCloseTo(2, 12);
    expect(mitred.maximumExtent / square.maximumExtent).toBeCloseTo(2, 12);
  });
  it("bundle: widths times columns, height times rows; bars that touch are one where they touch", () => {
    const found = profile("round 50 mm bundle 2x3");
    expect([found.height, found.maximumExtent]).toEqual([expect.closeTo(100, 9), expect.closeTo(150, 9)]);
    expect(found.maximumWidth).toBeCloseTo(150, 9);
    expect(found.longestContact).toBeCloseTo(150, 9);
    expect(profile("round 50 mm bundle 2x1").longestContact).toBeCloseTo(50, 9);
    expect(found.kind).toBe("bundle of solids");
    expect(profile("tube 50 mm x 5 mm bundle 2x3").kind).toBe("bundle of hollow");
  });
  it("flats on edge side by side are the solid of their outline in every width", () => {
    const [flats, solid] = [profile("flat 25.4x6.35 mm on edge bundle 1x40"), profile("flat 254x25.4 mm")];
    expect([flats.thinnest, flats.longestContact, flats.meanWidth]).toEqual(
      [solid.thinnest, solid.longestContact, solid.meanWidth].map((width) => expect.closeTo(width, 9) as number),
    );
  });
  it("walls of touching tubes are one, a wall that stands alone is not", () => {
    expect(middle(profile("box 25 mm x 25 mm x 5 mm bundle 1x2"))).toMatchObject({
      longest: expect.closeTo(10, 9) as number,
      shortest: expect.closeTo(5, 9) as number,
    });
  });
  it("nested rounds: height d(1 + (n − 1)·√3/2), width half a bar more", () => {
    const found = profile("round 20 mm bundle 5x6 nested");
    expect(found.height).toBeCloseTo(20 * (1 + 4 * (Math.sqrt(3) / 2)), 9);
    expect(found.maximumExtent).toBeCloseTo(130, 9);
  });
  it("solids are at most as thin as their mean width; a published area scales the contacts", () => {
    const octagon = profile("octagon 50 mm");
    expect(octagon.thinnest).toBeLessThanOrEqual(octagon.meanWidth);
    const beam = profile("W12x50 web up");
    expect(middle(beam).contact).toBeCloseTo((0.37 * inch * 14.6 * 645.16) / outlineArea(beam.section.outline!), 6);
  });
});

it("an area alone has no shape", () => {
  expect(refusal(() => profile("area 38.5"))).toMatchObject({
    reason: "invalid",
    parameter: "section",
    sentence: expect.stringContaining("an area alone has no shape: write") as string,
  });
});

it("a mitre of 45° stretches a tube as it does every bar: √2 of the area of the square cut (geometry)", () => {
  for (const size of ["tube 3x0.25", "round 3", "box 3x3x0.25", "flat 3x1"]) {
    const [plain, mitred] = [size, `${size} mitre 45`].map((text) => sectionProfile(readSection(text, "inch")));
    expect(mitred!.area / plain!.area, size).toBeCloseTo(Math.SQRT2, 6);
    expect((mitred!.meanWidth * mitred!.height) / (plain!.meanWidth * plain!.height), size).toBeCloseTo(Math.SQRT2, 6);
    expect((mitred!.longestContact * mitred!.height) / (plain!.longestContact * plain!.height), size).toBeCloseTo(
      Math.SQRT2,
      3,
    );
  }
});
