import type { Text } from "../../src/phrase";
import { printText } from "../../functions/kinds/sentence";

/** A text result as the cell shows it in inches. */
export const said = (text: Text): string => printText(text, "inch");
