import {
  ArrayValueObject,
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type ArrayValueObject as ArrayOf,
  type BaseValueObject,
  type IFunctionInfo,
} from "@univerjs/engine-formula";
import { call } from "../bind/call";
import { CellError, type Cell, type Range } from "../kinds/cell";
import { type Entry } from "../bind/entry";
import { isRequired, repeats, slots } from "../bind/slots";
import { Memo } from "../bind/memo";
import { slotHelp, slotName } from "../bind/slots";

/** The same catalogue on the open-source grid that the try-it page shows; only values are translated here. */

const known: Readonly<Record<string, ErrorType>> = {
  "#VALUE!": ErrorType.VALUE,
  "#N/A": ErrorType.NA,
  "#NUM!": ErrorType.NUM,
  "#DIV/0!": ErrorType.DIV_BY_ZERO,
  "#NULL!": ErrorType.NULL,
};

const fromGrid = (value: BaseValueObject | null | undefined): Cell => {
  if (value === null || value === undefined || value.isNull()) return null;
  if (value.isError()) return new CellError((value as ErrorValueObject).getErrorType());
  const plain = value.getValue();
  if (value.isBoolean()) return plain === true || plain === 1;
  return plain;
};

const toRange = (value: BaseValueObject): Range | null => {
  if (value.isArray())
    return (value as ArrayOf).getArrayValue().map((row) => row.map((cell) => fromGrid(cell ?? null)));
  return value.isNull() ? null : [[fromGrid(value)]];
};

/** The sentence travels with the error: the page shows it in place of the grid's own text. */
const toGrid = (cell: Cell): BaseValueObject => {
  if (cell instanceof CellError) {
    const error = ErrorValueObject.create(known[cell.code] ?? ErrorType.VALUE, cell.text);
    if (cell.text !== "") error.withCustomData({ sentence: cell.text });
    return error;
  }
  if (cell === null) return NullValueObject.create();
  return typeof cell === "number" ? NumberValueObject.create(cell) : StringValueObject.create(String(cell));
};

const toArray = (rows: readonly (readonly Cell[])[]): BaseValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(toGrid)),
    rowCount: rows.length,
    columnCount: rows[0]!.length,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });

/** Most arguments that a formula may give a function. */
const mostRepeated = 255;

/** A function as the grid's engine takes it: a class and the name it is called by. */
export type GridFunction = readonly [new (name: string) => BaseFunction, string];

const gridFunction = (entry: Entry, memo: Memo): GridFunction[0] => {
  const places = slots(entry);
  return class extends BaseFunction {
    override minParams = places.filter(isRequired).length;
    override maxParams = places.some(repeats) ? mostRepeated : places.length;
    override calculate(...values: BaseValueObject[]): BaseValueObject {
      const result = call(entry, values.map(toRange), memo);
      return result.length === 1 && result[0]!.length === 1 ? toGrid(result[0]![0]!) : toArray(result);
    }
  };
};

/** Function classes for the engine's plugin, by their worksheet name. */
export const gridFunctions = (catalogue: readonly Entry[]): readonly GridFunction[] => {
  const memo = new Memo();
  return catalogue.map((e) => [gridFunction(e, memo), `SAW.${e.name}`] as const);
};

/** What the formula bar says of each function while it is typed. */
export const gridDescriptions = (catalogue: readonly Entry[]): IFunctionInfo[] =>
  catalogue.map((e) => ({
    functionName: `SAW.${e.name}`,
    functionType: FunctionType.User,
    description: e.help,
    abstract: e.help,
    functionParameter: slots(e).map((s) => ({
      name: slotName(s),
      detail: slotHelp(s),
      example: "",
      require: isRequired(s) ? 1 : 0,
      repeat: repeats(s) ? 1 : 0,
    })),
  }));
