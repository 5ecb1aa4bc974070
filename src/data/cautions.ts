/** Cautions that travel with every cutting result and with the materials: reminders, not a safety data sheet. */
// prettier-ignore
export const generalCautions: readonly string[] = [
  "Guards shut, blade guides close to the work.",
  "Isolate and lock out the saw before changing a band or clearing a jam.",
  "Gloves for handling bands, off when the saw runs.",
  "Eye and hearing protection; chips are sharp and hot, never by hand or compressed air.",
  "Follow the safety data sheet, the machine's manual, local codes and a qualified person: they come before anything printed here.",
];

/** Hazards of a material, by the key that stands in its row. */
// prettier-ignore
export const hazardTexts: ReadonlyMap<string, string> = new Map([
  ["beryllium", "Contains beryllium: dust and mist are toxic (29 CFR 1910.1024). Cut wet, no dry grinding, no compressed air, bag the chips."],
  ["magnesium", "Chips burn fiercely: dry or mineral oil, sharp blade, no rubbing feed, no heap of chips, class D extinguisher, never water on burning chips; water-based coolant gives off hydrogen."],
  ["reactive", "Fine chips can ignite by themselves: take them out at once, class D extinguisher."],
  ["ignites", "Fine chips and dust can ignite: clean them out, class D extinguisher."],
  ["lead", "Contains lead: no dry dust, wash hands before eating, keep the chips apart."],
  ["cobalt", "Contains cobalt: the dust is a respiratory sensitiser."],
  ["nickel", "Nickel dust is a sensitiser."],
  ["graphite", "Graphite dust; usually cut dry or with light mist."],
  ["case", "The hard case strips teeth: begin with a reduced feed; chromium plating dust."],
  ["hardens", "Work-hardens: never let the feed fall to rubbing."],
  ["gummy", "Gummy chips: keep the gullets clear."],
  ["abrasive", "Abrasive and tough."],
  ["tough", "Hard and tough: carbide teeth, low speed."],
  ["limit", "At the limit of band sawing; usually cut by abrasive or heat."],
  ["brittle", "Brittle when cold: no impact at entry."],
  ["heavy", "Heavy pieces: support the off-cut."],
]);
