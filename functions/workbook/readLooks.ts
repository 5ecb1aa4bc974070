import { readXlsx, type Workbook } from "hucre";
import { BookFault } from "./fault";

/** A workbook by the library that knows looks; its bytes have been opened before. It takes sheets of at most 20 million places. */
export async function readLooks(bytes: Uint8Array, sheets?: string[]): Promise<Workbook> {
  try {
    return await readXlsx(bytes, { readStyles: true, ...(sheets && { sheets }) });
  } catch (problem) {
    throw new BookFault(
      `has looks that cannot be read: ${problem instanceof Error ? problem.message.split(". ")[0]! : String(problem)}`,
    );
  }
}
