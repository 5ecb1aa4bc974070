import { CellValueType } from "@univerjs/core";
import { BaseReferenceObject } from "@univerjs/engine-formula";

/**
 * A formula that gives "" gives a text: times two is #VALUE!, not 0, and it is no blank; nor is an empty text that a file
 * holds. The engine takes such a cell for an empty one unless a formula stands in it, which what another cell sees of it
 * does not say: so here it does. A cell that was emptied by hand is empty.
 */
export function correctEmptyTexts(): void {
  const reference = BaseReferenceObject.prototype;
  const own = Reflect.get<BaseReferenceObject, "getCellData">(reference, "getCellData");
  reference.getCellData = function cellData(row, column) {
    const cell = own.call(this, row, column);
    if (cell?.v !== "") return cell;
    const typed = this.getCurrentActiveSheetData()?.cellData.getValue(row, column) === cell;
    return typed && cell.t !== CellValueType.FORCE_STRING ? cell : { ...cell, f: "=" };
  };
}
