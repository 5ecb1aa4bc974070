import { readSymptom } from "../../src/cutting/readSymptom";
import type { Trouble } from "../../src/cutting/trouble";
import type { Kind } from "./kind";
import { readText, renamed } from "./text";

/** What goes wrong with a cut. */
export const symptom: Kind<Trouble> = {
  name: "symptom",
  width: 1,
  zeroIsValue: false,
  says: () => "text",
  read: (cells, at, _, parameter) => renamed(parameter, () => readSymptom(readText(cells[at], parameter))),
};
