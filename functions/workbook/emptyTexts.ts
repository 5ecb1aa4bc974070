import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject } from "@univerjs/engine-formula";

/**
 * A formula that gives "" gives a text: times two is #VALUE!, not 0, and it is no blank. The engine takes such a cell for an
 * empty one unless it holds a formula itself, which what another cell sees of it does not say: so here it does.
 */
export function correctEmptyTexts(): void {
  const reference = BaseReferenceObject.prototype;
  const own = Reflect.get<BaseReferenceObject, "getCellData">(reference, "getCellData");
  reference.getCellData = function cellData(row, column) {
    const cell = own.call(this, row, column);
    return cell?.v === "" && cell.t === CellValueType.STRING ? { ...cell, f: "=" } : cell;
  };
}
