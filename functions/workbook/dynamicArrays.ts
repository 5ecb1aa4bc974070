import type { XmlElement } from "@rgrove/parse-xml";
import { partText, relationsOf, relationsPart, workbookPart, type Parts } from "./parts";
import { childrenOf, edited, elements, innerEnd, placedXml, prefixOf, startTag, type Edit } from "./xml";

/**
 * Excel keeps a formula that may fill cells, and every custom function, as an array with cm="n": the n-th cell metadata of
 * the workbook, which says that the array is a dynamic one (ISO/IEC 29500-1, 18.9; [MS-XLSX] 2.4.55 from memory). Without
 * it Excel shows {=…}, or puts an @ before the function.
 */

const type = "XLDAPR";
const namespace = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
const kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata";
const content = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
const empty =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?><metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"></metadata>';

/** Children of the part in the order of its schema. */
const order = [
  "metadataTypes",
  "metadataStrings",
  "mdxMetadata",
  "futureMetadata",
  "cellMetadata",
  "valueMetadata",
  "extLst",
];

const typeXml = (p: string): string =>
  `<${p}metadataType name="${type}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const propertiesXml = (p: string): string =>
  `<${p}bk><${p}extLst><${p}ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties xmlns:xda="${namespace}" fDynamic="1" fCollapsed="0"/></${p}ext></${p}extLst></${p}bk>`;

interface Held {
  /** Number of the metadata type, from 1. */
  readonly type: number;
  /** Place of the properties of a dynamic array among those of the type. */
  readonly properties: number;
  /** Number of the cell metadata, from 1. */
  readonly cell: number;
}

/** Each from 0 where it is missing. */
function heldIn(root: XmlElement): Held {
  const held = elements(root, "metadataType").findIndex(({ attributes }) => attributes["name"] === type) + 1;
  const own = childrenOf(root, "futureMetadata").find(({ attributes }) => attributes["name"] === type);
  const properties = (own === undefined ? [] : childrenOf(own, "bk")).findIndex((bk) =>
    elements(bk, "dynamicArrayProperties").some(({ attributes }) => attributes["fDynamic"] === "1"),
  );
  const cells = childrenOf(root, "cellMetadata").flatMap((list) => childrenOf(list, "bk"));
  const cell = cells.findIndex((bk) =>
    childrenOf(bk, "rc").some(
      ({ attributes }) => Number(attributes["t"]) === held && Number(attributes["v"]) === properties,
    ),
  );
  return { type: held, properties, cell: held > 0 && properties >= 0 ? cell + 1 : 0 };
}

/** One more child at the end of a list, which is made in its place where it is missing. */
function appended(xml: string, part: string, name: string, child: string, named = ""): string {
  const root = placedXml(xml, part);
  const prefix = prefixOf(root.name);
  const list = childrenOf(root, name).find(({ attributes }) => named === "" || attributes["name"] === named);
  if (list !== undefined) {
    const count = list.children.filter((item) => item.type === "element").length + 1;
    const inner = xml.slice(list.start + startTag(xml, list).length, innerEnd(xml, list)).replace(/^\s*\/?>/, "");
    const text = `${startTag(xml, list, "count")} count="${count}">${inner}${child}</${list.name}>`;
    return edited(xml, [{ start: list.start, end: list.end, text }]);
  }
  const after = order.slice(order.indexOf(name) + 1).flatMap((later) => childrenOf(root, later));
  const at = after[0]?.start ?? innerEnd(xml, root);
  const title = named === "" ? "" : ` name="${named}"`;
  const text = `<${prefix}${name}${title} count="1">${child}</${prefix}${name}>`;
  return edited(xml, [{ start: at, end: at, text }]);
}

/** The part with what a dynamic array needs, and the number of its cell metadata. */
function completed(xml: string, part: string): readonly [xml: string, cell: number] {
  const prefix = prefixOf(placedXml(xml, part).name);
  const held = (): Held => heldIn(placedXml(text, part));
  let text = xml;
  if (held().type === 0) text = appended(text, part, "metadataTypes", typeXml(prefix));
  if (held().properties < 0) text = appended(text, part, "futureMetadata", propertiesXml(prefix), type);
  const { type: t, properties, cell } = held();
  if (cell > 0) return [text, cell];
  text = appended(text, part, "cellMetadata", `<${prefix}bk><${prefix}rc t="${t}" v="${properties}"/></${prefix}bk>`);
  return [text, held().cell];
}

const inside = (xml: string, part: string, child: (prefix: string) => string): Uint8Array => {
  const root = placedXml(xml, part);
  const at = innerEnd(xml, root);
  const edit: Edit = { start: at, end: at, text: child(prefixOf(root.name)) };
  return new TextEncoder().encode(edited(xml, [edit]));
};

/** A name that no part has yet. */
const free = (taken: (name: string) => boolean, name: string, end: string): string => {
  for (let i = 0; ; i += 1) if (!taken(`${name}${i === 0 ? "" : i}${end}`)) return `${name}${i === 0 ? "" : i}${end}`;
};

/** A workbook that can keep dynamic arrays, and the cm of their cells. */
export function withDynamicArrays(parts: Parts): { readonly parts: Parts; readonly cm: number } {
  const main = workbookPart(parts);
  const known = relationsOf(parts, main).find((r) => r.type.endsWith("/sheetMetadata") && parts[r.target]);
  if (known !== undefined) {
    const [xml, cm] = completed(partText(parts, known.target), known.target);
    return { parts: { ...parts, [known.target]: new TextEncoder().encode(xml) }, cm };
  }
  const directory = main.slice(0, main.lastIndexOf("/") + 1);
  const path = free((name) => parts[name] !== undefined, `${directory}metadata`, ".xml");
  const ids = new Set(relationsOf(parts, main).map(({ id }) => id));
  const id = free((name) => ids.has(name), "rIdMetadata", "");
  const [xml, cm] = completed(empty, path);
  const relations = relationsPart(main);
  const target = path.slice(directory.length);
  return {
    cm,
    parts: {
      ...parts,
      [path]: new TextEncoder().encode(xml),
      [relations]: inside(
        partText(parts, relations),
        relations,
        (p) => `<${p}Relationship Id="${id}" Type="${kind}" Target="${target}"/>`,
      ),
      "[Content_Types].xml": inside(
        partText(parts, "[Content_Types].xml"),
        "[Content_Types].xml",
        (p) => `<${p}Override PartName="/${path}" ContentType="${content}"/>`,
      ),
    },
  };
}
