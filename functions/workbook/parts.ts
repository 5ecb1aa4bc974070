import { BookFault } from "./fault";
import { elements, readXml } from "./xml";

/** The parts of a workbook's zip by their path. */
export type Parts = Readonly<Record<string, Uint8Array>>;

/** One relationship of a part: what it is to it, and where. */
export interface Relation {
  readonly id: string;
  readonly type: string;
  /** Path in the zip; for an external one, its address. */
  readonly target: string;
  readonly external: boolean;
}

const decoder = new TextDecoder();

export const partText = (parts: Parts, path: string): string =>
  parts[path] === undefined ? "" : decoder.decode(parts[path]);

const directoryOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

/** The part that keeps the relationships of a part; of the whole zip for "". */
export const relationsPart = (path: string): string =>
  `${directoryOf(path)}_rels/${path.slice(directoryOf(path).length)}.rels`;

const resolve = (base: string, target: string): string => {
  const way = target.startsWith("/") ? target.slice(1) : directoryOf(base) + target;
  const steps: string[] = [];
  for (const step of way.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
};

/** A target is an address, in which a letter may be written as %C3%A4; what is no such writing is taken as it stands. */
const decoded = (target: string): string => {
  try {
    return decodeURI(target);
  } catch {
    return target;
  }
};

export function relationsOf(parts: Parts, path: string): readonly Relation[] {
  const own = relationsPart(path);
  if (parts[own] === undefined) return [];
  return elements(readXml(partText(parts, own), own), "Relationship").map(({ attributes }) => {
    const { Id = "", Type = "", Target = "", TargetMode } = attributes;
    const external = TargetMode === "External";
    return { id: Id, type: Type, target: external ? Target : resolve(path, decoded(Target)), external };
  });
}

/** The path of the workbook's own part. */
export function workbookPart(parts: Parts): string {
  const main = relationsOf(parts, "").find((r) => r.type.endsWith("/officeDocument"))?.target;
  if (main === undefined || parts[main] === undefined) throw new BookFault("is damaged: it names no workbook inside");
  return main;
}
