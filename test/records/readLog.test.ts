import { describe, expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { readLog } from "../../src/records/readLog";
import { shop } from "../cutting/fixture";
import { logOf } from "./log";

const cut = { size: "round 4", grade: "304", minutes: 7 };

describe("a log", () => {
  it("merges neighbours that are the same cut, by their mean minutes", () => {
    const { cuts } = readLog(
      logOf([cut, { ...cut, minutes: 8 }, { ...cut, minutes: 9 }, { ...cut, grade: "316" }, cut]),
    );
    expect(cuts.map((c) => [c.rows, c.minutes])).toEqual([
      [[1, 2, 3], 8],
      [[4], 7],
      [[5], 7],
    ]);
  });
  it("keeps apart what differs in pitch, blade or saw", () => {
    const lines = [
      cut,
      { ...cut, pitch: "3/4" },
      { ...cut, blade: "carbide" as const },
      { ...cut, saw: shop({ motorPower: 900 }) },
    ];
    expect(readLog(logOf(lines)).cuts).toHaveLength(4);
  });
  it("passes blank rows over, counts marked ones, names what it cannot use by its row", () => {
    const wrong = new InputError("invalid", "minutes", "{parameter} is text, not a number");
    const read = readLog(
      logOf([
        { ...cut, size: "", minutes: undefined },
        { ...cut, out: true, minutes: wrong },
        { ...cut, size: "" },
        { ...cut, minutes: undefined },
        { ...cut, minutes: wrong },
        { ...cut, grade: "" },
        { ...cut, saw: new InputError("none", "saw", "no such saw") },
        cut,
      ]),
    );
    expect(read.marked).toBe(1);
    expect(
      read.left.map((l) => [l.row, typeof l.why === "string" ? l.why : (l.why as { template: string }).template]),
    ).toEqual([
      [3, "no section"],
      [4, "no minutes"],
      [5, "{parameter} is text, not a number"],
      [6, "no material"],
      [7, "no such saw"],
    ]);
    expect(read.cuts.map((c) => c.rows)).toEqual([[8]]);
  });
  it("takes no account of the tuning that stands in the block", () => {
    const tuned = shop({ rateFactor: 0.5, rateSpread: 1.2, rateFactors: [{ of: "austenitic stainless", value: 2 }] });
    const [one] = readLog(logOf([{ ...cut, saw: tuned }])).cuts;
    expect(one!.work.shop).toMatchObject({ rateFactor: 1, rateFactors: [], rateSpreads: [] });
    expect(one!.work.shop.rateSpread).toBeUndefined();
  });
});
