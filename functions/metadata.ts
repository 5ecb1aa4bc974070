import type { Units } from "../src/quantities";
import { isRequired, slots, type Entry, type Slot } from "./entry";
import { words } from "./words";

export const unitsEnum = "UNITS";

const bound: Readonly<Record<"settings" | "saw" | "show" | "units", string>> = {
  settings: "the shop block: labels in its first column, first row Units",
  saw: "which column of the shop block",
  show: "results by name, all, or card",
  units: '"inch" or "metric"; default the shop block\'s, else inch',
};

/** What the worksheet says of an argument: meaning, then unit, range and default where they are not in it. */
export const slotHelp = (slot: Slot): string => (slot.role === "param" ? slot.param.help : bound[slot.role]);

/** What a cell may hold there, for the docs. */
export const slotSays = (slot: Slot, units: Units): string => {
  if (slot.role === "param") return slot.param.kind.says(units);
  return slot.role === "units" ? '"inch" or "metric"' : slot.role === "settings" ? "a range" : "text";
};

/** The name of an argument; "[...]" marks what may be left out. */
export const slotName = (slot: Slot): string => words(slot.name);

const parameter = (slot: Slot) => {
  const shared = { name: slotName(slot), description: slotHelp(slot), ...(isRequired(slot) ? {} : { optional: true }) };
  if (slot.role === "units") return { ...shared, type: "string", dimensionality: "scalar", customEnumId: unitsEnum };
  return { ...shared, type: "any", dimensionality: "matrix" };
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
