import { itemConstants as k } from "../data/itemConstants";
import type { Units } from "../quantities";

const number = String.raw`(\d+(?:[.,]\d+)?)`;
const unit = String.raw`("|mm(?!\p{L})|in(?!\p{L}))?`;
const pair = new RegExp(`(?<![\\d.,/\\p{L}-])(?:Ø ?)?${number} ?${unit} ?/ ?${number} ?${unit}(?![\\d/])`, "giu");
const bracket = /\(([^()]*)\)/g;
const measure = /(?:(\d+)[ -])?(\d+)\/(\d+)(')?|\d+(?:[.,]\d+)?'?|\.\d+'?/g;
const hollow = /(?<!\p{L})(?:tubes?|tubing|tbg|pipes?|dom|chs)(?!\p{L})/iu;
const inch = k.inch.value;

/**
 * A line in which what is written in pairs stands once: outside over inside diameter of a tube as OD x ID, and a size in brackets in the
 * other unit left out where it is the same.
 * @param text in English words [text]
 * @returns the same line [text], and the unit of the numbers before such brackets
 * @source common practice, no source
 */
export function pairedSizes(text: string): {
  readonly text: string;
  readonly other: Units | undefined;
  readonly odd: string | undefined;
} {
  let [other, odd]: [Units | undefined, string | undefined] = [undefined, undefined];
  const once = text.replace(bracket, (all, inside: string, at: number) => {
    if (!isMeasures(inside)) return all;
    if (!isSame(inside, text.slice(0, at))) {
      // A length and another in brackets: neither is known.
      const single =
        /^[\d.,\s]+(?:mm|in|inch|["'])?\s*$/i.test(inside) && /(?:mm|in|["'])\s*$/i.test(text.slice(0, at));
      if (single) odd ??= all;
      return single ? " " : all;
    }
    other = isMetric(inside) ? "inch" : "metric";
    return " ";
  });
  return { text: hollow.test(once) ? outsideInside(once) : once, other, odd };
}

function outsideInside(text: string): string {
  return text.replace(
    pair,
    (all: string, outside: string, first: string | undefined, inside: string, second: string | undefined) => {
      const [od, id] = [outside, inside].map((part) => Number(part.replace(",", ".")));
      const unit = second ?? first ?? "";
      return od! > id! && 2 * id! > od! ? ` ${outside}${unit} od x ${inside}${unit} id ` : all;
    },
  );
}

const isMetric = (inside: string): boolean => /\d ?mm/i.test(inside);

const millimetres = (text: string, metric: boolean): readonly number[] =>
  Array.from(text.matchAll(measure), ([all, whole = "0", top, bottom, foot]) => {
    const value =
      bottom === undefined
        ? Number(all.replace(/'$/, "").replace(",", "."))
        : Number(whole) + Number(top) / Number(bottom);
    return value * (foot !== undefined || all.endsWith("'") ? k.foot.value : metric ? 1 : inch);
  });

/** Nothing but numbers with their unit. */
function isMeasures(inside: string): boolean {
  const rest = inside.replace(/mm|inch|in|[\d\s.,x×*/"'Ø-]/giu, "");
  return rest === "" && /\d ?(?:mm|in|["'])/i.test(inside);
}

/** Whether brackets hold the numbers that stand before them, in the other unit. */
function isSame(inside: string, before: string): boolean {
  const metric = isMetric(inside);
  const mine = millimetres(inside, metric);
  const theirs = millimetres(before, !metric).slice(-mine.length);
  return (
    mine.length > 0 &&
    mine.length === theirs.length &&
    mine.every((mm, i) => Math.abs(mm / theirs[i]! - 1) < k.closeSizes.value)
  );
}
