/** A call of one of our functions as a formula holds it. */
export interface Call {
  readonly name: string;
  readonly args: readonly string[];
  /** It is the whole formula, not a part of one. */
  readonly whole: boolean;
}

/** As it is typed, and as a file and an Excel without the add-in write it. */
const ours = /^(?:SAW\.|_xldudf_SAW[._])([A-Z]\w*)\($/i;

/** Texts, sheet names, table columns, words with their bracket, single signs. */
const pieces = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\[[^\][]*\]|[\w.]+\(?|./gs;

interface Open {
  readonly head: string;
  readonly args: string[];
}

const add = ({ args }: Open, text: string): void => {
  args.push((args.pop() ?? "") + text);
};

/** Our functions in a formula, inner before outer, with their arguments cut at their own commas; not those inside texts. */
export function callsIn(formula: string): readonly Call[] {
  if (!/^=.*SAW[._]/is.test(formula)) return [];
  const calls: Call[] = [];
  const open: Open[] = [{ head: "", args: [""] }];
  const all = formula.match(pieces)!;
  all.forEach((piece, i) => {
    const top = open[open.length - 1]!;
    if (/[({]$/.test(piece)) open.push({ head: piece, args: [""] });
    else if (/^[)}]$/.test(piece) && open.length > 1) {
      open.pop();
      const [under, name] = [open[open.length - 1]!, ours.exec(top.head)?.[1]];
      if (name !== undefined)
        calls.push({
          name: name.toUpperCase(),
          args: top.args.map((a) => a.trim()),
          whole: i === all.length - 1 && open.length === 1 && /^=[@+]?$/.test(under.args[0]!),
        });
      add(under, top.head + top.args.join(",") + piece);
    } else if (piece === ",") top.args.push("");
    else add(top, piece);
  });
  return calls;
}
