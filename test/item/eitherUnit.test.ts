import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { eitherUnit } from "../../src/item/eitherUnit";
import { readItem } from "../../src/item/readItem";

const both = (line: string) => eitherUnit(readItem(line, "inch", []), readItem(line, "metric", []));

it("what differs is refused with both readings (definition)", () => {
  const { size } = both("round 20");
  expect(size).toBeInstanceOf(InputError);
  expect((size as InputError).facts).toMatchObject({ first: "round 20 in", second: "round 20 mm" });
});
it("what is possible in one unit alone holds (definition)", () => {
  expect(both("round 3").size).toBe("round 3 in");
  expect(both("round 200").size).toBe("round 200 mm");
});
it("a length that differs is refused alone (definition)", () => {
  const { size, length } = both("W12X50 x 300 LG");
  expect(size).toBe("W12X50");
  expect(length).toBeInstanceOf(InputError);
});
