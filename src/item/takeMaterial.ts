import { itemConstants as k } from "../data/itemConstants";
import { alloyWords } from "../data/alloyWords";
import { conditionWords, familyWords, gradeMarks } from "../data/itemWords";
import { shapeWords } from "../data/sectionWords";
import { InputError } from "../errors";
import { compactDesignation } from "../material/compactDesignation";
import { matchMaterial, type MaterialMatch } from "../material/matchMaterial";
import type { Material } from "../material/material";
import { attemptField } from "./attemptField";
import { gradeSpans, type GradeSpan } from "./gradeSpans";
import { isDimension } from "./isDimension";
import type { Line } from "./item";
import { itemRefusal } from "./itemRefusal";
import { textAt } from "./textAt";

/** What the line says of the material, and which codes of the line no reader knows. */
export interface LineMaterial {
  readonly grade: Material | InputError;
  /** What was assumed of it, in words. */
  readonly note: string;
  readonly unknown: readonly string[];
  /** Bare numbers that were taken as grades. */
  readonly numbers: readonly number[];
}

type Find = (designation: string) => Material | InputError;

/**
 * Takes the material out of a line: its designation, with condition and family wherever they stand.
 * @param line whose roles are filled in [-]
 * @param own materials of the shop block [-]
 * @returns the material, or the refusal naming the candidates [-]
 * @source common practice, no source
 */
export function takeMaterial(line: Line, own: readonly Material[]): LineMaterial {
  const asked = new Map<string, MaterialMatch | InputError>();
  const find: Find = (designation) => {
    const answer = asked.get(designation) ?? attemptField(() => matchMaterial(designation.replace("号", "#"), own));
    asked.set(designation, answer);
    return answer instanceof InputError ? answer : answer.material;
  };
  const alloys = takeAlloys(line, find);
  const found = gradeSpans(line, new Set(own.map(({ name }) => compactDesignation(name))));
  const coded = codesOf(line, found);
  const codes = coded.filter(({ text }) => !(find(text) instanceof InputError));
  const strong = [...alloys, ...found.filter((span) => span.strong), ...codes].sort((a, b) => a.from - b.from);
  const spans =
    strong.length > 0 ? strong.map((span) => ofTube(span, found, find)) : (familyNumber(line, find) ?? found);
  for (const { from, to } of spans) for (let i = from; i <= to; i++) if (!isShape(line, i)) line.roles[i] = "material";
  const left = coded.filter((code) => !spans.some(({ from }) => from === code.from));
  const suffixes = left.filter(({ text }) => belongs(text, spans, find));
  for (const { from } of suffixes) line.roles[from] = "material";
  const unknown = left.filter((code) => !suffixes.includes(code)).map(({ text }) => text);
  const numbers = spans
    .filter((span) => !alloys.includes(span))
    .flatMap(({ from, to }) => (from === to && line.atoms[from]!.kind === "number" ? [from] : []));
  const tail = [...suffixes.map(({ text }) => text).filter((text) => /^[thp]\d/.test(text)), ...conditions(line)];
  const grade = gradeOf(line, spans, tail, find);
  for (const { from, to } of found)
    for (let i = from; i <= to; i++) if (line.roles[i] === "" && !isShape(line, i)) line.roles[i] = "read";
  return {
    grade: unknown.length > 0 ? unknownCode(unknown[0]!, grade, find) : grade,
    note: noteOf(asked, grade),
    unknown,
    numbers,
  };
}

/** Codes of the line that are in none of the designations found. */
const codesOf = (line: Line, found: readonly GradeSpan[]): readonly GradeSpan[] =>
  line.atoms.flatMap(({ kind, text }, i) =>
    kind === "code" && line.roles[i] === "" && !found.some(({ from, to }) => from <= i && i <= to)
      ? [{ from: i, to: i, text: text.replace(/[()]/g, ""), strong: true }]
      : [],
  );

/** What the look-up of the grade assumed. */
function noteOf(asked: ReadonlyMap<string, MaterialMatch | InputError>, grade: Material | InputError): string {
  const notes = [...asked.values()].flatMap((answer) =>
    !(answer instanceof InputError) && answer.material === grade ? [answer.note] : [],
  );
  return notes.find((note) => note !== "") ?? "";
}

/** The spans of alloys, taken out of the line. */
function takeAlloys(line: Line, find: Find): readonly GradeSpan[] {
  const alloys = alloySpans(line, find);
  for (const { from, to } of alloys) line.roles.fill("material", from, to + 1);
  return alloys;
}

/** Inconel 600: the number behind the word of an alloy family belongs to it, whether the table has that alloy or not. */
function alloySpans({ atoms, roles }: Line, find: Find): readonly GradeSpan[] {
  return atoms.flatMap(({ text, kind }, i) => {
    if (kind !== "word" || !alloyWords.has(text) || roles[i] !== "") return [];
    const at = textAt(atoms, i + 1) === "-" || textAt(atoms, i + 1) === "alloy" ? i + 2 : i + 1;
    const number = atoms[at];
    if (number === undefined || number.kind === "mark" || !/^(?:[a-z]{1,2}-?)?\d{1,4}[a-z]{0,2}$/.test(number.text))
      return [];
    const named = [`${text} ${number.text}`, `alloy ${number.text}`, number.text];
    const known = named.find((name, k) => isNickel(find(name), k));
    return [{ from: i, to: at, text: known ?? named[0]!, strong: true }];
  });
}

/** A bare number counts only where it names such an alloy. */
const isNickel = (found: Material | InputError, k: number): boolean =>
  !(found instanceof InputError) && (k === 0 || /nickel|titanium|stainless|cobalt/.test(found.family));

/** DOM tube: a designation, whose second word is the shape, too. */
function isShape({ atoms }: Line, i: number): boolean {
  const { kind, text } = atoms[i]!;
  return kind === "word" && text.length > 1 && shapeWords.has(text);
}

/** DOM 1026 and 1026 DOM are the same tube. */
function ofTube(span: GradeSpan, found: readonly GradeSpan[], find: Find): GradeSpan {
  const dom = found.some(({ text }) => /^dom\b/i.test(text));
  const text = `DOM ${span.text}`;
  return dom && !(find(text) instanceof InputError) ? { ...span, text } : span;
}

function unknownCode(code: string, grade: Material | InputError, find: Find): InputError {
  if (!(grade instanceof InputError))
    return itemRefusal("{code} is not known; it may be another grade than {grade}", { code, grade: grade.name });
  const refusal = find(code);
  return refusal instanceof InputError ? refusal : grade;
}

/** Whether a code goes with a grade without making it another: T6, H1150, A276, +QT. */
function belongs(code: string, spans: readonly GradeSpan[], find: Find): boolean {
  const [first] = spans;
  const alone = first && find(first.text);
  if (alone === undefined || alone instanceof InputError) return false;
  return [`${first!.text} ${code}`, `${code} ${first!.text}`].some((text) => {
    const both = find(text);
    return !(both instanceof InputError) && both.grade === alone.grade;
  });
}

/** Conditions anywhere in the line, and EN 10027 suffixes such as + N; words that mark a grade are read over. */
function conditions({ atoms, roles }: Line): readonly string[] {
  const found: string[] = [];
  atoms.forEach(({ kind, text }, i) => {
    if (roles[i] !== "" || kind !== "word") return;
    const before = atoms[i - 1];
    const suffix = before?.kind === "mark" && before.text === "+";
    if (suffix) [roles[i - 1], roles[i]] = ["material", "material"];
    else if (conditionWords.has(text)) roles[i] = "material";
    else return;
    found.push(suffix ? `+${text}` : text);
  });
  const all = [...new Set(found)];
  return all.includes("quenched") && all.includes("tempered")
    ? ["qt", ...all.filter((word) => word !== "quenched" && word !== "tempered")]
    : all;
}

const marking: ReadonlySet<string> = new Set(["gr", "grade", "cda", "alloy"]);

/** 360 brass, titanium grade 2: a number that is a grade only beside its family. */
function familyNumber(line: Line, find: Find): readonly GradeSpan[] | undefined {
  const { atoms, roles } = line;
  const family = atoms.findIndex(
    ({ kind, text }, i) => kind === "word" && roles[i] === "" && (familyWords.has(text) || text === "ti"),
  );
  const named = atoms.flatMap(({ kind, text }, i) => {
    const mark = textAt(atoms, i - 1);
    const likely = marking.has(mark) || (family >= 0 && /^(?:\d{3}|\d{5}|\dal-?\d.*)$/.test(text));
    if (roles[i] !== "" || !likely || (kind === "number" && isDimension(line, i))) return [];
    const name =
      kind === "code" ? `ti ${text}` : `${marking.has(mark) ? mark : ""} ${text} ${textAt(atoms, family)}`.trim();
    return find(name) instanceof InputError ? [] : [{ from: i, to: i, text: name, strong: true }];
  });
  return named.length === 0 ? undefined : named;
}

function gradeOf(line: Line, spans: readonly GradeSpan[], tail: readonly string[], find: Find): Material | InputError {
  const texts = [...new Set(spans.map(({ text }) => text))];
  const families = line.atoms.flatMap(({ kind, text }, i) =>
    kind === "word" && line.roles[i] === "" && familyWords.has(text) ? [text] : [],
  );
  line.atoms.forEach(({ kind, text }, i) => {
    if (kind === "word" && line.roles[i] === "" && (familyWords.has(text) || (gradeMarks.has(text) && text.length > 1)))
      line.roles[i] = "read";
  });
  const [first] = texts;
  if (first === undefined) return noMaterial(families);
  const named =
    texts.length > 1 ? find(texts.slice(0, k.mostGradesJoined.value).join("/")) : ofFamily(first, families, find);
  const grade = tail.length === 0 || named instanceof InputError ? named : find(withTail(first, tail));
  if (texts.length > 1 && named instanceof InputError && !named.problem.includes("meanings"))
    return itemRefusal("more than one material: {names}", { names: texts.join(" or ") });
  if (grade instanceof InputError) return grade;
  const other = families.find((word) => !isOf(grade, word));
  return other === undefined
    ? grade
    : itemRefusal("{grade} is not {family}: which of the two is meant?", { grade: grade.name, family: other });
}

/** 660 bronze, 718 tool steel: the family decides between two meanings. */
function ofFamily(text: string, families: readonly string[], find: Find): Material | InputError {
  const fits = (grade: Material | InputError): boolean =>
    !(grade instanceof InputError) && families.every((family) => isOf(grade, family));
  const grade = find(text);
  if (fits(grade)) return grade;
  return families.flatMap((family) => [`${text} ${family}`, `SAE ${text}`].map(find)).find(fits) ?? grade;
}

function isOf(grade: Material, family: string): boolean {
  return familyWords.get(family)!.some((part) => grade.family.includes(part));
}

const withTail = (grade: string, tail: readonly string[]): string =>
  tail.reduce((text, part) => (part.startsWith("+") ? text + part : `${text} ${part}`), grade);

function noMaterial(families: readonly string[]): InputError {
  if (families.length === 0) return itemRefusal("the line names no material");
  return itemRefusal("{families} names no single material; write the grade", { families: families.join(" ") });
}
