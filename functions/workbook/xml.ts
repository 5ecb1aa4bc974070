import { parseXml, XmlElement, XmlError } from "@rgrove/parse-xml";
import { BookFault } from "./fault";

/**
 * The parts of a workbook as XML, read by a library that keeps the standard (XML 1.0) and knows where each element
 * stands. Their writers differ in prefixes, quotes and order.
 */

/** Judgement: far above any part that is read whole (65,000 links make 13 MB), and what a page's memory holds as a tree. */
const largestTree = 20_000_000;

/** One line, whatever the file has put into its names. */
export const damaged = (part: string, why: string): BookFault =>
  new BookFault(`is damaged: its part ${part} is not well-formed (${why.slice(0, 100)})`.replace(/\p{Cc}/gu, " "));

export interface Tag {
  readonly start: number;
  readonly end: number;
  readonly kind: "open" | "empty" | "close";
}

/** Markup that holds no tags, however much it may look like them: how it begins and ends. */
const without = [
  ["<!--", "-->"],
  ["<![CDATA[", "]]>"],
  ["<?", "?>"],
] as const;

/** Where markup that is no tag ends; undefined for a tag. */
function otherEnd(xml: string, from: number, part: string): number | undefined {
  const sign = xml[from + 1];
  if (sign !== "!" && sign !== "?") return undefined;
  const marks = without.find(([mark]) => xml.startsWith(mark, from));
  if (marks === undefined) throw new BookFault(`has a document type, which no workbook needs (${part})`);
  const close = xml.indexOf(marks[1], from + marks[0].length);
  return close < 0 ? -1 : close + marks[1].length;
}

/** Where the tag that begins at a place ends: ">" inside quotes is none. */
function tagEnd(xml: string, from: number): number {
  for (let i = from; i < xml.length; i += 1) {
    const sign = xml[i]!;
    if (sign === ">") return i + 1;
    if (sign === '"' || sign === "'") {
      i = xml.indexOf(sign, i + 1);
      if (i < 0) return -1;
    }
  }
  return -1;
}

/**
 * Where the tags stand, from a place on. A tree of a long sheet would not fit into memory; by these a list is cut into
 * its rows, and each row is then read by the library. What stands inside a tag is not looked at here.
 */
export function* tagsOf(xml: string, part: string, from = 0): Generator<Tag> {
  for (let start = xml.indexOf("<", from), end = 0; start >= 0; start = xml.indexOf("<", end)) {
    const other = otherEnd(xml, start, part);
    end = other ?? tagEnd(xml, start);
    if (end < 0) throw damaged(part, "it ends inside its markup");
    if (other !== undefined) continue;
    yield { start, end, kind: xml[start + 1] === "/" ? "close" : xml[end - 2] === "/" ? "empty" : "open" };
  }
}

function parsed(xml: string, part: string, includeOffsets: boolean): XmlElement {
  if (xml.length > largestTree)
    throw new BookFault(`has ${(xml.length / 1e6).toFixed(0)} MB of ${part} in one piece; that is more than is read`);
  tagsOf(xml, part).next();
  try {
    return parseXml(xml, { includeOffsets, preserveComments: includeOffsets }).root!;
  } catch (problem) {
    if (problem instanceof XmlError) throw damaged(part, problem.message.split(" (line ")[0]!);
    // The library goes into each element by a call of its own.
    if (problem instanceof RangeError) throw damaged(part, "its elements lie too deep in each other");
    throw problem;
  }
}

/** The root of a part, or of a piece of it that is one element, to be read: line ends are as the standard makes them. */
export const readXml = (xml: string, part: string): XmlElement => parsed(xml.replace(/\r\n?/g, "\n"), part, false);

/** The same to be written into: every element and comment has its place in the text, but line ends are blanks. */
export const placedXml = (xml: string, part: string): XmlElement => parsed(xml.replace(/\r/g, " "), part, true);

export const localName = (name: string): string => name.slice(name.indexOf(":") + 1);

/** What a writer puts before the names of its elements: "x:", or nothing. */
export const prefixOf = (name: string): string => name.slice(0, name.indexOf(":") + 1);

/** The elements of a name that lie directly in another. */
export const childrenOf = ({ children }: XmlElement, name: string): XmlElement[] =>
  children.filter((c): c is XmlElement => c instanceof XmlElement && localName(c.name) === name);

/** Every element of a name, however deep, that lies in no other of it, in order. */
export const elements = ({ children }: XmlElement, name: string): XmlElement[] =>
  children.flatMap((c) => (c instanceof XmlElement ? (localName(c.name) === name ? [c] : elements(c, name)) : []));

/** The id of the relationship that an element stands for; writers differ in the prefix. */
export const relationId = ({ attributes }: XmlElement): string | undefined =>
  attributes[Object.keys(attributes).find((name) => name.endsWith(":id")) ?? "id"];

/** Where the start tag of a placed element ends. */
export const innerStart = (xml: string, { children, start, end }: XmlElement): number =>
  children[0]?.start ?? (xml.startsWith("/>", end - 2) ? end : xml.lastIndexOf("</", Math.max(start, end - 1)));

/** Where the end tag of a placed element begins. */
export const innerEnd = (xml: string, element: XmlElement): number =>
  element.children[element.children.length - 1]?.end ?? innerStart(xml, element);

const attributePattern = /\s+([^\s=]+)\s*=\s*(?:"[^"]*"|'[^']*')/g;

/** The start tag of a placed element as written, up to its ">", without some of its attributes. */
export const startTag = (xml: string, element: XmlElement, ...gone: readonly string[]): string =>
  xml
    .slice(element.start, innerStart(xml, element))
    .replace(/\s*\/?>$/, "")
    .replace(attributePattern, (all, name: string) => (gone.includes(name) ? "" : all));

/** What is to stand in the place of a piece of text. */
export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** A text with some of its pieces changed and every other letter as it was. */
export function edited(xml: string, edits: readonly Edit[]): string {
  const pieces: string[] = [];
  let from = 0;
  for (const { start, end, text } of [...edits].sort((a, b) => a.start - b.start)) {
    pieces.push(xml.slice(from, start), text);
    from = end;
  }
  return pieces.join("") + xml.slice(from);
}

export const escape = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");
