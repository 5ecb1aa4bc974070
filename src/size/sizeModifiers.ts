import { InputError } from "../errors";
import type { Modifier } from "./modifier";
import { modifierAt } from "./modifierAt";
import type { Token } from "./sizeTokens";

/** What a size says besides the bar itself. */
export interface Modifiers {
  /** Tokens of the bar. */
  readonly bar: readonly Token[];
  readonly lie: string | undefined;
  readonly rows: number;
  readonly columns: number;
  readonly nested: boolean;
  /** "4 pcs": taken as one row. */
  readonly counted: boolean;
  readonly turn: number;
  readonly mitre: number;
}

/**
 * Takes orientation, bundle, turn and mitre out of a size; each may be given once.
 * @param tokens of a size [-]
 * @returns the bar's tokens; rows and columns [-]; turn and mitre [°]
 * @throws InputError "invalid": given twice, nested without a bundle, a mitre over 60°, a turn over 360°
 * @source common practice, no source; the limit of 60° is judgement (1/cos 60° = 2)
 */
export function sizeModifiers(tokens: readonly Token[]): Modifiers {
  const bar: Token[] = [];
  const found: Modifier[] = [];
  for (let i = 0; i < tokens.length;) {
    const modifier = modifierAt(tokens, i);
    if (modifier === undefined) bar.push(tokens[i]!);
    else found.push(modifier);
    i += modifier?.length ?? 1;
  }
  const bundle = once(found, "bundle") ?? { rows: 1, columns: 1, counted: false };
  const nested = once(found, "nested") !== undefined;
  if (nested && bundle.rows * bundle.columns === 1) {
    throw new InputError("invalid", "section", '"nested" belongs to a bundle: "round 2 bundle 3x4 nested"');
  }
  const { rows, columns, counted } = bundle;
  return {
    bar,
    lie: once(found, "lie")?.lie,
    rows,
    columns,
    nested,
    counted,
    turn: degrees(once(found, "turn"), 360),
    mitre: degrees(once(found, "mitre"), 60),
  };
}

function degrees(angle: { readonly kind: string; readonly degrees: number } | undefined, most: number): number {
  if (angle === undefined || angle.degrees <= most) return angle?.degrees ?? 0;
  const hint = angle.kind === "mitre" ? "; 0 is a square cut" : "";
  throw new InputError("invalid", "section", `a {kind} of {degrees} degrees is more than {most}${hint}`, {
    kind: angle.kind,
    degrees: String(angle.degrees),
    most: String(most),
  });
}

function once<K extends Modifier["kind"]>(
  found: readonly Modifier[],
  kind: K,
): Extract<Modifier, { readonly kind: K }> | undefined {
  const all = found.filter((f): f is Extract<Modifier, { readonly kind: K }> => f.kind === kind);
  if (all.length < 2) return all[0];
  const [first, second] = found.flatMap((f) => (f.kind === "lie" ? [f.lie] : []));
  if (first !== undefined && second !== undefined && kind === "lie") {
    throw new InputError("invalid", "section", "two orientations given ({first} and {second})", { first, second });
  }
  throw new InputError("invalid", "section", '"{kind}" is given twice', { kind });
}
