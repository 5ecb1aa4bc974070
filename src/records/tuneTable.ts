import type { LimitName } from "../cutting/cut";
import { recordsConstants as k } from "../data/recordsConstants";
import type { Phrase, Text } from "../phrase";
import type { FittedLog, SolvedCut } from "./fitLog";
import { joinTexts } from "./joinTexts";
import type { LeftOut, ReadLog } from "./loggedCut";
import { rateSpread } from "./rateSpread";

/** A row to stand under the shop block. */
export interface TuneRow {
  readonly label: Text;
  readonly value: number;
  readonly comment: Text;
}

const limitWords: Readonly<Record<LimitName, string>> = {
  "usual rate": "the saw",
  gullet: "full gullets",
  "feed force": "the feed force",
  "maximum feed": "the maximum feed",
  "motor power": "the motor",
};

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
const rowsOf = (all: readonly SolvedCut[]): number => all.reduce((n, { cut }) => n + cut.rows.length, 0);
/** "7 cuts", or "12 cuts in 7 runs" where equal neighbours were merged. */
const cutsOf = (all: readonly SolvedCut[]): string =>
  counted(rowsOf(all), "cut") + (rowsOf(all) === all.length ? "" : ` in ${counted(all.length, "run")}`);
const rowWords = ({ rows }: SolvedCut["cut"]): string =>
  rows.length === 1 ? `row ${rows[0]!}` : `rows ${rows[0]!} to ${rows[rows.length - 1]!}`;

/** The first ones by name, the rest by number. */
const named = (texts: readonly Phrase[]): readonly Phrase[] => {
  const shown = texts.slice(0, k.namedRows.value);
  const rest = texts.length - shown.length;
  return rest === 0 ? shown : [...shown, { template: `${rest} more left out`, facts: {} }];
};

const heldWords = (held: FittedLog["held"]): string => {
  const counts = new Map<LimitName, number>();
  for (const { solved, by } of held) counts.set(by, (counts.get(by) ?? 0) + solved.cut.rows.length);
  return [...counts].map(([by, n]) => `, ${n} held by ${limitWords[by]}`).join("");
};

/** What a group's cuts came to: used, held, left out and why. */
function groupSays(name: string, { used, held, outlying, unsolved }: FittedLog): Phrase {
  const mine = <T extends { readonly solved: SolvedCut }>(all: readonly T[]) =>
    all.filter((x) => x.solved.group === name);
  const why = [
    ...mine(outlying).map(({ solved, distance }) => ({
      template: "{rows} left out: {times} times the others",
      facts: { rows: rowWords(solved.cut), times: String(Number(Math.exp(distance).toPrecision(2))) },
    })),
    ...mine(unsolved).map(({ solved, why }) => ({
      template: `{rows} left out: ${why.template}`,
      facts: { ...why.facts, rows: rowWords(solved.cut) },
    })),
  ];
  const own = used.filter((s) => s.group === name);
  return joinTexts([`${cutsOf(own)}${heldWords(mine(held))}`, ...named(why)], "; ");
}

const leftWords = ({ row, why }: LeftOut): Phrase => joinTexts([`row ${row} left out:`, why], " ");

/** Of all cuts: their number, what was marked, rows that could not be read, groups of which no cut is left. */
function shopSays(read: ReadLog, left: readonly LeftOut[], fitted: FittedLog): Phrase {
  const lost = [...fitted.held, ...fitted.outlying, ...fitted.unsolved].map(({ solved }) => solved.group);
  const empty = [...new Set(lost)].filter((name) => !fitted.groups.includes(name));
  const whole =
    fitted.used.length === 0
      ? "no usable cut in the log: the model as it stands"
      : `all ${cutsOf(fitted.used)}, ${counted(fitted.groups.length, "group")}; for groups without cuts of their own`;
  return joinTexts(
    [
      whole,
      ...(read.marked === 0 ? [] : [`${counted(read.marked, "row")} marked to leave out`]),
      ...empty.map((name) => joinTexts([`${name}:`, groupSays(name, fitted)], " ")),
      ...named(left.map(leftWords)),
    ],
    "; ",
  );
}

/**
 * The rows for the shop block: rate factor exp M of the shop; for each group and class of blade with cuts rate factor exp θ
 * and rate spread.
 * @param read the log as it was read
 * @param left rows left out while reading and while the model was asked
 * @param fitted the fit of ln of the factor [-]
 * @returns label [text], value [-], comment [text]
 * @source see fitLog
 */
export function tuneTable(read: ReadLog, left: readonly LeftOut[], fitted: FittedLog): readonly TuneRow[] {
  const { fit, groups } = fitted;
  return [
    {
      label: "Rate factor",
      value: groups.length === 0 ? 1 : Math.exp(fit.shop),
      comment: shopSays(read, left, fitted),
    },
    ...groups.flatMap((name, j): TuneRow[] => {
      const { middle } = fit.groups[j]!;
      return [
        { label: `Rate factor ${name}`, value: Math.exp(middle), comment: groupSays(name, fitted) },
        {
          label: `Rate spread ${name}`,
          value: rateSpread(fit, j),
          comment: "low to high: about 80 % of your own cuts",
        },
      ];
    }),
  ];
}
