import { describe, expect, it } from "vitest";
import { readPitch } from "../../src/blade/readPitch";
import { choosePitch } from "../../src/cutting/choosePitch";
import type { Shop } from "../../src/shop/shop";
import { work } from "./fixture";
import { anyRefusal as refusal } from "../section/fixture";

const stock = (...texts: string[]): Partial<Shop> => ({ pitchesStocked: texts.map(readPitch) });
const pick = (size: string, blade: "bi-metal" | "carbide" = "bi-metal", saw: Partial<Shop> = {}) =>
  choosePitch(work(size, "A36", blade, saw)).text;
const refused = (...args: Parameters<typeof pick>) => refusal(() => pick(...args)).sentence;

describe("the pitch chosen", () => {
  it("is the lawful one nearest to the pitch that the work asks for: handbook's points (read), two teeth in the wall (read)", () => {
    expect(["square 4", "flat 6x1 on edge", "tube 2x0.25", "tube 2x0.065"].map((size) => pick(size))).toEqual([
      "3/4",
      "5/8",
      "6/10",
      "14/18",
    ]);
  });
  it("is one that is stocked, when the shop names them", () => {
    const three = stock("4/6", "1.4/2", "10/14");
    expect(pick("round 4", "bi-metal", three)).toBe("4/6");
    expect(pick("round 16", "carbide", three)).toBe("1.4/2");
    expect(refused("round 7", "carbide", stock("10/14"))).toMatch(
      /None of the pitches stocked is made as a carbide band/,
    );
  });
  it("is none where the finest in stock is too coarse: the one to order is named", () => {
    expect(refused("tube 2x0.25", "bi-metal", stock("3/4", "2/3"))).toBe(
      "The finest pitch in stock, 3/4, leaves 0.9 teeth in the thinnest part; order 6/10",
    );
    // Below two teeth a stocked pitch is taken only if no finer one is made.
    expect(refused("tube 2x0.1", "bi-metal", stock("10/14"))).toMatch(/order 14\/18/);
    expect(pick("tube 2x0.065", "bi-metal", stock("14/18", "4/6"))).toBe("14/18");
  });
  it("is none where the work is too thin for any; carbide says what bi-metal fits", () => {
    expect(refused("tube 2x0.03")).toBe(
      "Only 0.49 teeth would stand in the thinnest part at the finest pitch made, 14/18",
    );
    expect(refused("round 0.1")).toMatch(/^Only .* at the finest pitch made, 14\/18$/);
    expect(refused("round 0.5", "carbide")).toMatch(/finest pitch made, 4\/6\. A bi-metal 8\/12 fits$/);
    expect(refusal(() => choosePitch(work("round 0.5", "hardened steel 60 HRC", "carbide"))).sentence).toMatch(
      /made, 4\/6$/,
    );
  });
  it("does not depend on the saw", () => {
    for (const saw of [
      { motorPower: 500 },
      { bandWidth: 20 },
      { maximumFeed: 5 },
      { rateFactor: 4 },
      { maximumBandSpeed: 5000 },
    ])
      expect(pick("round 7", "bi-metal", saw)).toBe(pick("round 7"));
  });
});
