import { rewritten } from "../../functions/formula/tokens";

const kept = /^_xldudf_SAW[._](\w+)$/i;

/**
 * A formula as a person types it. Where the add-in was missing, Excel writes `_xldudf_SAW_AREA(A1)`, some versions behind
 * the name of another workbook, `'add-in.xlam'!_xldudf_SAW_AREA(A1)` or `[2]!_xldudf_SAW_AREA(A1)`: it is `SAW.AREA(A1)`.
 */
export const typedFormula = (formula: string): string =>
  rewritten(formula, ({ kind, text }, i, all) => {
    if (kind === "sheet" && kept.test(all[i + 1]?.text ?? "")) return "";
    return kind === "function" ? text.replace(kept, (_, name: string) => `SAW.${name.toUpperCase()}`) : text;
  });
