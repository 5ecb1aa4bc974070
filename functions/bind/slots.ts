import type { Units } from "../../src/quantities";
import { words } from "../kinds/words";
import type { Entry, Param } from "./entry";

/** The arguments that bind itself reads. */
type Role = "settings" | "saw" | "show" | "units" | "arguments";

/** One place of a function's arguments. */
export type Slot =
  | { readonly role: "param"; readonly name: string; readonly param: Param<unknown> }
  | { readonly role: Role; readonly name: string; readonly required: boolean; readonly help: string };

const made = new WeakMap<Entry, readonly Slot[]>();

/** The place of every argument in the worksheet's order: required ones first, then what bind reads, optional ones between. */
export function slots(e: Entry): readonly Slot[] {
  let places = made.get(e);
  if (places === undefined) made.set(e, (places = slotsOf(e)));
  return places;
}

function slotsOf(e: Entry): readonly Slot[] {
  const all = Object.entries(e.params).map(([name, param]) => ({ role: "param" as const, name, param }));
  const { show, settings, saw, units } = e.takes;
  const help: Readonly<Record<Role, string>> = {
    settings: "the shop block: labels in its first column, first row Units",
    saw: "which column of the shop block",
    show: "results by name, all, or card",
    arguments: "its arguments, in their order, as many as it takes",
    units: `"inch" or "metric"; default ${settings === undefined ? "inch" : "the shop block's, else inch"}`,
  };
  const bound = (role: Role, required: boolean): Slot => ({ role, name: role, required, help: help[role] });
  return [
    ...all.filter((s) => s.param.missing === "refuse"),
    ...(show === "required" ? [bound("show", true)] : []),
    ...(settings === "required" ? [bound("settings", true)] : []),
    ...all.filter((s) => s.param.missing !== "refuse"),
    ...(settings === "optional" ? [bound("settings", false)] : []),
    ...(saw !== undefined ? [bound("saw", false)] : []),
    ...(show === "optional" ? [bound("show", false)] : []),
    ...(units === true ? [bound("units", false)] : []),
    ...(e.takes.arguments === true ? [bound("arguments", false)] : []),
  ];
}

export const isRequired = (slot: Slot): boolean =>
  slot.role === "param" ? slot.param.missing === "refuse" : slot.required;

/** What holds when an argument is left out, in words; made from what the entry says, so that it cannot be wrong. */
function defaultWords({ missing, block }: Param<unknown>): string {
  const is = missing === "refuse" ? undefined : missing.is;
  const own = typeof is === "number" || typeof is === "string" ? String(is) : "";
  if (block === undefined) return own === "" ? "" : `; default ${own}`;
  return own === "" ? "; default the shop block's" : `; default the shop block's, else ${own}`;
}

/** The last argument may be given any number of times. */
export const repeats = (slot: Slot): boolean => slot.role === "arguments";

/** What the worksheet says of an argument: its meaning, and what holds without it. */
export const slotHelp = (slot: Slot): string =>
  slot.role === "param" ? slot.param.help + defaultWords(slot.param) : slot.help;

/** What a cell may hold there, for the docs. */
export const slotSays = (slot: Slot, units: Units): string => {
  if (slot.role === "param") return slot.param.kind.says(units);
  if (slot.role === "arguments") return "what that function takes there";
  return slot.role === "units" ? '"inch" or "metric"' : slot.role === "settings" ? "a range" : "text";
};

/** The name of an argument; "[...]" marks what may be left out. */
export const slotName = (slot: Slot): string => words(slot.name);
