/** The rows of a table that the build has packed (config/packRows.cjs): columns parted by newlines, cells by bars, numbers behind "#". */
export function unpackTable(packed: string): readonly (readonly (string | number)[])[] {
  const columns = packed
    .split("\n")
    .map((column) => (column.startsWith("#") ? column.slice(1).split("|").map(Number) : column.split("|")));
  return columns[0]!.map((_, r) => columns.map((column) => column[r]!));
}
