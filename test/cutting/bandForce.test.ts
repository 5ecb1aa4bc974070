import { describe, expect, it } from "vitest";
import { bandForce } from "../../src/cutting/bandForce";
import { check } from "./fixture";

const plain = (41 * 1.3 ** 3) / 3;

describe("the feed force that a band stands", () => {
  it(`${check("B2").input}: ${check("B2").expected} N in each strand (σ·w·t)`, () => {
    expect(41 * 1.3 * 200).toBe(check("B2").expected);
  });

  it("B4: 41 × 1.3 mm over 400 mm at 200 MPa, plain torsion constant (Timoshenko & Gere, from memory, the sign of the axial load turned)", () => {
    const force = bandForce({ width: 41, thickness: 1.3, span: 400, extent: 0, tension: 200, torsion: plain });
    expect(Math.abs(force / check("B4").expected - 1)).toBeLessThan(0.005);
  });

  it("B3: without tension the uniform-moment form gives π·√(E·Iy·G·J)/S·4/S; Timoshenko's central load is 16.94/(4π) = 1.35 of it", () => {
    const force = bandForce({ width: 41, thickness: 1.3, span: 400, extent: 0, tension: 0, torsion: plain });
    expect(Math.abs((force * 16.94) / (4 * Math.PI) / check("B3").expected - 1)).toBeLessThan(0.005);
  });

  it("grows with width, thickness and tension, falls with the span, and carries more when the load is spread", () => {
    const band = { width: 34, thickness: 1.1, span: 400, extent: 0, tension: 250 };
    const force = bandForce(band);
    expect(bandForce({ ...band, width: 41 })).toBeGreaterThan(force);
    expect(bandForce({ ...band, thickness: 1.3 })).toBeGreaterThan(force);
    expect(bandForce({ ...band, tension: 300 })).toBeGreaterThan(force);
    expect(bandForce({ ...band, span: 600 })).toBeLessThan(force);
    expect(bandForce({ ...band, extent: 400 }) / force).toBeCloseTo(2, 9);
  });

  it("is within 1 % of the values of the model's text, at 200 and 300 MPa (computed there with the full torsion constant)", () => {
    const rows: readonly (readonly [number, number, number, number, number])[] = [
      [27, 0.9, 200, 1261, 1676],
      [34, 1.1, 300, 1595, 2128],
      [41, 1.3, 400, 2029, 2712],
      [54, 1.6, 600, 2771, 3731],
      [67, 1.6, 1000, 2283, 3143],
    ];
    for (const [width, thickness, span, low, high] of rows) {
      expect(Math.abs(bandForce({ width, thickness, span, extent: 0, tension: 200 }) / low - 1)).toBeLessThan(0.01);
      expect(Math.abs(bandForce({ width, thickness, span, extent: 0, tension: 300 }) / high - 1)).toBeLessThan(0.01);
    }
  });
});
