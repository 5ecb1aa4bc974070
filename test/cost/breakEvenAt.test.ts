import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bladeCost } from "../../src/cost/bladeCost";
import { breakEvenAt } from "../../src/cost/breakEvenAt";
import { bladeB, blades, law, refused, relative, spread } from "./fixture";

const draws = fc.record({ offer: blades, w: spread(1, 500), change: spread(0.1, 60), dearer: spread(1.01, 10) });

describe("what an offer must be to cost c per area", () => {
  it.each(["price", "life", "rate"] as const)("%s, put back, costs c to 1e-12", (which) => {
    const accepted = law(draws, 21, ({ offer, w, change, dearer }) => {
      const rest = {
        price: bladeCost({ blade: { ...offer, price: 0 }, sawHourValue: w, change }),
        life: w / (60 * offer.rate),
        rate: (offer.price + (w * change) / 60) / offer.life,
      }[which];
      const cost = rest * dearer;
      const value = breakEvenAt({ offer, sawHourValue: w, change, cost })[which];
      return (
        typeof value === "number" &&
        value > 0 &&
        relative(bladeCost({ blade: { ...offer, [which]: value }, sawHourValue: w, change }), cost) < 1e-12
      );
    });
    expect(accepted).toBe(1);
  });

  it("has no answer, with the reason, where the offer's other costs are all of c or more", () => {
    const at = (cost: number) => breakEvenAt({ offer: bladeB, sawHourValue: 60, change: 10, cost });
    expect(refused(() => at(0.01).price)).toEqual({
      reason: "none",
      parameter: "",
      problem: "never: the offer costs more even if the blade were free",
    });
    expect(refused(() => at(60 / (60 * 55)).life).problem).toMatch(/no life is long enough/);
    expect(refused(() => at((260 + 10) / 50000).rate).problem).toMatch(/no rate is fast enough/);
    expect(refused(() => breakEvenAt({ offer: bladeB, sawHourValue: 0, change: 10, cost: 1 }).rate).problem).toMatch(
      /rate does not matter/,
    );
  });

  it("names the open cell that another value needs", () => {
    const at = (offer: Parameters<typeof breakEvenAt>[0]["offer"]) =>
      breakEvenAt({ offer, sawHourValue: 60, change: 10, cost: 0.03 });
    expect(refused(() => at({ ...bladeB, life: undefined }).price)).toEqual({
      reason: "invalid",
      parameter: "offer life",
      problem: "{parameter} is empty or 0",
    });
    expect(refused(() => at({ ...bladeB, rate: undefined }).price).parameter).toBe("offer rate");
    expect(refused(() => at({ ...bladeB, price: undefined }).life).parameter).toBe("offer price");
    expect(refused(() => at({ ...bladeB, rate: undefined }).life).parameter).toBe("offer rate");
    expect(refused(() => at({ ...bladeB, price: undefined }).rate).parameter).toBe("offer price");
    expect(refused(() => at({ ...bladeB, life: undefined }).rate).parameter).toBe("offer life");
  });
});
