import {
  ArrayValueObject,
  BaseValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
} from "@univerjs/engine-formula";
import { change, type Calculate } from "./nativeFunctions";

/**
 * How the engine looks for what is nearest. MATCH in a sorted column of texts found no nearest one, or another; XLOOKUP and
 * XMATCH subtracted texts from each other; of equal rows VLOOKUP and LOOKUP took the first that they met, and Excel the last.
 */

interface Place {
  readonly row: number;
  readonly column: number;
}
interface Searched {
  orderSearch(value: BaseValueObject, way?: number, backwards?: boolean, fuzzy?: boolean): Place | undefined;
  binarySearch(value: BaseValueObject, order?: number, way?: number): number | undefined;
}

const isLess = (a: BaseValueObject, b: BaseValueObject): boolean => a.isLessThan(b).getValue() === true;
const isSameKind = (a: BaseValueObject, b: BaseValueObject): boolean =>
  !a.isNull() && !a.isError() && a.isString() === b.isString() && a.isBoolean() === b.isBoolean();

/** The equal one, else the greatest that is less (1), or the least that is greater (2), of the first met in this direction. */
function correctNearest(array: Searched): void {
  const own = Reflect.get<Searched, "orderSearch">(array, "orderSearch");
  array.orderSearch = function nearest(this: ArrayValueObject, value, way = 1, backwards = false, fuzzy = false) {
    const equal = own.call(this as unknown as Searched, value, 0, backwards, fuzzy);
    if (equal !== undefined || way === 0) return equal;
    let best: BaseValueObject | undefined;
    let place: Place | undefined;
    const nearer = (a: BaseValueObject, b: BaseValueObject) => (way === 1 ? isLess(b, a) : isLess(a, b));
    const look: Parameters<ArrayValueObject["iterator"]>[0] = (cell, row, column) => {
      const isBest =
        cell && isSameKind(cell, value) && nearer(value, cell) && (best === undefined || nearer(cell, best));
      if (isBest === true) [best, place] = [cell, { row, column }];
      return true;
    };
    if (backwards) this.iteratorReverse(look);
    else this.iterator(look);
    return place;
  };
}

/** Halving a sorted row or column ends at the last of equal cells. */
function correctHalving(array: Searched): void {
  const own = Reflect.get<Searched, "binarySearch">(array, "binarySearch");
  array.binarySearch = function halve(this: ArrayValueObject, value, order = 0, way = 1) {
    let place = own.call(this as unknown as Searched, value, order, way);
    if (place === undefined || order !== 0 || way !== 1) return place;
    const at = (i: number) => (this.getRowCount() === 1 ? this.get(0, i) : this.get(i, 0));
    const found = at(place)!;
    // A blank cell is none of them, though it equals 0.
    const isAgain = (cell: ReturnType<typeof at>): boolean =>
      cell instanceof BaseValueObject && isSameKind(cell, found) && cell.isEqual(found).getValue() === true;
    while (isAgain(at(place + 1))) place += 1;
    return place;
  };
}

/** MATCH in ascending order halves the numbers only, or the texts only, as LOOKUP does. */
const halved = (own: Calculate): Calculate =>
  function match(value, ...rest) {
    const [range, way] = rest as unknown as readonly [BaseValueObject, number];
    if (way !== 1 || !(range instanceof ArrayValueObject)) return own.call(this, value, ...rest);
    const place = range.binarySearch(value.isNull() ? NumberValueObject.create(0) : value);
    return place === undefined ? ErrorValueObject.create(ErrorType.NA) : NumberValueObject.create(place + 1);
  };

export function correctLookups(): void {
  const array = ArrayValueObject.prototype as unknown as Searched;
  correctNearest(array);
  correctHalving(array);
  change("MATCH", "_handleSingleObject", halved);
}
