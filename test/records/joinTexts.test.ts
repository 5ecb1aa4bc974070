import { expect, it } from "vitest";
import { joinTexts } from "../../src/records/joinTexts";
import { printText } from "../../functions/kinds/sentence";

it("keeps facts of the same name apart, leaves empty texts out and unknown holes alone", () => {
  const of = (n: number) => ({ template: "{n} wide", facts: { n: { number: n, quantity: "size" as const } } });
  expect(printText(joinTexts(["first", of(25.4), joinTexts([of(50.8), of(1)], " and "), ""], "; "), "inch")).toBe(
    "first; 1 in wide; 2 in wide and 0.03937 in wide",
  );
  expect(printText(joinTexts([["a", "{hole}"], "b"], ", "), "inch")).toBe("a {hole}, b");
});
