import { stripPrefix, type Scope } from "./stripPrefix";
import { compactDesignation } from "./compactDesignation";

/** "any" says nothing of the family, so it is never one. */
export type Family = Exclude<Scope, "any"> | "stainless" | "steel" | "iron" | "titanium" | "tool steel" | "magnesium";

/** One way to read a designation: what is looked up, in which materials, in which condition. */
export interface Reading {
  readonly form: string;
  readonly families: readonly Family[];
  /** Condition word as answersTo has it; empty where none is stated. */
  readonly condition: string;
}

/** SS before four digits is a number of the Swedish standard: SS 2304 is no duplex 2304. */
const familyWords: readonly (readonly [string, Family])[] = [
  ["(?:STAINLESS(?:[\\s-]+STEEL)?|S\\.?S\\.?(?![\\s-]?\\d{4}(?!\\d))|SST|CRES|FASTENER)", "stainless"],
  ["(?:TOOL[\\s-]+STEEL|MOU?LD(?:[\\s-]+STEEL)?)", "tool steel"],
  ["(?:(?:CARBON|ALLOY|MILD|STRUCTURAL)[\\s-]+)?STEEL", "steel"],
  ["(?:ALUMINI?UM|ALUM|ALU|AL)", "aluminium"],
  ["(?:(?:BEARING|FREE[\\s-]CUTTING|ALUMINI?UM)[\\s-]+)?(?:BRASS|BRONZE|COPPER)", "copper"],
  ["(?:TITANIUM|TI)", "titanium"],
  ["(?:(?:GR[EA]Y|DUCTILE|CAST)[\\s-]+)*IRON", "iron"],
  ["MAGNESIUM", "magnesium"],
];
const familyPatterns = familyWords.map(([word, family]) => ({
  family,
  last: new RegExp(`^(.*\\S)[\\s-]+${word}$`),
  first: new RegExp(`^${word}(?:[\\s-]+|(?=\\d))(\\S.*)$`),
}));

/** A single letter is a condition only after a plus (EN 10083) or the word: 420 C and 304 N are other steels than 420 and 304. */
const conditionPatterns: readonly (readonly [RegExp, string])[] = [
  [/[\s,(+-]+(?:SOLUTION[\s-]+)?(?:ANNEALED|ANN)\)?$/, "A"],
  [
    /(?:[\s,(+-]+|(?<=\d))(?:Q\s?[&+]?\s?T|HT|PH|PRE-?HARD(?:ENED)?|HEAT[\s-]TREATED|QUENCHED (?:AND|&) TEMPERED)\)?$/,
    "QT",
  ],
  [/(?:[\s,(+-]+(?:NORMALI[SZ]ED|NORM)|\s*\+\s*N)\)?$/, "N"],
  [/[\s,(+-]+(?:HRS?|HF|AR|(?:AS|HOT)[\s-]+ROLLED|HOT[\s-]+FINISHED)\)?$/, "HR"],
  [/(?:[\s,(+-]+(?:C[DFR]S?|COLD[\s-]+(?:DRAWN|FINISHED|ROLLED))|\s*\+\s*C)\)?$/, "CD"],
  [/[\s,(+-]+(?:AGED|AGE[\s-]+HARDENED|PRECIPITATION[\s-]+HARDENED)\)?$/, "AGED"],
  [/(?:[\s,(+-]+COND(?:ITION)?\.?[\s-]+A|\s*\+\s*AT?)\)?$/, "A"],
];
/** Tempers and ageing temperatures are conditions by their own name. */
const temper = /(?:[\s,(+-]+(?:COND(?:ITION)?\.?[\s-]+)?|(?<=\d|PH))([THP]\d{1,4})\)?$|[\s,(+-]+(TF00|F|O)\)?$/;
const productStandard =
  /^(?:ASTM\s+|ASME\s+)?S?(?:A(?:29|108|182|213|240|249|269|276|311|312|322|331|358|403|434|479|484|511|513|519|554|564|582|600|681)|B(?:16|21|138|139|150|151|152|187|196|209|210|211|221|241|247|265|308|348|381|408|446|505|564|584|637))M?[\s,/-]+(?=\S\S)/;
const titaniumStandard = /^(?:ASTM\s+)?B(?:265|348|381)[\s,/-]/;
const productLetter = /^(?:TP|WP|F|MT)(?=[34]\d\d)/;

interface Part {
  readonly text: string;
  readonly families: readonly Family[];
  readonly condition: string;
}

function withoutFamily(part: Part): Part {
  for (const { family, last, first } of familyPatterns) {
    const found = last.exec(part.text) ?? first.exec(part.text);
    if (found !== null) return { ...part, text: found[1]!, families: [...part.families, family] };
  }
  return part;
}

function withoutCondition(part: Part): Part {
  const found = temper.exec(part.text);
  if (found !== null && found.index > 0)
    return { ...part, text: part.text.slice(0, found.index), condition: (found[1] ?? found[2])! };
  for (const [pattern, condition] of conditionPatterns) {
    if (pattern.test(part.text)) return { ...part, text: part.text.replace(pattern, ""), condition };
  }
  return part;
}

function withoutPrefix(part: Part): Part {
  const { rest, scope } = stripPrefix(part.text);
  if (rest === part.text) return part;
  return { ...part, text: rest, families: scope === "any" ? part.families : [...part.families, scope] };
}

function withoutProduct(part: Part): Part {
  const text = part.text.replace(productStandard, "").replace(productLetter, "");
  if (text === part.text) return part;
  return { ...part, text, families: titaniumStandard.test(part.text) ? [...part.families, "titanium"] : part.families };
}

/** Families that are written as bare numbers in the trade: 360 brass, 6061 aluminium, grade 2 titanium. */
function spelled({ text, families }: Part): string {
  if (families.includes("copper") && /^\d{3}(?:\d\d)?$/.test(text)) return `C${text}`;
  if (families.includes("titanium") && /^(?:CP[\s-]+)?GR/.test(text)) return `TI ${text.replace(/^CP[\s-]+/, "")}`;
  return text;
}

/** A body may stand before the product standard and before the grade: ASTM A276 type 316. */
const steps: readonly ((part: Part) => Part)[] = [
  withoutPrefix,
  withoutProduct,
  withoutPrefix,
  withoutFamily,
  withoutCondition,
];

/**
 * The ways to read a designation, the most literal first: as it stands, then without leading words, product standard,
 * family word and condition, alone and together.
 * @param text designation as typed [text]
 * @returns readings in the order in which they are tried, none twice [-]
 * @source common practice, no source
 */
export function readDesignation(text: string): readonly Reading[] {
  const plain = text.normalize("NFKC").toUpperCase().trim().replace(/\s+/g, " ");
  let parts: readonly Part[] = [{ text: plain, families: [], condition: "" }];
  for (const step of steps) {
    const before = parts;
    parts = [...before, ...before.map(step).filter((part, i) => part !== before[i])];
  }
  const readings = new Map<string, Reading>();
  for (const part of parts) {
    const form = compactDesignation(spelled(part));
    const id = [form, part.condition, ...part.families].join(" ");
    if (form !== "" && !readings.has(id))
      readings.set(id, { form, families: part.families, condition: part.condition });
  }
  return [...readings.values()];
}
