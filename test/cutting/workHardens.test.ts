import { expect, it } from "vitest";
import { groups } from "../../src/data/groups";
import { workHardens } from "../../src/cutting/workHardens";

it("nickel, titanium, austenitic and duplex stainless harden, plain steel and aluminium do not (common practice, no source)", () => {
  const names = groups.filter(workHardens).map((g) => g.name);
  expect(names).toEqual(expect.arrayContaining(["austenitic stainless", "duplex and PH stainless", "titanium alloys"]));
  expect(names).not.toContain("low-carbon steel");
  expect(names).not.toContain("aluminium");
});
