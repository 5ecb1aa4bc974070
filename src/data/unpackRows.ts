/** The numbers of a packed column: differences in steps of the last decimal place. */
function unpackColumn(packed: string): readonly string[] {
  const [decimals, steps] = packed.split(":");
  if (steps === undefined) return packed.split(" ");
  let sum = 0;
  return steps.split(" ").map((step) => (step === "" ? "" : String((sum += Number(step)) / 10 ** Number(decimals))));
}

/**
 * The rows of a table that the build has packed (config/packRows.cjs), as they stand in the source: the first line holds the
 * signs between the numbers of a designation where these are columns of their own, the second how many cells each row has
 * where they differ, the others a column each.
 */
export function unpackRows(packed: string): string {
  const [signs = "", lengths = "", ...columns] = packed.split("\n");
  const cells = columns.map(unpackColumn);
  const wide = lengths === "" ? undefined : lengths.split(" ").map(Number);
  const rows = cells[0]!.map((_, r) =>
    cells
      .slice(0, wide?.[r] ?? cells.length)
      .map((column, c) => `${c === 0 ? "" : (signs[c - 1] ?? ",")}${column[r]!}`)
      .join(""),
  );
  return `\n${rows.join("\n")}\n`;
}
