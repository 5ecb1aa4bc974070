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
it("a grade that is a tolerance in millimetres is refused (ISO 286), unless the size tells the unit", () => {
  const { grade, material } = both("round 20 H13");
  expect(grade).toBeInstanceOf(InputError);
  expect(material).toBe(grade);
  expect((grade as InputError).facts).toEqual({ first: "H13 hot-work tool steel", second: "no grade" });
  expect(both("round 3 H13").material).toBe("H13 hot-work tool steel");
  expect(both("round 200 H13").material).toBeInstanceOf(InputError);
  // 304 may be the length in millimetres, S355J2 nothing else in any unit.
  expect(both("round 20 304").material).toBeInstanceOf(InputError);
  expect(both("round 20 S355J2").material).toBe("S355J2 structural steel");
});
it("a length that only one unit can have is refused", () => {
  expect(both("W12X50 x 24 LG").length).toBeInstanceOf(InputError);
  expect(both("W12X50").length).toBeInstanceOf(InputError);
});

it("refusals whole", () => {
  const says = (value: unknown): string => {
    const { problem, facts } = value as InputError;
    return problem.replace(/\{(\w+)\}/g, (_, name: string) => {
      const fact = facts[name]!;
      return typeof fact === "string" ? fact : `${fact.number} ${fact.quantity}`;
    });
  };
  expect(says(both("round 20").size)).toBe(
    "no unit is written: round 20 in or round 20 mm? Write the unit, or give units",
  );
  // 300 in are 7620 mm.
  expect(says(both("W12X50 x 300 LG").length)).toBe(
    "no unit is written: 7620 length or 300 length? Write the unit, or give units",
  );
  expect(says(both("W12X50").length)).toContain("the line gives no length");
  expect(both('W12X50 x 300" LG').length).toBeCloseTo(7620, 9);
});
