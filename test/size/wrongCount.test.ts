import { expect, it } from "vitest";
import { wrongCount } from "../../src/size/wrongCount";
import { refusal } from "../section/fixture";

it.each([
  [0, '"flat" has no dimensions; flat needs two'],
  [1, "flat takes two; found 1 dimension"],
  [3, "flat takes two; found 3 dimensions. The cut length does not belong in the size"],
])("%d dimensions", (found, sentence) => {
  const thrown = refusal(() => {
    throw wrongCount("flat", "two", found, 2);
  });
  expect(thrown).toEqual({ reason: "invalid", parameter: "section", sentence });
});
