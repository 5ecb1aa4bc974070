import { expect, it } from "vitest";
import { gradeRows } from "../../src/data/gradeSpeeds";
import { materialRows } from "../../src/data/materials";

it("every row is a material of the table, once, with its mark; no heat-treated condition has one", () => {
  const group = new Map<string, string>(materialRows.map((row) => [row[0], row[15]]));
  const keys = gradeRows.map(([key]) => key);
  expect(new Set(keys).size).toBe(keys.length);
  for (const [key, speed, mark, basis, bite, biteMark] of gradeRows) {
    expect(group.get(key), key).toBeDefined();
    expect(group.get(key)).not.toBe("heat-treated alloy steel");
    expect(speed > 50 && speed < 500).toBe(true);
    if (mark !== "read") expect(basis, key).not.toBe("");
    expect(bite === undefined).toBe(biteMark === undefined);
  }
});
it("bites differ from the group's only where the metal explains 1.15 and more", () => {
  for (const row of gradeRows) if (row[4] !== undefined) expect(Math.abs(Math.log(row[4]))).toBeGreaterThan(Math.log(1.14));
});
