import { tokensOf } from "../formula/tokens";
import type { Cell, Range } from "../kinds/cell";

export interface ParsedCall {
  readonly name: string;
  readonly args: readonly (Range | null)[];
}

/** What a call of literals is made of: signs of the grammar, and literals, a number with its sign. */
function piecesOf(formula: string): string[] {
  const pieces: string[] = [];
  let sign = "";
  for (const { kind, text } of tokensOf(formula)) {
    if (kind === "space" || text === "=") continue;
    if (kind === "operator") sign = text;
    else {
      pieces.push(sign + text);
      sign = "";
    }
  }
  return pieces;
}

const literal = (t: string): Cell => {
  if (t.startsWith('"')) return t.slice(1, -1).replace(/""/g, '"');
  const upper = t.toUpperCase();
  return upper === "TRUE" || upper === "FALSE" ? upper === "TRUE" : Number(t);
};

/** An array constant: columns by commas, rows by semicolons; an empty place is a blank cell, as a referenced cell would be. */
function arrayOf(ts: string[]): Range {
  const rows: Cell[][] = [[]];
  let open = true;
  for (let t = ts.shift(); t !== undefined && t !== "}"; t = ts.shift()) {
    const row = rows[rows.length - 1]!;
    if (t === "," || t === ";") {
      if (open) row.push(null);
      open = true;
      if (t === ";") rows.push([]);
    } else {
      row.push(literal(t));
      open = false;
    }
  }
  if (open) rows[rows.length - 1]!.push(null);
  return rows;
}

/** Reads a call of literals, as the catalogue's examples are: text, numbers, array constants, arguments left out. */
export function parseCall(formula: string): ParsedCall {
  const ts = piecesOf(formula);
  const name = ts.shift()!.replace(/^SAW\./, "");
  const args: (Range | null)[] = [];
  let current: Range | null = null;
  ts.shift();
  for (let t = ts.shift(); t !== undefined; t = ts.shift()) {
    if (t === "," || t === ")") {
      if (t === "," || current !== null || args.length > 0) args.push(current);
      current = null;
    } else current = t === "{" ? arrayOf(ts) : [[literal(t)]];
  }
  return { name, args };
}
