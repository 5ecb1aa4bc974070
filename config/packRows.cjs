// A build step for the large tables: their rows, written to be read by people, are packed column by column, which compresses
// better. Rolled shapes: each number as its difference to the one above; src/data/unpackRows.ts gives the same text back
// when it is first asked for.
// Materials: every cell as it stands; src/data/unpackTable.ts gives the same rows back.

/** Decimal places of the numbers of a column; the numbers as whole steps of the last place. */
const places = (cells) => Math.max(0, ...cells.map((c) => (c.split(".")[1] ?? "").length));

/** A column as differences where that gives its text back to the letter, else as it stands. */
const packColumn = (cells) => {
  const decimals = places(cells);
  let above = 0;
  const steps = cells.map((cell) => {
    if (cell === "") return "";
    const value = Math.round(Number(cell) * 10 ** decimals);
    const step = value - above;
    above = value;
    return String(step);
  });
  let sum = 0;
  const back = steps.map((s) => (s === "" ? "" : String((sum += Number(s)) / 10 ** decimals)));
  return back.every((text, i) => text === cells[i]) ? `${decimals}:${steps.join(" ")}` : cells.join(" ");
};

const signs = (cell) => cell.replace(/[^x|]/g, "");

/**
 * Rows of cells parted by commas, as columns parted by newlines. The first line holds the signs x and | between the numbers
 * of the designations, where all have the same: each of these numbers is a column then. The second line holds the lengths
 * of rows that differ in length.
 */
const packRows = (rows) => {
  const table = rows
    .trim()
    .split("\n")
    .map((line) => line.split(","));
  const sign = signs(table[0][0]);
  const same = table.every(([name]) => signs(name) === sign);
  const lines = same ? table.map(([name, ...rest]) => [...name.split(/[x|]/), ...rest]) : table;
  const width = Math.max(...lines.map((line) => line.length));
  const whole = lines.every((line) => line.length === width);
  const columns = Array.from({ length: width }, (_, c) => lines.map((line) => line[c] ?? ""));
  const lengths = whole ? "" : lines.map((line) => line.length).join(" ");
  return [same ? sign : "", lengths, ...columns.map(packColumn)].join("\n");
};

/** Rows of texts and numbers, as columns parted by newlines and cells by bars; whole numbers as differences behind "#". */
const packTable = (rows) =>
  rows[0]
    .map((first, c) => {
      const cells = rows.map((row) => row[c]);
      return typeof first === "number"
        ? `#${cells.map((cell, i) => cell - (cells[i - 1] ?? 0)).join("|")}`
        : cells.join("|");
    })
    .join("\n");

const table = /rows: `([^`]*)`/g;
const materials = /(export const materialRows: readonly MaterialRow\[\] = )(\[[^]*?\n\]);/;

/** The loader: every table of a source file in place. */
module.exports = function pack(source) {
  const found = materials.exec(source);
  if (found !== null) {
    const packed = JSON.stringify(packTable(JSON.parse(found[2].replace(/,(?=\s*\])/g, ""))));
    const call = `${found[1]}unpackTable(${packed}) as unknown as readonly MaterialRow[];`;
    return `import { unpackTable } from "./unpackTable";\n${source.replace(found[0], () => call)}`;
  }
  if (!table.test(source)) return source;
  return `import { unpackRows } from "./unpackRows";\n${source.replace(table, (_, rows) => `get rows() { const rows = unpackRows(${JSON.stringify(packRows(rows))}); Object.defineProperty(this, "rows", { value: rows }); return rows; }`)}`;
};
module.exports.packRows = packRows;
module.exports.packTable = packTable;
