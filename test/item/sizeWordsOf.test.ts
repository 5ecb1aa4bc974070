import { expect, it } from "vitest";
import { sizeWordsOf } from "../../src/item/sizeWordsOf";
import { lineOf, taken } from "./line";

it("sorts the rest of a line (common practice, no source)", () => {
  const line = lineOf("urgent square tube 2 x 2 x .25 HR - and halbrund W12-50");
  const { atoms, withUnread, otherShape } = sizeWordsOf(line);
  expect(atoms.map((i) => line.atoms[i]!.text).join(" ")).toBe("square tube 2 x 2 x .25 hr w 12 - 50");
  expect(withUnread.map((i) => line.atoms[i]!.text)[0]).toBe("urgent");
  expect(otherShape).toBe("halbrund");
  expect(taken(line, "unread")).toBe("urgent");
  expect(taken(line, "read")).toBe("- and halbrund");
});
