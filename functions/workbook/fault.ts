/** Why a workbook cannot be taken: one plain sentence that begins after the file's name. */
export class BookFault extends Error {}
