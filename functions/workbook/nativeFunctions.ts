import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  functionDate,
  functionFinancial,
  functionLogical,
  functionLookup,
  functionMath,
  functionStatistical,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

/**
 * Functions of the engine that give another number than Excel does, each corrected where it goes wrong; found by holding
 * formulas beside another engine's (test/functions/workbook/nativeFormulas.test.ts).
 */

/** A function's own step, with the cells and ranges that it is given. */
export type Calculate = (this: unknown, ...given: [BaseValueObject, ...BaseValueObject[]]) => BaseValueObject;
type Own = Record<string, Calculate>;

const functions = new Map(
  [functionDate, functionFinancial, functionLogical, functionLookup, functionMath, functionStatistical]
    .flat()
    .map(([of, name]) => [name as string, of as unknown as (new () => { calculate: Calculate }) & { prototype: Own }]),
);
const named = (name: string) => {
  const found = functions.get(name);
  if (found === undefined) throw new Error(`the engine has no ${name}`);
  return found;
};

/** Puts another step in the place of a function's own, which it is given. */
export function change(name: string, step: string, changed: (own: Calculate) => Calculate): void {
  const { prototype } = named(name);
  const own = prototype[step];
  if (own === undefined) throw new Error(`the engine's ${name} has no ${step}`);
  prototype[step] = changed(own);
}

/** What a function of the engine gives. */
const ask = (name: string, ...given: [number, ...number[]]): number =>
  valueOf(new (named(name))().calculate(...(given.map(number) as [BaseValueObject])));

const number = (value: number): BaseValueObject => NumberValueObject.create(value);
const valueOf = (value: BaseValueObject): number => Number(value.getValue());
const cells = (value: BaseValueObject, each: (cell: BaseValueObject) => BaseValueObject): BaseValueObject =>
  value.isArray() ? value.mapValue(each) : each(value);

/** The cell of a range beside a cell of another; of a single value, that value. */
const beside = (value: BaseValueObject, row: number, column: number): BaseValueObject => {
  if (!(value instanceof ArrayValueObject)) return value;
  const [r, c] = [value.getRowCount() === 1 ? 0 : row, value.getColumnCount() === 1 ? 0 : column];
  return value.get(r, c) ?? NullValueObject.create();
};

/** A month later than 31 January is the last of February: no day that the month does not have. */
const endOfMonth = (own: Calculate): Calculate =>
  function edate(start, months = NullValueObject.create()) {
    return own.call(this, start, months).mapValue((given, row, column) => {
      if (!given.isNumber()) return given;
      const last = ask("EOMONTH", valueOf(beside(start, row, column)), valueOf(beside(months, row, column)));
      return number(Math.min(valueOf(given), last));
    });
  };

/** The week of a day is the week of its Thursday, counted from 1 January of the Thursday's year (ISO 8601). */
const thursdaysWeek = (own: Calculate): Calculate =>
  function isoWeek(date) {
    if (!date.isNumber()) return own.call(this, date);
    const day = Math.floor(valueOf(date));
    const thursday = day - ((day + 5) % 7) + 3;
    return number(Math.floor((thursday - ask("DATE", ask("YEAR", thursday), 1, 1)) / 7) + 1);
  };

/** A text is no condition, but for the words TRUE and FALSE. */
const noTextCondition = (own: Calculate): Calculate =>
  function condition(test, ...rest) {
    if (!test.isString()) return own.call(this, test, ...rest);
    const word = String(test.getValue()).toUpperCase();
    if (word !== "TRUE" && word !== "FALSE") return ErrorValueObject.create(ErrorType.VALUE);
    return own.call(this, BooleanValueObject.create(word === "TRUE"), ...rest);
  };

/** A text and a number are never the same case; capitals do not count. */
const tagged = (value: BaseValueObject): BaseValueObject =>
  value.isError()
    ? value
    : StringValueObject.create(
        `${value.isString() ? "text" : value.isBoolean() ? "logical" : "number"} ${String(value.getValue())}`,
      );
const byKind = (own: Calculate): Calculate =>
  function cases(expression, ...rest) {
    const isCase = (i: number) => i % 2 === 0 && i + 1 < rest.length;
    return own.call(this, cells(expression, tagged), ...rest.map((r, i) => (isCase(i) ? cells(r, tagged) : r)));
  };

/** In a range, texts count as something else. */
const textsAs =
  (what: (text: BaseValueObject) => BaseValueObject) =>
  (own: Calculate): Calculate =>
    function withoutTexts(...given) {
      const plain = given.map((g) => (g.isArray() ? g.mapValue((c) => (c.isString() ? what(c) : c)) : g));
      return own.call(this, ...(plain as [BaseValueObject]));
    };

/** What has no number has no spread. */
const noSpread = (own: Calculate): Calculate =>
  function spread(...given) {
    let numbers = 0;
    const count = (c: BaseValueObject) => ((numbers += c.isNull() ? 0 : 1), c);
    for (const g of given) cells(g, count);
    return numbers === 0 ? ErrorValueObject.create(ErrorType.DIV_BY_ZERO) : own.call(this, ...given);
  };

/** The 21st way to count weeks is that of ISO 8601. */
const isoWeeks = (own: Calculate): Calculate =>
  function weeks(date, ...rest) {
    const [way] = rest;
    const iso = way !== undefined && valueOf(beside(way, 0, 0)) === 21;
    return iso ? new (named("ISOWEEKNUM"))().calculate(date) : own.call(this, date, ...rest);
  };

/** Sorts a copy: the engine sorts the rows of the range itself, which other formulas read after it. */
const sortCopy = (own: Calculate): Calculate =>
  function sort(range, ...rest) {
    return own.call(this, range.isArray() ? range.mapValue((c) => c) : range, ...rest);
  };

/** The number that a text is of; 2/3 is none, though a spreadsheet may take it for a day of the current year. */
const numberIn = (text: BaseValueObject): BaseValueObject =>
  /^\s*[-+]?[\d.,]+%?\s*$/.test(String(text.getValue()))
    ? text.convertToNumberObjectValue()
    : ErrorValueObject.create(ErrorType.VALUE);

const list = (names: string): readonly string[] => names.split(" ");
/** Texts of a range are zeroes, are left out, or are the numbers that they are the digits of. */
const zeroes = list("AVERAGEA STDEVA STDEVPA VARA VARPA");
const leftOut = list(
  "AVEDEV DEVSQ GEOMEAN HARMEAN KURT MEDIAN MODE.MULT MODE.SNGL NPV PERCENTRANK.EXC PERCENTRANK.INC SKEW SKEW.P STDEV.P STDEV.S TRIMMEAN VAR.P VAR.S",
);
const digits = list(
  "ABS ACOS ACOSH ASIN ASINH ATAN ATAN2 ATANH COS COSH EXP LN LOG10 MOD POWER ROUND ROUNDDOWN ROUNDUP SIN SINH SQRT TAN TANH",
);

export function correctFunctions(): void {
  change("EDATE", "calculate", endOfMonth);
  change("ISOWEEKNUM", "_handleSingleObject", thursdaysWeek);
  change("WEEKNUM", "calculate", isoWeeks);
  change("IF", "_handleSingleObject", noTextCondition);
  change("SWITCH", "calculate", byKind);
  change("SORT", "calculate", sortCopy);
  for (const name of list("STDEV.P STDEV.S VAR.P VAR.S")) change(name, "calculate", noSpread);
  for (const name of zeroes)
    change(
      name,
      "calculate",
      textsAs(() => number(0)),
    );
  for (const name of leftOut)
    change(
      name,
      "calculate",
      textsAs(() => NullValueObject.create()),
    );
  for (const name of digits) change(name, "calculate", textsAs(numberIn));
}
