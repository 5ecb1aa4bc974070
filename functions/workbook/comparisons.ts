import {
  BaseFunction,
  BooleanValueObject,
  CELL_INVERTED_INDEX_CACHE,
  NullValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

/**
 * Two faults of the engine where it compares cells. It keeps an index of each column, in which the text "304" and the
 * number 304 are one, and blank and 0: whether MATCH or = finds a cell then depends on what was looked for before. And it
 * takes * and ? in A2="?" for any text, as only COUNTIF and its like may. Without the index 4,000 XLOOKUP in 4,000 rows
 * took twice as long as with it, VLOOKUP, COUNTIF and SUMIF less.
 */

interface Index {
  set(): void;
  setContinueBuildingCache(): void;
  canUseCache(): { readonly rowsInCache: readonly never[]; readonly rowsNotInCache: readonly never[] };
}

/** Of a text, what the engine does with a pattern, and how it compares letter by letter. */
interface Pattern {
  _checkWildcard(this: Pattern, pattern: string, operator: string): BaseValueObject;
  _compareString(text: string, other: string, operator: string): boolean;
  compareBy(this: Pattern, value: unknown, operator: string, capitals?: boolean): BaseValueObject;
  getValue(): string;
}

/** The operator at work takes * and ? as they are written. */
let literally = false;

/** The operators = <> < > <= >= between texts, numbers and cells. */
export class Compare extends BaseFunction {
  override minParams = 2;
  override maxParams = 2;
  private operator = "=";
  /** The engine sets it before each use. */
  setCompareType(operator: string): void {
    this.operator = operator;
  }
  override calculate(left: BaseValueObject, right: BaseValueObject): BaseValueObject {
    if (left.isError()) return left;
    if (right.isError()) return right;
    literally = true;
    try {
      return left.compare(right, this.operator as never);
    } finally {
      literally = false;
    }
  }
}

/** Makes the engine compare each cell as it is. */
export function correctComparisons(): void {
  const index = CELL_INVERTED_INDEX_CACHE as unknown as Index;
  index.set = () => undefined;
  index.setContinueBuildingCache = () => undefined;
  index.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  const text = StringValueObject.prototype as unknown as Pattern;
  const own = Reflect.get<Pattern, "_checkWildcard">(text, "_checkWildcard");
  text._checkWildcard = function check(pattern, operator) {
    if (!literally) return own.call(this, pattern, operator);
    return BooleanValueObject.create(this._compareString(this.getValue().toLocaleLowerCase(), pattern, operator));
  };
  correctNotBlank();
}

/** "<>" of COUNTIF and its like asks what is not empty: a text without letters, as a formula gives it, is not. */
function correctNotBlank(): void {
  const asksNotBlank = (value: unknown, operator: string) => !literally && value === "" && operator === "<>";
  const text = StringValueObject.prototype as unknown as Pattern;
  const blank = NullValueObject.prototype;
  const [ofText, ofBlank] = [
    Reflect.get<Pattern, "compareBy">(text, "compareBy"),
    Reflect.get<NullValueObject, "compare">(blank, "compare"),
  ];
  text.compareBy = function compareBy(value, operator, capitals) {
    return asksNotBlank(value, operator)
      ? BooleanValueObject.create(true)
      : ofText.call(this, value, operator, capitals);
  };
  blank.compare = function compare(value, operator) {
    const isAsked = value.isString() && asksNotBlank(value.getValue(), operator);
    return isAsked ? BooleanValueObject.create(false) : ofBlank.call(this, value, operator);
  };
}
