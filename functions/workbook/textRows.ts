import { parse } from "papaparse";

/** What lines of text become: rows of cells, and the sign they were split at; "" for one column. */
export interface TextRows {
  readonly rows: readonly (readonly (string | number)[])[];
  readonly sign: "\t" | "," | ";" | "";
}

/** Only a plain decimal number is one: 2/3, 1-2 and 007 are what was written. */
const plainNumber = /^[+-]?(?:0|[1-9]\d*)?(?:\.\d+)?$/;
const cellOf = (text: string): string | number => {
  const bare = text.trim();
  return bare !== "" && plainNumber.test(bare) && /\d/.test(bare) ? Number(bare) : bare;
};

const split = (text: string, delimiter: string): readonly string[][] =>
  parse<string[]>(text, { delimiter, skipEmptyLines: false }).data;

/** One sign parts lines where all of them have the same number of it. A description may hold a comma: then they differ. */
function isTable(rows: readonly string[][]): boolean {
  const filled = rows.filter((row) => row.some((cell) => cell.trim() !== ""));
  const width = filled[0]?.length ?? 1;
  return width > 1 && filled.every((row) => row.length === width);
}

/** A cell in quotes as a spreadsheet writes it to a .csv, marks inside doubled. */
const quoted = /^"((?:[^"]|"")*)"$/;
/** A line as it stands: inch marks are no quotation marks, unless all of it is one quoted cell. */
const lines = (text: string): string[][] =>
  text.split("\n").map((line) => [quoted.exec(line.trim())?.[1]?.replace(/""/g, '"') ?? line]);

function signIn(text: string): TextRows["sign"] {
  if (text.includes("\t")) return "\t";
  return ([";", ","] as const).find((sign) => text.includes(sign) && isTable(split(text, sign))) ?? "";
}

/** Lines of a mail or of a .csv file as rows of cells: parted by tabs, else by semicolons or commas, else one column. */
export function textRows(text: string): TextRows {
  const plain = text
    .replace(/^\uFEFF/, "")
    .replace(/\r\n?/g, "\n")
    .replace(/\n+$/, "");
  const sign = signIn(plain);
  const rows = sign === "" ? lines(plain) : split(plain, sign);
  return { rows: rows.map((row) => row.map(cellOf)), sign };
}
