import { describe, expect, it } from "vitest";
import { readSection } from "../../src/section/readSection";
import { sectionStack } from "../../src/section/sectionStack";
import { slabContact } from "../../src/section/slabContact";
import { slabStations } from "../../src/section/slabStations";
import { fixture } from "./fixture";

const raw = (size: string) => {
  const section = readSection(size, "inch");
  const { layers, spread, barHeight } = sectionStack(section);
  let sum = 0;
  for (const { times, slabs } of layers) {
    for (const slab of slabs) {
      for (const { depth, travel } of slabStations({ slab, times, above: 0 }, spread, barHeight).stations)
        sum += travel * slabContact(slab, depth, spread).contact;
    }
  }
  return Math.abs(sum / section.area - 1);
};

describe("error of the quadrature itself, before the slab's exact area divides it out (measured)", () => {
  it("rolled shapes 2e-4, at worst angles; pipes 2e-3, whose inner circle begins shortly below the outer one", () => {
    for (const [, family, designation] of fixture("rolled.csv"))
      expect(raw(designation!), designation).toBeLessThan(family!.startsWith("L") ? 2e-4 : 1e-5);
    for (const [nps, schedule] of fixture("pipes.csv")) expect(raw(`NPS ${nps} Sch ${schedule}`)).toBeLessThan(2e-3);
  });
  it("round: 1e-10", () => {
    expect(raw("round 100 mm")).toBeLessThan(1e-10);
  });
});

describe("slabStations", () => {
  const stations = (size: string) => {
    const { layers, spread, barHeight } = sectionStack(readSection(size, "inch"));
    return slabStations({ slab: layers[0]!.slabs[0]!, times: 3, above: 7 }, spread, barHeight).stations;
  };
  it("one station where the width does not change (here half of the flat), none on an end of the slab", () => {
    expect(stations("flat 60 mm x 8 mm")).toEqual([
      { depth: 9, travel: 12, contact: 60, extent: 60, longest: 60, shortest: 60 },
    ]);
    for (const { depth } of stations("round 100 mm")) expect(depth > 7 && depth < 57).toBe(true);
  });
  it("widths of a half round are 2√(y(d − y)) (geometry)", () => {
    for (const { depth, contact } of stations("round 100 mm"))
      expect(contact).toBeCloseTo(2 * Math.sqrt((depth - 7) * (107 - depth)), 6);
  });
});
