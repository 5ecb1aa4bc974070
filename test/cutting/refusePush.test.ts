import { expect, it } from "vitest";
import { InputError, orRefusal } from "../../src/errors";
import { cutRate } from "../../src/cutting/cutRate";
import { predictCut } from "../../src/cutting/predictCut";
import { prepareCut } from "../../src/cutting/prepareCut";
import { refusePush } from "../../src/cutting/refusePush";
import { work } from "./fixture";

/** A weak feed: 40 N into a 12 in round. */
const weak = { ...work("round 12 in", "304", "bi-metal", { maximumFeedForce: 40 }), pitch: undefined };

it("a band that cannot be pushed is refused alike for the rate and for the prediction, naming teeth and pitch", () => {
  const [rate, whole] = [orRefusal(() => cutRate(weak)), orRefusal(() => predictCut(weak))];
  expect(rate).toBeInstanceOf(InputError);
  expect(rate).toEqual(whole);
  expect(rate).toMatchObject({ reason: "none", problem: expect.stringContaining("cannot be pushed") });
});

it("over half of the area under the least chip, and nothing else, is refused (judgement)", () => {
  const cut = prepareCut(weak);
  expect(() => refusePush(weak, cut, { pushed: 0.51, pushedChip: 0 })).toThrow(InputError);
  expect(() => refusePush(weak, cut, { pushed: 0.49, pushedChip: 0 })).not.toThrow();
  expect(() => refusePush(weak, cut, { pushed: 1, pushedChip: 1 })).not.toThrow();
});
