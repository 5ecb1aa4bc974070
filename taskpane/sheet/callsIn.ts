import { tokensOf } from "../../functions/formula/tokens";

/** A call of one of our functions as a formula holds it. */
export interface Call {
  readonly name: string;
  readonly args: readonly string[];
  /** It is the whole formula, not a part of one. */
  readonly whole: boolean;
}

/** The name of one of our functions: as it is typed, and as a file and an Excel without the add-in write it. */
const ours = /^(?:SAW\.|_xldudf_SAW[._])([A-Z]\w*)$/i;

interface Open {
  /** What stands before its first argument: the function's name, if any, and the parenthesis. */
  readonly head: string;
  readonly name: string | undefined;
  readonly args: string[];
}

const add = ({ args }: Open, text: string): void => {
  args.push((args.pop() ?? "") + text);
};

/** Our functions in a formula, inner before outer, with their arguments cut at their own commas; not those inside texts. */
export function callsIn(formula: string): readonly Call[] {
  if (!/^=.*SAW[._]/is.test(formula)) return [];
  const calls: Call[] = [];
  const open: Open[] = [{ head: "", name: undefined, args: [""] }];
  let called = "";
  const all = tokensOf(formula);
  all.forEach(({ kind, text }, i) => {
    const top = open[open.length - 1]!;
    if (kind === "function" || (kind === "space" && called !== "")) called += text;
    else if (kind === "open") {
      open.push({ head: called + text, name: ours.exec(called.trim())?.[1], args: [""] });
      called = "";
    } else if (kind === "close" && open.length > 1) {
      open.pop();
      const under = open[open.length - 1]!;
      if (top.name !== undefined)
        calls.push({
          name: top.name.toUpperCase(),
          args: top.args.map((a) => a.trim()),
          whole: i === all.length - 1 && open.length === 1 && /^=[@+]?$/.test(under.args[0]!),
        });
      add(under, top.head + top.args.join(",") + text);
    } else if (text === ",") top.args.push("");
    else add(top, text);
  });
  return calls;
}
