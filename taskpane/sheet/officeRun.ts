import { refusals } from "./refusals";

const reasons: ReadonlyMap<string, (sheet: string) => string> = new Map([
  ["AccessDenied", refusals.protected],
  ["ItemNotFound", refusals.gone],
  ["InvalidOperationInCellEditMode", () => refusals.editing],
  ["InvalidSelection", () => refusals.noCell],
  ["ItemAlreadyExists", () => refusals.clash],
]);

/** Excel's error as a sentence. */
export const why = (problem: unknown, sheet: string): string => {
  const code = (problem as { readonly code?: string }).code ?? "unknown error";
  return reasons.get(code)?.(sheet) ?? refusals.unknown(code);
};

/** Runs it; what goes wrong becomes a plain sentence. */
export const plainly = async <T>(sheet: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> => {
  try {
    return await Excel.run(batch);
  } catch (problem) {
    throw new Error(why(problem, sheet));
  }
};
