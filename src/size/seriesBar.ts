import { seriesFamilies, seriesWords } from "../data/seriesWords";
import { InputError } from "../errors";
import type { Bar } from "./bar";
import { rolledArea } from "./rolledArea";
import { seriesName } from "./seriesName";
import { seriesRows, type SeriesRow } from "./seriesRows";
import { seriesShape } from "./seriesShape";
import type { Token } from "./sizeTokens";

const density = 0.00785; // kg/m per mm²: the mass by which sections are named
const close = 0.01; // one name in two tables is one section where the areas agree so far
const massClose = 0.015;
const massStep = 1; // kg/m: decimals of a mass are dropped or rounded

const areaOf = (row: SeriesRow): number => rolledArea(seriesShape(row));

/**
 * A rolled shape of a further standard from its designation. One name in two tables with areas more than 1 % apart is
 * refused with both, unless mass or width or the standard is written.
 * @param word that names the series [text]
 * @param numbers of the designation [-]
 * @returns the bar, or undefined where the word names no such series with so many numbers or has a meaning without it [-]
 * @throws InputError "none": not in the tables, or in two of them; "invalid": too few or too many numbers
 * @source the standards in sectionSources.ts
 */
export function seriesBar(word: string, numbers: readonly Token[]): Bar | undefined {
  const values = numbers.map(({ value }) => value);
  const families = seriesWords.get(`${word} ${values.length}`) ?? [];
  if (families.length === 0 && !shared.has(word) && seriesWords.has(`${word} 0`)) throw wrongNumbers(word, values);
  if (families.length === 0 || numbers.some(({ unit }) => unit === "in")) return undefined;
  const found = nearestMass(
    families.flatMap((family) => seriesRows(family)).filter((row) => matches(row, values)),
    values,
  );
  const [first] = found;
  if (first === undefined) {
    if (shared.has(word)) return undefined;
    throw unknownSection(word, values);
  }
  const apart = word === "l" ? [] : found.filter((row) => Math.abs(areaOf(row) / areaOf(first) - 1) > close);
  if (apart.length > 0) throw severalSections(word, values, [first, ...apart]);
  return barOf(first);
}

/** Words that mean something without these tables too. */
const shared: ReadonlySet<string> = new Set("ub uc pfc ea ua h beam i c u channel mc t tee l".split(" "));

function barOf(row: SeriesRow): Bar {
  const { family, cells } = row;
  const published = family.area === undefined ? undefined : cells[family.area]! * 100;
  return {
    text: seriesName(row, needsMass(row) ? massOf(row) : undefined),
    notes: published === undefined ? ["area calculated from the outline"] : [],
    shape: seriesShape(row),
    ...(published === undefined ? {} : { area: published }),
  };
}

/** Whether the name alone is another row of the series, or more than one. */
function needsMass(row: SeriesRow): boolean {
  if (row.family.key !== 1) return false;
  const [first, ...more] = seriesFamilies
    .filter(({ name }) => name === row.family.name)
    .flatMap((family) => seriesRows(family, row.cells[0]));
  const area = areaOf(first!);
  return areaOf(row) !== area || more.some((other) => Math.abs(areaOf(other) / area - 1) > close);
}

type Matches = (row: SeriesRow, values: readonly number[]) => boolean;

/** Nominal depth, and mass or width where they are written. */
const byDepth: Matches = ({ family, cells }, [first, second]) => {
  if (first !== cells[0]) return false;
  if (second === undefined) return family.byMass !== true;
  return second === cells[2] || Math.abs((areaOf({ family, cells }) * density) / second - 1) < massClose;
};

/** Nominal depth and mass, 250 and 37.3, or depth and letter. */
const byTwo: Matches = ({ family, cells }, [first, second]) => {
  if (first !== cells[0]) return false;
  if (family.mass !== true) return (second ?? 0) === cells[1];
  return second === undefined || Math.abs(second - cells[1]!) <= massStep;
};

const byLegs: Matches = ({ cells }, values) => {
  const [first = 0, second = 0, third = 0] = values.length === 2 ? [values[0], ...values] : values;
  return Math.max(first, second) === cells[0] && Math.min(first, second) === cells[1] && third === cells[2];
};

const bySizes: Matches = ({ cells }, values) => values.every((value, i) => value === cells[i]);

const matches: Matches = (row, values) => [byDepth, byTwo, byLegs, bySizes][row.family.key - 1]!(row, values);

const massOf = (row: SeriesRow): number => (row.family.mass === true ? row.cells[1]! : areaOf(row) * density);

/** 250UB37 is the one nearest in mass, unless the second number is the width of one. */
function nearestMass(rows: readonly SeriesRow[], [, mass]: readonly number[]): readonly SeriesRow[] {
  const byMass = rows.every(({ family, cells }) => family.mass === true || (family.key === 1 && cells[2] !== mass));
  if (mass === undefined || rows.length < 2 || !byMass) return rows;
  return [...rows].sort((a, b) => Math.abs(massOf(a) - mass) - Math.abs(massOf(b) - mass)).slice(0, 1);
}

const typed = (word: string, values: readonly number[]): string =>
  `${word === "gbu" ? "[" : `${word.toUpperCase()} `}${values.join("x")}`;

function wrongNumbers(word: string, values: readonly number[]): InputError {
  return new InputError("invalid", "section", "{given} is no whole designation, or more than one", {
    given: typed(word, values),
  });
}

function severalSections(word: string, values: readonly number[], rows: readonly SeriesRow[]): InputError {
  const meanings = rows.slice(0, 4).map((row) => {
    const area = areaOf(row);
    return `${seriesName(row, massOf(row))} (${(area / 100).toPrecision(4)} cm²)`;
  });
  return new InputError("none", "section", "{given} is more than one section: {meanings}; write one of them", {
    given: typed(word, values),
    meanings: meanings.join("; "),
  });
}

function unknownSection(word: string, values: readonly number[]): InputError {
  const rows = seriesWords.get(`${word} ${values.length}`)!.flatMap((family) => seriesRows(family));
  const gap = ({ cells }: SeriesRow): number =>
    values.reduce((sum, value, i) => sum + Math.abs(value - (cells[i] ?? 0)) / 100 ** i, 0);
  const names = [...rows].sort((a, b) => gap(a) - gap(b)).map((row) => barOf(row).text);
  return new InputError("none", "section", "{given} is not in the tables; nearest: {nearest}", {
    given: typed(word, values),
    nearest: [...new Set(names)].slice(0, 3).join(", "),
  });
}
