/**
 * Words of order lines beside those of the sizes. Source: common practice of English and German order lists, from memory.
 * Every table is a Map or a Set: an object would also know words such as "constructor".
 */
const translations = (entries: readonly (readonly [english: string, words: string])[]): ReadonlyMap<string, string> =>
  new Map(entries.flatMap(([english, words]) => words.split(" ").map((word) => [word, english] as const)));

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** Short words of order lists -> the words that the readers know. */
// prettier-ignore
export const plainWords: ReadonlyMap<string, string> = translations([
  ["square", "4kt 4-kant"],
  ["hex", "6kt 6-kant"],
  ["octagon", "8kt"],
  ["square tube", "sqt"],
  ["dia", "d"],
  ["wall", "wd ws wa th"],
  ["od", "da"],
  ["af", "sw"],
  ["angle", "isa"],
  ["flat", "isf"],
  ["bar", "keystock keysteel"],
  ["seamless tube", "seamless smls"],
  ["qt", "vergütet verguetet qt q&t"],
  ["annealed", "geglüht gegluht weichgeglüht annealed ann"],
  ["normalized", "norm normalgeglüht normalisiert normalized normalised"],
  ["ht", "ht htsr prehard pre-hard prehardened pre-hardened"],
  ["stainless", "ss sst stainless"],
  ["aluminium", "aluminum aluminium alum"],
]);

/** "12 pcs": words behind a count. Of those in `unsureCounts` an x before the number leaves open whether it is a length. */
export const countWords: ReadonlySet<string> = set(
  "pcs pc pce pces piece pieces off st ea each nos no lengths bars sticks joints",
);
export const unsureCounts: ReadonlySet<string> = set("ea each off no nos st");
/** "qty 5", "Anzahl: 5": words before a count; the others of countWords only with a colon or an equals sign. */
export const countLabels: ReadonlySet<string> = set("qty quantity");

/** Words before and behind a length. */
export const lengthLabels: ReadonlySet<string> = set("lg lgth length len long cut to auf cutlength oal @ à je saw ctl");
export const lengthTails: ReadonlySet<string> = set("lg lgth long length lengths oal lgs");
/** Random lengths: the number beside is nominal, and in feet by the trade where it is bare. */
export const randomWords: ReadonlySet<string> = set("r/l rl random drl srl mill-length herstellungslänge hl");
/** Units of which a number can only be a length. */
export const longUnits: ReadonlySet<string> = set("' ft feet foot m meter meters metre metres mtr mtrs");

/** A number behind one of these names an order, a place on a drawing or a standard, and nothing of the bar. */
export const referenceLabels: ReadonlySet<string> = set(
  "po p.o. so pos position item line heat charge lot rev dwg drawing zeichnung zng job wo order auftrag bestellung kommission ref mark mk tag no nr din en iso bs jis ams uni gost rs inr apz zeugnis cert certificate",
);
/** A number before one of these is no dimension: weights, prices. */
export const referenceTails: ReadonlySet<string> = set(
  "kg kgs lb lbs usd eur euro € % cert certs certificate bdl bdls pkt coils tons",
);

/** Words that make another shape of the bar than the size reader can read without them. */
export const otherShapes: ReadonlySet<string> = set(
  "half hollow key tapered taper bulb rail rails checker checkered checquer floor grating expanded perforated perf corrugated ring disc disk sphere ball fluted deformed rebar threaded allthread bored oval elliptical d-shape " +
    "halbrund halbrundstahl hohl ring ringe scheibe ronde schiene riffelblech tränenblech lochblech gewindestange betonstahl gebohrt stepped cored kehlnut",
);

/** Words of a size beside shapes, tags, units, schedules and what is read over; see the readers of sizes. */
export const otherSizeWords: ReadonlySet<string> = set(
  "sch sched schedule bundle bundled stack stacked high rows row wide columns column nested rot rotate rotated miter mitre mitered mitred deg degs degree degrees by of at edge tee",
);

/** Condition words that decide the row of a grade. */
export const conditionWords: ReadonlySet<string> = set("qt annealed normalized ht ph aged tempered quenched");

/** Word of a family -> what the family of a grade must contain, one of these. */
// prettier-ignore
export const familyWords: ReadonlyMap<string, readonly string[]> = new Map([
  ["stainless", ["stainless", "heat-resistant"]],
  ["steel", ["steel", "heat-resistant"]],
  ["aluminium", ["aluminium"]],
  ["brass", ["copper"]],
  ["bronze", ["copper"]],
  ["copper", ["copper"]],
  ["titanium", ["titanium"]],
  ["iron", ["iron"]],
  ["nickel", ["nickel"]],
  ["fastener", ["stainless"]],
  ["mould", ["heat-treated alloy steel", "tool steel"]],
  ["mold", ["heat-treated alloy steel", "tool steel"]],
]);

/** Words before a grade that say nothing more than that one follows, and words of families that no grade is checked against. */
export const gradeMarks: ReadonlySet<string> = set(
  "cda astm asme aisi sae uns din en jis type typ grade gr alloy w.nr. w.-nr. wnr werkstoff mat material güte guete qualität cond condition cp carbon mild tool ms t al ti",
);

/** Words of no meaning for any field. */
export const fillWords: ReadonlySet<string> = set(
  "w/ w/o und and mit with the a in von aus ex de da di du des van y et e i en le la",
);

/** Words of series of which no table is here: Indian, Australian and other rolled sections. */
export const tableless: ReadonlySet<string> = set("isjb islc isjc isnt tfb tfc rsj npi npu cnp iwf");
