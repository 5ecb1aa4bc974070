import { expect, it } from "vitest";
import { sawnPieces } from "../../src/cost/sawnPieces";
import { shopOf } from "./fixture";

it.each([
  // By hand: 18 of 20 are good at one in ten; 19 need 22, of which 19.8 are good.
  [18, 0.1, 0, 20],
  [19, 0.1, 0, 22],
  [10, 0, 3, 13],
  [1, 0.5, 1, 3],
])("%d ordered, %d rejected, %d tested: %d sawn", (quantity, rejectShare, testPieces, sawn) => {
  expect(sawnPieces(quantity, shopOf({ rejectShare, testPieces }))).toBe(sawn);
});
