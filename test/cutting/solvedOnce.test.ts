import { expect, it } from "vitest";
import { predictCut } from "../../src/cutting/predictCut";
import { solvedOnce } from "../../src/cutting/solvedOnce";
import { work } from "./fixture";

const one = { ...work("round 4", "A36"), pitch: undefined };

it("asks the section's keeper with everything that the answer hangs on, and takes what it gives (definition)", () => {
  const seen: unknown[] = [];
  const solved = <T>(what: string, by: readonly unknown[], solve: () => T): T => {
    seen.push(what, ...by);
    return solve();
  };
  expect(solvedOnce("rate", { ...one, section: { ...one.section, solved } }, () => 7)).toBe(7);
  expect(seen).toEqual(["rate", one.material, "bi-metal", undefined, one.shop]);
});

it("a section that keeps nothing is solved each time, to the same answer", () => {
  expect(predictCut(one).rate).toBe(predictCut(one).rate);
  expect(predictCut(one)).not.toBe(predictCut(one));
});
