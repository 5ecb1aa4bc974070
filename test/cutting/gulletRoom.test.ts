import { expect, it } from "vitest";
import { gulletRoom } from "../../src/cutting/gulletRoom";
import { findMaterial } from "../../src/material/findMaterial";
import { check } from "./fixture";

it(`P1, P2: a chip of 10 µm in steel, R = 5, fills the gullets over ${check("P1").expected} mm at 3.5 and ${check("P2").expected} mm at 12 teeth per inch (gullet model)`, () => {
  const { group } = findMaterial("A36", []);
  expect(group!.chipVolume).toBe(5);
  // Bite f·L/p fills the room: L = room·p/f.
  for (const [id, teeth] of [
    ["P1", 3.5],
    ["P2", 12],
  ] as const) {
    const pitch = 25.4 / teeth;
    expect((gulletRoom(pitch, group!) * pitch) / 0.01 / check(id).expected).toBeCloseTo(1, 9);
  }
});
