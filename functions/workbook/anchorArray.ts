import {
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  type BaseReferenceObject,
  type FunctionVariantType,
} from "@univerjs/engine-formula";

/** ANCHORARRAY(A7), as files keep A7#: the cells that the formula in A7 fills now. The engine has no such function. */
export class AnchorArray extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;
  override calculate(anchor: FunctionVariantType): FunctionVariantType {
    if (anchor.isError()) return anchor;
    if (!anchor.isReferenceObject()) return ErrorValueObject.create(ErrorType.REF);
    const reference = anchor as BaseReferenceObject;
    const { startRow, startColumn } = reference.getRangePosition();
    const filled =
      reference.getCurrentRuntimeActiveArrayFormulaRange()?.[startRow]?.[startColumn] ??
      reference.getCurrentActiveArrayFormulaRange()?.[startRow]?.[startColumn];
    return filled === undefined || filled === null
      ? ErrorValueObject.create(ErrorType.REF)
      : this.createReferenceObject(reference, filled);
  }
}
