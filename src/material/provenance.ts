import { materialSources } from "../data/materialSources";
import type { Material } from "./material";

/** Where one value of a material comes from, and how sure it is. */
export interface Origin {
  readonly label: string;
  readonly source: string;
  readonly mark: string;
}

const markWords: ReadonlyMap<string, string> = new Map([
  ["s", "seen in its source"],
  ["m", "from memory"],
  ["e", "estimated"],
  ["+", "the shop's own"],
]);

/**
 * What is known of where each value of a material comes from: its source, and the mark of its row where there is one.
 * @param material row of the material table, or of the shop block [-]
 * @returns value, source and how sure it is, only for values with a source [text]
 * @source the material's own row
 */
export function provenance({ sources, marks, force }: Material): readonly Origin[] {
  const rows = [
    ["designations", sources[0], ""],
    ["density", sources[1], ""],
    ["hardness", sources[2], marks[0]],
    ["tensile strength", sources[2], marks[1]],
    ["machinability", sources[3], ""],
    ["force constants", force?.source, marks[2]],
  ] as const;
  return rows.flatMap(([label, key = "-", mark = ""]) => {
    const source = materialSources.get(key);
    return source === undefined
      ? []
      : [{ label, source, mark: markWords.get(mark === "" ? key : mark) ?? "seen in its source" }];
  });
}
