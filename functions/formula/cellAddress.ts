/** Cells by row and column from 0, and as A1. */

export const columnName = (column: number): string =>
  (column < 26 ? "" : columnName(Math.floor(column / 26) - 1)) + String.fromCharCode(65 + (column % 26));

export const columnOf = (letters: string): number =>
  Array.from(letters.toUpperCase(), (l) => l.charCodeAt(0) - 64).reduce((n, l) => n * 26 + l, 0) - 1;

export const addressOf = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** "$B$2:$C$5", or "$B$2" for one cell. */
export const absoluteOf = ({ top, left, bottom, right }: Area): string =>
  [[left, top] as const, ...(left === right && top === bottom ? [] : [[right, bottom] as const])]
    .map(([column, row]) => `$${columnName(column)}$${row + 1}`)
    .join(":");

/** "B2" or "$B$2:C5" as an area; undefined for anything else. */
export function areaOf(reference: string): Area | undefined {
  const match = /^\$?([A-Za-z]{1,3})\$?(\d{1,7})(?::\$?([A-Za-z]{1,3})\$?(\d{1,7}))?$/.exec(reference.trim());
  if (match === null) return undefined;
  const [, left, top, right = left, bottom = top] = match as unknown as readonly [
    string,
    string,
    string,
    string?,
    string?,
  ];
  return { top: Number(top) - 1, left: columnOf(left), bottom: Number(bottom) - 1, right: columnOf(right) };
}

export const inArea = (area: Area, row: number, column: number): boolean =>
  row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
