import { expect, it } from "vitest";
import { materialRows } from "../../src/data/materials";
import { readFileSync } from "node:fs";

/** CRC-32 (ISO 3309), so that a changed cell of the table is always a changed test. */
function crc32(text: string): number {
  let crc = ~0;
  for (const byte of new TextEncoder().encode(text)) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return ~crc >>> 0;
}

const columns = JSON.parse(readFileSync(new URL("material/checksums.json", import.meta.url), "utf8")) as { rows: number; columns: [name: string, crc32: number][] };

it("crc32 of 123456789 is cbf43926 (check value of the standard)", () => {
  expect(crc32("123456789")).toBe(0xcbf43926);
});

it("has as many rows as when it was checked", () => {
  expect(materialRows.length).toBe(columns.rows);
  for (const row of materialRows) expect(row.length).toBe(columns.columns.length);
});

it.each(columns.columns.map(([name, sum], i) => ({ name, sum, i })))("column $name is unchanged", ({ sum, i }) => {
  expect(crc32(materialRows.map((row) => String(row[i])).join("\n"))).toBe(sum);
});
