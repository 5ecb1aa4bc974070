import { InputError } from "../../src/errors";
import type { Cell } from "./cell";
import type { Kind } from "./kind";

/** A row of a headed table as it stands; shop/headedTable.ts reads all rows together. */
export const tableRow: Kind<readonly Cell[]> = {
  name: "table",
  width: "row",
  zeroIsValue: false,
  says: () => "a table with labels across its first row or down its first column",
  read: (cells, _, __, parameter) => {
    if (cells.some((cell) => typeof cell === "boolean"))
      throw new InputError("invalid", parameter, "{parameter} has TRUE or FALSE among its cells");
    return cells;
  },
};
