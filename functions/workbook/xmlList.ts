import { BookFault } from "./fault";
import { damaged, localName, tagsOf } from "./xml";

/** One element of a list, by its places in the part. */
export interface Item {
  readonly start: number;
  /** Where its start tag ends. */
  readonly open: number;
  readonly end: number;
  /** How many elements lie directly in it. */
  readonly children: number;
}

/** The long list of a part, the rows of a sheet or the shared strings, and the part without its items. */
export interface XmlList {
  readonly items: readonly Item[];
  /** Where the list's start tag begins and ends, and where its end tag begins; undefined where the part has no such list. */
  readonly place: { readonly start: number; readonly open: number; readonly close: number } | undefined;
  readonly rest: string;
  /** A place of the rest, before or after the list, as one of the part. */
  readonly at: (place: number) => number;
}

/** Judgement: twice the rows of a sheet. */
const mostItems = 2_000_000;

const isNamed = (xml: string, start: number, name: string): boolean =>
  localName(/[^\s/>]*/y.exec(xml.slice(start + 1, start + 100))![0]) === name;

interface Open {
  readonly items: readonly Item[];
  readonly close: number;
}

function itemsIn(xml: string, part: string, list: string, from: number): Open {
  const items: Item[] = [];
  let [depth, start, open, children] = [0, 0, 0, 0];
  for (const tag of tagsOf(xml, part, from)) {
    if (tag.kind === "close") {
      if (depth === 0 && isNamed(xml, tag.start + 1, list)) return { items, close: tag.start };
      if (depth === 0) throw damaged(part, `an element of its ${list} has no end`);
      depth -= 1;
    } else {
      if (depth === 0) [start, open, children] = [tag.start, tag.end, 0];
      else if (depth === 1) children += 1;
      if (tag.kind === "open") depth += 1;
    }
    if (depth > 0 || tag.kind === "open") continue;
    if (items.length === mostItems)
      throw new BookFault(`has a list of more than ${mostItems.toLocaleString("en")} entries (${part})`);
    items.push({ start, open, end: tag.end, children });
  }
  throw damaged(part, `a ${list} has no end`);
}

/** The first list of a name. Comments and the like hide nothing from it and add nothing to it. */
export function listOf(xml: string, list: string, part: string): XmlList {
  const none = { items: [], place: undefined, rest: xml, at: (place: number): number => place };
  for (const { start, end: open, kind } of tagsOf(xml, part)) {
    if (kind === "close" || !isNamed(xml, start, list)) continue;
    if (kind === "empty") return { ...none, place: { start, open, close: open } };
    const { items, close } = itemsIn(xml, part, list, open);
    const gaps = items.map((item, i) => xml.slice(items[i - 1]?.end ?? open, item.start));
    const rest = [xml.slice(0, open), ...gaps, xml.slice(items[items.length - 1]?.end ?? open)].join("");
    const cut = xml.length - rest.length;
    return { items, place: { start, open, close }, rest, at: (place) => (place > open ? place + cut : place) };
  }
  return none;
}
