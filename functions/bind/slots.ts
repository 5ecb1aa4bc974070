import type { Units } from "../../src/quantities";
import { words } from "../kinds/words";
import type { Entry, Param } from "./entry";

/** The place of every argument in the worksheet's order: required ones first, then what bind reads, optional ones between. */
export type Slot =
  | { readonly role: "param"; readonly name: string; readonly param: Param<unknown> }
  | { readonly role: "settings" | "saw" | "show" | "units"; readonly name: string; readonly required: boolean };

export function slots(e: Entry): readonly Slot[] {
  const all = Object.entries(e.params).map(([name, param]) => ({ role: "param" as const, name, param }));
  const bound = (role: "settings" | "saw" | "show" | "units", required: boolean): Slot => ({
    role,
    name: role,
    required,
  });
  const { show, settings, saw, units } = e.takes;
  return [
    ...all.filter((s) => s.param.missing === "refuse"),
    ...(show === "required" ? [bound("show", true)] : []),
    ...(settings === "required" ? [bound("settings", true)] : []),
    ...all.filter((s) => s.param.missing !== "refuse"),
    ...(settings === "optional" ? [bound("settings", false)] : []),
    ...(saw === true ? [bound("saw", false)] : []),
    ...(show === "optional" ? [bound("show", false)] : []),
    ...(units === true ? [bound("units", false)] : []),
  ];
}

export const isRequired = (slot: Slot): boolean =>
  slot.role === "param" ? slot.param.missing === "refuse" : slot.required;

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
