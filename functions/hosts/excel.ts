import { CellError, type Cell, type Range } from "../kinds/cell";
import { call } from "../bind/call";
import { type Entry } from "../bind/entry";
import { repeats, slots } from "../bind/slots";
import { Memo } from "../bind/memo";

/** The only file that says CustomFunctions, and only inside functions: while office.js loads, its errors do not exist yet. */

const isHostError = (value: unknown): value is { readonly code: string } =>
  typeof value === "object" && value !== null && "code" in value;

const fromHost = (value: unknown): Cell => {
  if (value === undefined || value === null) return null;
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  return isHostError(value) ? new CellError(value.code) : new CellError("#VALUE!");
};

/** A range arrives as rows of cells, a single value as itself, an argument left out as null. */
const toRange = (value: unknown): Range | null => {
  if (value === undefined || value === null) return null;
  return Array.isArray(value)
    ? (value as unknown[][]).map((row) => (Array.isArray(row) ? row : [row]).map(fromHost))
    : [[fromHost(value)]];
};

/** One instance per code and sentence of a call: a hundred thousand new ones cost a second. */
const makeToHost = () => {
  const errors = new Map<string, CustomFunctions.Error>();
  const codes: Readonly<Record<string, CustomFunctions.ErrorCode>> = {
    "#VALUE!": CustomFunctions.ErrorCode.invalidValue,
    "#N/A": CustomFunctions.ErrorCode.notAvailable,
    "#NUM!": CustomFunctions.ErrorCode.invalidNumber,
    "#DIV/0!": CustomFunctions.ErrorCode.divisionByZero,
    "#NULL!": CustomFunctions.ErrorCode.nullReference,
  };
  return (cell: Cell): unknown => {
    if (!(cell instanceof CellError)) return cell;
    const key = `${cell.code}|${cell.text}`;
    let error = errors.get(key);
    if (error === undefined) {
      error =
        cell.text === ""
          ? new CustomFunctions.Error(codes[cell.code] ?? CustomFunctions.ErrorCode.invalidValue)
          : new CustomFunctions.Error(codes[cell.code] ?? CustomFunctions.ErrorCode.invalidValue, cell.text);
      errors.set(key, error);
    }
    return error;
  };
};

/** Excel's function of one entry. The runtime appends its invocation object: nothing after the last argument is read. */
export const hostFunction = (entry: Entry, memo: Memo) => {
  const places = slots(entry);
  const count = places.length;
  // What repeats arrives as one array of all that was given there.
  const last = places[count - 1];
  const repeating = last !== undefined && repeats(last);
  return (...args: unknown[]): unknown[][] => {
    const given = args.slice(0, count);
    const all = repeating ? [...given.slice(0, -1), ...((given[count - 1] ?? []) as unknown[])] : given;
    const result = call(entry, all.map(toRange), memo);
    const toHost = makeToHost();
    const cells = result.map((row) => row.map(toHost));
    const [first] = cells;
    // An error inside an array was broken on older builds: a result that is one error is thrown instead.
    // eslint-disable-next-line @typescript-eslint/only-throw-error -- its type says otherwise, but at run time it is an Error
    if (cells.length === 1 && first!.length === 1 && first![0] instanceof CustomFunctions.Error) throw first![0];
    return cells;
  };
};

/** Gives Excel every function of the catalogue; where office.js is missing there is nothing to give them to. */
export function register(catalogue: readonly Entry[]): void {
  if (typeof CustomFunctions === "undefined") return;
  const memo = new Memo();
  for (const entry of catalogue) CustomFunctions.associate(entry.name, hostFunction(entry, memo));
}
