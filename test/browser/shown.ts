import { expect } from "vitest";
import { CellError, type Cell } from "../../functions/kinds/cell";

/** Holds what the grid shows in a cell against what it should be. */
export function expectShown(got: unknown, expected: Cell, where: string): void {
  if (expected instanceof CellError) expect(got, where).toBe(expected.code);
  else if (typeof expected === "number") {
    // A spilled cell gives only what it shows: there the number is compared to its last place.
    const text = String(got).replace(/,/g, "");
    const unit = text.endsWith("%") ? 0.01 : 1;
    const places = typeof got === "string" ? (text.split(".")[1] ?? "").replace(/\D/g, "").length : 12;
    expect(Math.abs(unit * parseFloat(text) - expected), `${where}: ${String(got)}`).toBeLessThanOrEqual(
      typeof got === "string" ? 0.5 * unit * 10 ** -places + 1e-9 : 1e-9 * Math.max(1, Math.abs(expected)),
    );
  } else expect(got ?? "", where).toBe(expected ?? "");
}
