import { describe, expect, it } from "vitest";
import { forceConstants } from "../../src/data/forceConstants";
import { materialSources } from "../../src/data/materialSources";

describe("force constants", () => {
  it("reproduce the table of kc against feed of clamping-force norm RN 1391 (edge at 45°, h = f·sin 45°) within 4 %", () => {
    const printed: [key: string, feeds: number[]][] = [
      ["e295", [3500, 3100, 2750, 2450, 2150, 1950]],
      ["e335", [3050, 2800, 2600, 2400, 2200, 2050]],
      ["42cr", [4350, 3900, 3450, 3100, 2750, 2450]],
      ["16mn", [3750, 3300, 2950, 2600, 2300, 2050]],
      ["gs45", [2300, 2100, 1950, 1800, 1700, 1600]],
      ["gjl250", [2050, 1800, 1600, 1450, 1300, 1150]],
    ];
    for (const [key, values] of printed) {
      const { kc11, mc } = forceConstants.get(key)!;
      [0.16, 0.25, 0.4, 0.63, 1, 1.6].forEach((feed, i) => {
        const kc = kc11 * (feed * Math.SQRT1_2) ** -mc;
        expect([key, feed, Math.abs(kc / values[i]! - 1) < 0.04]).toEqual([key, feed, true]);
      });
    }
  });

  it("cite a known source; those of the machining cards credit both author and book", () => {
    for (const { source } of forceConstants.values()) expect(materialSources.has(source)).toBe(true);
    const cards = materialSources.get(forceConstants.get("aust")!.source);
    for (const part of ["J. Baehr", "CC-BY-3.0", "Tabellenbuch Zerspantechnik, 5th ed. 2022, p. 215-216"]) expect(cards).toContain(part);
  });
});
