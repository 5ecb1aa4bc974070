import { catalogue } from "../catalogue";

/** Excel keeps our names with another prefix in its files: `_xldudf_SAW_CUTTIME(` where a person types `SAW.CUTTIME(`. */

const stored = (name: string): string => name.replace(/\./g, "_").toUpperCase();
const typedNames = new Map(catalogue.map((entry) => [stored(`SAW.${entry.name}`), `SAW.${entry.name}`]));

/** Newer functions of Excel are marked in the file; these prefixes mean nothing to a person or to the grid. */
const marks = /_xlfn\.(?:_xlws\.)?|_xlpm\./gi;
const ours = /(?:\[\d+\]!)?_(?:xldudf|xll)[_.]([A-Za-z0-9_.]+)(?=\s*\()/gi;
const called = /(?<![A-Za-z0-9_.!])(SAW\.[A-Za-z0-9_.]+)(?=\s*\()/gi;

/** Text in quotes, and names of sheets and columns in quotes or brackets, are not looked into. */
const outsideQuotes = (formula: string, change: (part: string) => string): string =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, i) => (i % 2 === 1 ? part : change(part)))
    .join("");

/**
 * The formula of a file as a person types it, without the leading "=".
 * @source names of custom functions in files: public issue threads of the office-js repository and third-party files; not seen in Excel
 */
export const fromFile = (formula: string): string =>
  outsideQuotes(formula, (part) =>
    part.replace(ours, (_, name: string) => typedNames.get(stored(name)) ?? name).replace(marks, ""),
  );

/** Functions of newer Excel that a file must mark, of those the samples and people's sheets use most. */
const marked: Readonly<Record<string, string>> = {
  XLOOKUP: "_xlfn.",
  XMATCH: "_xlfn.",
  IFNA: "_xlfn.",
  IFS: "_xlfn.",
  SWITCH: "_xlfn.",
  MAXIFS: "_xlfn.",
  MINIFS: "_xlfn.",
  TEXTJOIN: "_xlfn.",
  CONCAT: "_xlfn.",
  UNIQUE: "_xlfn.",
  SEQUENCE: "_xlfn.",
  SORTBY: "_xlfn.",
  VSTACK: "_xlfn.",
  HSTACK: "_xlfn.",
  CHOOSECOLS: "_xlfn.",
  TAKE: "_xlfn.",
  DROP: "_xlfn.",
  FILTER: "_xlfn._xlws.",
  SORT: "_xlfn._xlws.",
};
const newer = new RegExp(`(?<![A-Za-z0-9_.])(${Object.keys(marked).join("|")})(?=\\()`, "gi");

/** A typed formula as the file keeps it, with or without its leading "=". */
export const toFile = (formula: string): string =>
  outsideQuotes(formula.replace(/^=/, ""), (part) =>
    part
      .replace(called, (_, name: string) => (typedNames.has(stored(name)) ? `_xldudf_${stored(name)}` : name))
      .replace(newer, (name) => `${marked[name.toUpperCase()]!}${name.toUpperCase()}`),
  );
