import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { printText } from "../../functions/kinds/sentence";
import { oddsVerdict } from "../../src/records/oddsVerdict";

it.each([
  [0, 5, "; saving 0 to 5 per unit of area"],
  [2, 5, "; saving 2 to 5 per unit of area"],
  [-5, 0, "; loss 0 to 5 per unit of area"],
  [-5, -2, "; loss 2 to 5 per unit of area"],
  [-5, 3, "; from a loss of 5 to a saving of 3 per unit of area"],
])("a saving from %d to %d is said as what it is", (low, high, words) => {
  const saving = { low, middle: (low + high) / 2, high };
  const verdict = { likely: 0.8, bladesMore: 1, never: false, saving, blades: [4, 4], sawHourValue: 60 } as const;
  expect(printText(oddsVerdict(verdict), "inch")).toContain(words);
});

it("never says 0 or 100 in 100, and says what would settle it", () => {
  const of = (likely: number, bladesMore: number | InputError) =>
    printText(
      oddsVerdict({
        likely,
        bladesMore,
        never: false,
        saving: new InputError("none", "", "x"),
        blades: [4, 4],
        sawHourValue: 72.5,
      }),
      "inch",
    );
  expect(of(0.9999, 0)).toBe(
    "From 4 blades each: more than 99 in 100 that the offer is cheaper at a saw hour worth 72.5; that settles it.",
  );
  expect(of(0.8, 1)).toContain("80 in 100");
  expect(of(0.8, 1)).toContain("; 1 more blade of each would settle it if lives go on so.");
  expect(of(0.3, new InputError("none", "", "x"))).toContain("30 in 100");
  expect(of(0.3, new InputError("none", "", "x"))).toContain("; not settled yet.");
  expect(of(0.001, new InputError("none", "", "x"))).toContain(
    "less than 1 in 100 that the offer is cheaper at a saw hour worth 72.5; keep the blade in use.",
  );
});

it("names a loss by both its ends, the larger first, and a saving that may be a loss as such", () => {
  const said = (low: number, high: number): string =>
    printText(
      oddsVerdict({
        likely: 0.3,
        bladesMore: 0,
        never: false,
        saving: { low, middle: (low + high) / 2, high },
        blades: [4, 4],
        sawHourValue: 72,
      }),
      "inch",
    );
  expect(said(-0.05, -0.012)).toContain("; loss 0.012 to 0.05 per unit of area");
  expect(said(-0.05, 0.012)).toContain("; from a loss of 0.05 to a saving of 0.012 per unit of area");
  expect(said(0.012, 0.05)).toContain("; saving 0.012 to 0.05 per unit of area");
});
