/** The rows of a table that the build has packed (config/packRows.cjs): columns parted by newlines, cells by bars, whole numbers as differences behind "#". */
export function unpackTable(packed: string): readonly (readonly (string | number)[])[] {
  const columns = packed.split("\n").map((column) => {
    if (!column.startsWith("#")) return column.split("|");
    let sum = 0;
    return column
      .slice(1)
      .split("|")
      .map((step) => (sum += Number(step)));
  });
  return columns[0]!.map((_, r) => columns.map((column) => column[r]!));
}
