import { expect, it } from "vitest";
import { InputError } from "../../src/errors";
import { openLine } from "../../src/item/openLine";
import { refuseUnsure } from "../../src/item/refuseUnsure";
import { readSection } from "../../src/section/readSection";
import type { Role } from "../../src/item/item";

const ask = (text: string, unread: string, length: string | undefined) => {
  const open = openLine(text);
  const roles = open.atoms.map(({ text: word }): Role => (word === unread ? "unread" : "size"));
  const line = { atoms: open.atoms, roles, units: "metric" as const };
  const said = length === undefined ? undefined : { text: length, bare: true };
  return refuseUnsure(open, line, readSection("round 60 mm", "metric"), said);
};

it("a word not read beside a short length, or beside the one number, refuses (definition)", () => {
  expect(ask("quorbalo round 60 mm", "quorbalo", "3")).toBeInstanceOf(InputError);
  expect(ask("quorbalo 60 round", "quorbalo", undefined)).toBeInstanceOf(InputError);
  expect(ask("quorbalo round 60 mm", "quorbalo", "300")).not.toBeInstanceOf(InputError);
  expect(ask("round 60 mm", "", "3")).not.toBeInstanceOf(InputError);
});
it("a plastic refuses (definition)", () => {
  expect(ask("nylon round 60 mm", "", undefined)).toBeInstanceOf(InputError);
});
