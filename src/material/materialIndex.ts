import { once } from "../once";
import { builtInMaterials } from "./builtInMaterials";
import { compactDesignation } from "./compactDesignation";
import type { Designation, Material } from "./material";
import { stripPrefix } from "./stripPrefix";

export interface IndexEntry {
  readonly material: Material;
  readonly designation: Designation;
}

/** The words of the standards body may be left out, but a bare number out of a name (Alloy 400) is too easily a size. */
function bareForm({ kind, text }: Designation): string {
  // EN36 and the like, by the dozen: no word of a body is left out of them.
  if (/^EN\d/.test(text)) return "";
  const { rest } = stripPrefix(text);
  if (rest === text) return "";
  const form = compactDesignation(rest);
  // A bare 201 is rather a number of pieces: the grades of that name begin at 301.
  const tooBare = /^.?$|^[12]\d\d$/.test(form) || (/^\d+$/.test(form) && (kind === "name" || /^alloy/i.test(text)));
  return tooBare || /^GR(?:ADE)?\d/.test(form) ? "" : form;
}

function formsOf(designation: Designation): readonly string[] {
  const { kind, text } = designation;
  if (kind === "W.-Nr.") return [text, text.slice(0, 1) + text.slice(2)];
  if (kind === "UNS") return text.startsWith("C") && text.endsWith("00") ? [text, text.slice(0, 4)] : [text];
  const form = compactDesignation(text);
  const bare = kind === "JIS" || kind === "trade name" ? "" : bareForm(designation);
  return bare === "" ? [form] : [form, bare];
}

function add(index: Map<string, IndexEntry[]>, material: Material, designation: Designation): void {
  for (const form of formsOf(designation)) {
    const entries = index.get(form);
    if (entries === undefined) index.set(form, [{ material, designation }]);
    else if (!entries.some((entry) => entry.material === material && (designation.near || !entry.designation.near)))
      entries.push({ material, designation });
  }
}

function build(): Map<string, IndexEntry[]> {
  const index = new Map<string, IndexEntry[]>();
  for (const material of builtInMaterials()) {
    const { key, grade, name } = material;
    for (const designation of material.designations) add(index, material, designation);
    for (const designation of material.tradeNames) add(index, material, designation);
    for (const text of key === grade ? [key, name] : [key, grade, name])
      add(index, material, { kind: "name", text, near: false });
  }
  return index;
}

/** Compact form of every designation of the built-in materials, and whose it is. Built when first asked for, never changed after. */
export const materialIndex: () => ReadonlyMap<string, readonly IndexEntry[]> = once(build);

type Form = readonly [form: string, entries: readonly IndexEntry[]];

function byFirstLetter(): ReadonlyMap<string, readonly Form[]> {
  const forms = new Map<string, Form[]>();
  for (const form of materialIndex()) {
    const first = form[0].charAt(0);
    const others = forms.get(first);
    if (others === undefined) forms.set(first, [form]);
    else others.push(form);
  }
  return forms;
}

/** The same by their first character, for what looks for beginnings. */
export const formsByFirst: () => ReadonlyMap<string, readonly Form[]> = once(byFirstLetter);
