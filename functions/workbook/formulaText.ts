import { catalogue } from "../catalogue";
import { rewritten, tokensOf } from "../formula/tokens";

/** Excel keeps our names with another prefix in its files: `_xldudf_SAW_CUTTIME(` where a person types `SAW.CUTTIME(`. */

const stored = (name: string): string => name.replace(/\./g, "_").toUpperCase();
const typedNames = new Map(catalogue.map((entry) => [stored(`SAW.${entry.name}`), `SAW.${entry.name}`]));

/** What files put before a custom function's name. */
const prefixes = /^_(?:xldudf|xll)[_.]/i;

/** Newer functions of Excel are marked in the file; these prefixes mean nothing to a person or to the grid. */
const marks = /^(?:_xlfn\.(?:_xlws\.)?|_xlpm\.)/i;

const typed = (name: string): string => {
  const own = name.replace(prefixes, "");
  return typedNames.get(stored(own)) ?? own;
};

/**
 * The formula of a file as a person types it, without the leading "=".
 * @source names of custom functions in files: public issue threads of the office-js repository and third-party files; not seen in Excel
 */
export const fromFile = (formula: string): string =>
  rewritten(formula, ({ kind, text }, i, all) => {
    const custom = (token = all[i]): boolean => token?.kind === "function" && prefixes.test(token.text);
    // A custom function may be kept as another workbook's: [2]!_xldudf_SAW_AREA(A2), 'C:\\…\\BOOK.XLAM'!_xldudf_SAW_AREA(A2).
    if (kind === "sheet") return custom(all[i + 1]) ? "" : text;
    if (custom()) return typed(text);
    return kind === "function" || kind === "name" ? text.replace(marks, "") : text;
  });

const isOwn = (name: string): boolean =>
  typedNames.has(stored(name.replace(prefixes, ""))) && (prefixes.test(name) || /^SAW\./i.test(name));

/** Whether a formula, typed or of a file, calls one of our functions. */
export const callsOwn = (formula: string): boolean =>
  tokensOf(formula).some(({ kind, text }) => kind === "function" && isOwn(text));

/** A formula of a file with our functions' names as Excel keeps them, and every other letter as it was. */
export const mended = (formula: string): string =>
  rewritten(formula, ({ kind, text }, i, all) => {
    const own = (token = all[i]): boolean => token?.kind === "function" && isOwn(token.text);
    if (kind === "sheet") return own(all[i + 1]) ? "" : text;
    return own() ? `_xldudf_${stored(text.replace(prefixes, ""))}` : text;
  });

/** Functions of newer Excel that a file must mark, of those the samples and people's sheets use most. */
const marked: ReadonlyMap<string, string> = new Map(
  Object.entries({
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
  }),
);

function storedName(name: string): string {
  const upper = name.toUpperCase();
  if (!upper.startsWith("SAW.")) return marked.has(upper) ? `${marked.get(upper)!}${upper}` : name;
  return typedNames.has(stored(name)) ? `_xldudf_${stored(name)}` : name;
}

/** A typed formula as the file keeps it, with or without its leading "=". */
export const toFile = (formula: string): string =>
  rewritten(formula.replace(/^=/, ""), ({ kind, text }, i, all) =>
    kind === "function" && all[i - 1]?.kind !== "sheet" ? storedName(text) : text,
  );
