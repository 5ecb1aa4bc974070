import type { Kind } from "./kind";
import { isBlank } from "./cell";
import { readNumber } from "./number";

/** Minutes of a job, one cell for all saws or one for each: a blank, or "-", is a saw that cannot make it. */
export const sawMinutes: Kind<readonly (number | undefined)[]> = {
  name: "number",
  width: "row",
  zeroIsValue: false,
  says: () => 'minutes, more than 0; in a column for each saw a blank or "-" where it cannot make the job',
  quantity: "minutes",
  read: (cells, _, { units }, parameter) =>
    cells.map((cell) =>
      isBlank(cell, false) || (cells.length > 1 && cell === "-")
        ? undefined
        : readNumber(cell, "minutes", {}, units, parameter),
    ),
};
