import type { Entry } from "../bind/entry";
import { isRequired, repeats, slotHelp, slotName, slots, type Slot } from "../bind/slots";

export const unitsEnum = "UNITS";

const parameter = (slot: Slot) => {
  const shared = { name: slotName(slot), description: slotHelp(slot), ...(isRequired(slot) ? {} : { optional: true }) };
  if (slot.role === "units") return { ...shared, type: "string", dimensionality: "scalar", customEnumId: unitsEnum };
  return { ...shared, type: "any", dimensionality: "matrix", ...(repeats(slot) ? { repeating: true } : {}) };
};

/** functions.json: what Excel reads of the catalogue. `origin` is where help.html is served. */
export const metadata = (catalogue: readonly Entry[], origin: string) => ({
  allowErrorForDataTypeAny: true,
  allowCustomDataForDataTypeAny: false,
  functions: catalogue.map((e) => ({
    id: e.name,
    name: e.name,
    description: e.help,
    helpUrl: `${origin}/help.html#${e.name}`,
    parameters: slots(e).map(parameter),
    result: { type: "any", dimensionality: "matrix" },
  })),
  enums: [
    {
      id: unitsEnum,
      type: "string",
      values: [
        { name: "inch", stringValue: "inch", tooltip: "in, in², in²/min, ft/min, lb" },
        { name: "metric", stringValue: "metric", tooltip: "mm, cm², cm²/min, m/min, kg" },
      ],
    },
  ],
});
