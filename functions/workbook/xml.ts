import { BookFault } from "./fault";

/** The little of XML that the parts of a workbook need. Their writers differ in prefixes, quotes and order, not in more. */

const entities: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

const codePoint = (code: string): string =>
  String.fromCodePoint(Number(code.startsWith("x") || code.startsWith("X") ? `0${code}` : code));

/** Text of XML as it is meant, with the file format's own escapes `_x000D_`. */
export const unescape = (text: string): string =>
  text.replace(/&(?:#([xX]?[0-9a-fA-F]+)|(\w+));/g, (all, code: string | undefined, name: string | undefined) =>
    code !== undefined ? codePoint(code) : (entities[name!] ?? all),
  );

export const escape = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

const attributePattern = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;

/** The attributes of a start tag; a prefix is kept only for "r:id", which has a plain namesake. */
export function attributes(tag: string): Readonly<Record<string, string | undefined>> {
  const found: Record<string, string> = {};
  for (const [, name, double, single] of tag.matchAll(attributePattern))
    found[name!.replace(/^(?!r:)[\w.-]+:/, "")] = unescape(double ?? single ?? "");
  return found;
}

export interface Element {
  readonly prefix: string;
  /** The start tag's attributes, as written. */
  readonly tag: string;
  readonly inner: string;
  readonly whole: string;
  readonly at: number;
}

const patterns = new Map<string, RegExp>();
const startOf = (name: string): RegExp => {
  const known =
    patterns.get(name) ??
    new RegExp(`<((?:[\\w.-]+:)?)${name}((?:\\s+[\\w:.-]+\\s*=\\s*(?:"[^"]*"|'[^']*'))*)\\s*(/?)>`, "g");
  patterns.set(name, known);
  return known;
};

/** Every element of a name that does not hold itself, in order. Each end is looked for once: broken XML costs no more time than sound, and is refused. */
export function* elements(xml: string, name: string): Generator<Element> {
  const start = new RegExp(startOf(name));
  for (let match = start.exec(xml); match !== null; match = start.exec(xml)) {
    const [opening, prefix, tag, closed] = match as unknown as readonly [string, string, string, string];
    const from = match.index + opening.length;
    const end = closed === "/" ? from : xml.indexOf(`</${prefix}${name}`, from);
    const to = closed === "/" ? from : xml.indexOf(">", end) + 1;
    if (end < 0 || to === 0) throw new BookFault(`is damaged: a ${name} inside it has no end`);
    yield { prefix, tag, inner: xml.slice(from, end), whole: xml.slice(match.index, to), at: match.index };
    start.lastIndex = to;
  }
}

export function firstElement(xml: string, name: string): Element | undefined {
  for (const element of elements(xml, name)) return element;
  return undefined;
}
