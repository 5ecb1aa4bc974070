/**
 * Words of order lines beside those of the sizes. Source: common practice of English and German order lists, from memory.
 * Every table is a Map or a Set: an object would also know words such as "constructor".
 */
const translations = (entries: readonly (readonly [english: string, words: string])[]): ReadonlyMap<string, string> =>
  new Map(entries.flatMap(([english, words]) => words.split(" ").map((word) => [word, english] as const)));

const set = (words: string): ReadonlySet<string> => new Set(words.split(" "));

/** German word, and words of order lists that sizes do not have -> the English words that the readers know. */
// prettier-ignore
export const plainWords: ReadonlyMap<string, string> = translations([
  ["round", "rund rundstahl rundstab rundmaterial rundeisen rundstange"],
  ["square", "vierkant vierkantstahl vierkantstab quadrat quadratstahl 4kt 4-kant"],
  ["flat", "flach flachstahl flacheisen flachstab breitflachstahl"],
  ["hex", "sechskant sechskantstahl sechskantstab 6kt 6-kant"],
  ["octagon", "achtkant achtkantstahl 8kt"],
  ["tube", "rohr rohre stahlrohr"],
  ["round tube", "rundrohr rundrohre"],
  ["square tube", "vierkantrohr vierkantrohre quadratrohr quadratrohre sqt"],
  ["rect tube", "rechteckrohr rechteckrohre rechteckhohlprofil"],
  ["box", "hohlprofil formrohr profilrohr"],
  ["angle", "winkel winkelstahl winkeleisen winkelprofil l-stahl l-profil"],
  ["beam", "träger traeger doppel-t-träger stahlträger i-träger h-träger i-traeger h-traeger i-beam h-beam"],
  ["u", "u-stahl u-profil u-eisen u-träger"],
  ["tee", "t-stahl t-profil"],
  ["plate", "blech platte"],
  ["bar", "stab stabstahl stange blankstahl"],
  ["shaft", "welle"],
  ["dia", "d durchmesser durchm"],
  ["wall", "wand wandstärke wanddicke wd ws"],
  ["id", "innen innendurchmesser"],
  ["od", "aussen außen da"],
  ["af", "sw schlüsselweite schluesselweite"],
  ["drawn", "gezogen blankgezogen blank"],
  ["rolled", "gewalzt warmgewalzt kaltgewalzt"],
  ["seamless", "nahtlos nahtloses"],
  ["welded", "geschweißt geschweisst"],
  ["peeled", "geschält geschliffen"],
  ["galv", "verzinkt feuerverzinkt"],
  ["black", "schwarz roh"],
  ["qt", "vergütet verguetet qt q&t"],
  ["annealed", "geglüht gegluht weichgeglüht annealed ann"],
  ["normalized", "norm normalgeglüht normalisiert normalized normalised"],
  ["ht", "ht htsr prehard pre-hard prehardened pre-hardened"],
  ["stainless", "edelstahl rostfrei ss sst stainless"],
  ["steel", "stahl"],
  ["tool steel", "werkzeugstahl"],
  ["structural steel", "baustahl"],
  ["aluminium", "alu aluminum aluminium alum"],
  ["brass", "messing"],
  ["copper", "kupfer"],
  ["titanium", "titan"],
]);

/** "12 pcs": words behind a count. Of those in `unsureCounts` an x before the number leaves open whether it is a length. */
export const countWords: ReadonlySet<string> = set(
  "pcs pc pce pces piece pieces off stk stck st stück stücke stueck ea each nos no lengths bars sticks joints stäbe stangen",
);
export const unsureCounts: ReadonlySet<string> = set("ea each off no nos st");
/** "qty 5", "Anzahl: 5": words before a count; the others of countWords only with a colon or an equals sign. */
export const countLabels: ReadonlySet<string> = set("qty quantity menge anzahl stückzahl stueckzahl");

/** Words before and behind a length. */
export const lengthLabels: ReadonlySet<string> = set(
  "lg lgth length len long cut to auf cutlength länge laenge fixlänge fixlaenge zuschnitt oal @ à je saw",
);
export const lengthTails: ReadonlySet<string> = set("lg lgth long lang length lengths oal lgs");
/** Random lengths: the number beside is nominal, and in feet by the trade where it is bare. */
export const randomWords: ReadonlySet<string> = set("r/l rl random drl srl mill-length herstellungslänge hl");
/** Units of which a number can only be a length. */
export const longUnits: ReadonlySet<string> = set("' ft feet foot m meter meters metre metres mtr mtrs");

/** A number behind one of these names an order, a place on a drawing or a standard, and nothing of the bar. */
export const referenceLabels: ReadonlySet<string> = set(
  "po p.o. so pos position item line heat charge lot rev dwg drawing zeichnung zng job wo order auftrag bestellung kommission ref mark mk tag no nr din en iso apz zeugnis cert certificate",
);
/** A number before one of these is no dimension: weights, prices. */
export const referenceTails: ReadonlySet<string> = set("kg lb lbs usd eur euro € %");

/** Words that make another shape of the bar than the size reader can read without them. */
export const otherShapes: ReadonlySet<string> = set(
  "half hollow key keystock keysteel tapered taper bulb rail rails checker checkered checquer floor grating expanded perforated perf corrugated ring disc disk sphere ball fluted deformed rebar threaded allthread bored oval elliptical d-shape " +
    "halbrund halbrundstahl hohl ring ringe scheibe ronde keilstahl passfeder schiene riffelblech tränenblech lochblech gewindestange betonstahl gebohrt stepped cored kehlnut",
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
]);

/** Words before a grade that say nothing more than that one follows, and words of families that no grade is checked against. */
export const gradeMarks: ReadonlySet<string> = set(
  "cda astm asme aisi sae uns din en jis type typ grade gr alloy w.nr. w.-nr. wnr werkstoff mat material güte guete qualität cond condition cp carbon mild tool ms t al ti",
);

/** Words of no meaning for any field. */
export const fillWords: ReadonlySet<string> = set("w/ w/o und and mit with the a in von aus");
