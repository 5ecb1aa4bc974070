import { why } from "./officeRun";
import { typed } from "./officeWrite";
import { refusals } from "./refusals";
import { logRow, type LoggedRow, type Outcome } from "./sheet";

/** Adds a row at the end of a table of the workbook, each value under the heading of its name. */
export async function append(name: string, row: LoggedRow): Promise<Outcome> {
  try {
    return await Excel.run(async (context) => {
      const table = context.workbook.tables.getItemOrNullObject(name);
      table.load({ name: true });
      await context.sync();
      if (table.isNullObject) return { did: "refused", why: refusals.noTable(name) };
      const heads = table.getHeaderRowRange();
      heads.load({ values: true });
      await context.sync();
      const cells = logRow((heads.values as unknown[][])[0]!, row);
      if (typeof cells === "string") return { did: "refused", why: cells };
      table.rows.add(undefined, [cells.map(typed)]);
      await context.sync();
      return { did: "written" };
    });
  } catch (problem) {
    return { did: "refused", why: why(problem, name) };
  }
}
