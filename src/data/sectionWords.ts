/**
 * Words of size strings. Source: common practice of order lists, and the designations of the standards in sectionSources.ts.
 * Every table is a Map: an object would also know words such as "constructor".
 */
export type Family =
  | "round"
  | "square"
  | "hexagon"
  | "octagon"
  | "flat"
  | "tube"
  | "box"
  | "hss"
  | "angle"
  | "tee"
  | "pipe"
  | "bar"
  | "area"
  | "rolled"
  | "vague";

const words = (entries: readonly (readonly [string, string])[]): ReadonlyMap<string, string> =>
  new Map(entries.flatMap(([meaning, list]) => list.split(" ").map((word) => [word, meaning] as const)));

/** Word -> family. "vague" words name several families and need another word or are refused. */
// prettier-ignore
export const shapeWords: ReadonlyMap<string, string> = words([
  ["round", "round rounds rd rnd rb rod rods dia diam diameter shaft shafting roundbar"],
  ["square", "square squares sq sqr squarebar"],
  ["hexagon", "hex hx hexagon hexagonal hexbar"],
  ["octagon", "octagon octagonal oct"],
  ["flat", "flat flats fl fb flatbar plate plt pl strip rect rec rectangle rectangular block flt"],
  ["tube", "tube tubes tubing tbg chs"],
  ["box", "box shs rhs"],
  ["hss", "hss"],
  ["angle", "angle angles ang l ea ua lnp"],
  ["tee", "tee t"],
  ["pipe", "pipe pipes nps dn"],
  ["bar", "bar bars"],
  ["area", "area"],
  ["rolled", "w wf s m hp c mc wt ipe ipea ipeaa ipeo ipev ipn inp he hea heb hem heaa hec ipb ipbl ipbv ub uc upn unp upe pfc"],
  ["rolled", "wb wc hw hm hn uap ismb islb iswb ishb ismc isa jish ksh gbh jisi ksi gbi gosti jisc ksc gbc gbu gostu gostp jisl ksl gbl gostl"],
  ["vague", "beam beams channel channels chan chnl i h u"],
]);

/** Word of a rolled shape -> name of its table. */
// prettier-ignore
export const rolledNames: ReadonlyMap<string, string> = words([
  ...["w", "s", "m", "hp", "c", "mc", "wt", "ipe", "ipn", "he", "hea", "heb", "hem", "heaa", "hec", "ub", "uc", "upn", "upe", "pfc"].map((w) => [w.toUpperCase(), w] as const),
  ["W", "wf"], ["IPE A", "ipea"], ["IPE AA", "ipeaa"], ["IPE O", "ipeo"], ["IPE V", "ipev"],
  ["IPN", "inp"], ["HEB", "ipb"], ["HEA", "ipbl"], ["HEM", "ipbv"], ["UPN", "unp"],
]);

/**
 * Words that say how the bar was made, finished or sold and nothing of its size: read over. This list is the whole of it.
 */
export const ignoredWords: ReadonlySet<string> = new Set(
  (
    "hr hrs cr crs cd cf hf hot cold rolled drawn finished formed fin turned ground polished peeled tgp tg&p precision annealed ann normalized " +
    "normalised stress relieved sr tempered quenched q&t ht pickled oiled p&o hrpo hrp&o hrp black galv galvanized galvanised primed bright mill finish descaled " +
    "seamless smls welded erw dom cds cdw hfs cw mechanical mech structural struct ornamental stock section sections shape shapes profile parallel equal unequal " +
    "leg legs solid extruded forged prime new domestic import random cut saw sawn to size of nominal nom af across plain end ends pe be beveled"
  ).split(" "),
);

/** Words that name a material: they have their own cell. */
export const materialWords: ReadonlySet<string> = new Set(
  "steel stainless ss sst aluminum aluminium alum al brass bronze copper titanium ti nickel carbon alloy tool ms mild astm aisi sae din grade gr".split(
    " ",
  ),
);

/** Unit words after a number -> unit. Feet, metres and gauges are known in order to be refused by name. */
// prettier-ignore
export const unitWords: ReadonlyMap<string, string> = words([
  ["in", 'in inch inches "'],
  ["mm", "mm millimeter millimeters millimetre millimetres"],
  ["cm", "cm centimeter centimeters centimetre centimetres"],
  ["ft", "ft feet foot"],
  ["'", "'"],
  ["m", "m meter meters metre metres mtr mtrs"],
  ["ga", "ga gauge gage swg bwg"],
  ["lb", "lb lbs # plf kg"],
]);

/** Words that say which dimension a number is. */
// prettier-ignore
export const tagWords: ReadonlyMap<string, string> = words([
  ["od", "od outside"],
  ["id", "id inside bore"],
  ["wall", "wall walls wt w wth thk thick thickness"],
]);

/**
 * Phrases of several words, the longer first -> what they become: how the bar lies ("lie"), one word ("word"), or nothing ("word", ""). A
 * flat with round edges has another area: its phrase becomes a word that is not known.
 * "flat" alone is decided by the other words.
 */
// prettier-ignore
export const phrases: readonly (readonly [phrase: string, kind: "lie" | "word", becomes: string])[] = [
  ["on the flat", "lie", "flat"], ["on flat", "lie", "flat"], ["lying flat", "lie", "flat"], ["mill edge", "word", ""], ["sheared edge", "word", ""], ["round edge", "word", "round edge"],
  ["on edge", "lie", "edge"], ["edge", "lie", "edge"], ["standing", "lie", "upright"], ["upright", "lie", "upright"], ["web upright", "lie", "web up"],
  ["web vertical", "lie", "web up"], ["web up", "lie", "web up"], ["web flat", "lie", "web flat"], ["flanges up", "lie", "flanges up"],
  ["flange up", "lie", "flange up"], ["flange down", "lie", "flange down"], ["toes up", "lie", "toes up"], ["toes down", "lie", "toes down"],
  ["heel up", "lie", "heel up"], ["heel down", "lie", "heel down"], ["leg flat", "lie", "leg flat"], ["leg down", "lie", "leg flat"],
  ["point up", "lie", "diamond"], ["on corner", "lie", "diamond"], ["on point", "lie", "diamond"], ["diamond", "lie", "diamond"],
  ["angle iron", "word", "angle"], ["angle bar", "word", "angle"], ["channel iron", "word", "channel"], ["hollow section", "word", ""], ["hollow sections", "word", ""],
  ["wide flange beam", "word", "wf"], ["wide flange", "word", "wf"], ["i beam", "word", "beam"], ["h beam", "word", "beam"],
  ["u channel", "word", "channel"], ["c channel", "word", "c"], ["mc channel", "word", "mc"], ["w beam", "word", "w"], ["s beam", "word", "s"],
  ["double extra strong", "word", "xxs"], ["double extra heavy", "word", "xxs"], ["extra strong", "word", "xs"], ["extra heavy", "word", "xs"],
  ["xx strong", "word", "xxs"], ["xx heavy", "word", "xxs"], ["x strong", "word", "xs"], ["x heavy", "word", "xs"], ["std wt", "word", "std"], ["std weight", "word", "std"],
  ["std wall", "word", "std"], ["across flats", "word", ""],
];

/** Pipe schedule words -> name in pipeSchedules.ts. */
// prettier-ignore
export const scheduleWords: ReadonlyMap<string, string> = words([
  ["std", "std standard"],
  ["xs", "xs xh xhvy xstrong"],
  ["xxs", "xxs xxh xxhvy xxstrong"],
]);
