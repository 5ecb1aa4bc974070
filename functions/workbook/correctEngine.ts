import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { correctComparisons } from "./comparisons";
import { correctFunctions } from "./nativeFunctions";
import { correctEmptyTexts } from "./emptyTexts";
import { correctLookups } from "./lookups";
import { correctQuotedTexts } from "./quotedTexts";
import { correctWrittenNumbers } from "./writtenNumbers";

/**
 * What is corrected in the engine is private to it: on any other version than the one that was read and measured, nothing
 * is changed, and a test says so.
 */
export const correctedVersion = "0.25.1";

let corrected: boolean | undefined;

/** Corrects the engine's faults once; true when it did. Called by whoever starts the engine. */
export function correctEngine(): boolean {
  if (corrected === undefined) {
    corrected = UniverFormulaEnginePlugin.version === correctedVersion;
    if (corrected) {
      correctComparisons();
      correctEmptyTexts();
      correctFunctions();
      correctLookups();
      correctQuotedTexts();
      correctWrittenNumbers();
    }
  }
  return corrected;
}
