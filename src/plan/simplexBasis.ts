import { planConstants as k } from "../data/planConstants";
import type { Work } from "./planWork";

/** A column of a linear programme: its cost, and its coefficients by row. */
export interface Column<T> {
  readonly cost: number;
  readonly rows: readonly (readonly [row: number, by: number])[];
  /** What it stands for; undefined: slack, surplus or artificial. */
  readonly means: T | undefined;
  readonly artificial?: boolean;
}

const smallest = 1e-9;
const tie = 1e-12;

/** The basis of the revised simplex method with its inverse kept whole: m rows, a column in each. */
export class SimplexBasis<T> {
  private readonly columns: Column<T>[];
  private readonly inverse: Float64Array;
  private readonly values: Float64Array;
  private readonly size: number;

  constructor(
    start: readonly Column<T>[],
    rightSide: readonly number[],
    private readonly work: Work,
  ) {
    this.size = start.length;
    this.columns = [...start];
    this.values = Float64Array.from(rightSide);
    this.inverse = new Float64Array(this.size * this.size);
    for (let i = 0; i < this.size; i += 1) this.inverse[i * this.size + i] = 1;
  }

  /** The dual value of each row. */
  duals(): Float64Array {
    const duals = new Float64Array(this.size);
    this.columns.forEach(({ cost }, r) => {
      if (cost !== 0) for (let j = 0; j < this.size; j += 1) duals[j]! += cost * this.inverse[r * this.size + j]!;
    });
    return duals;
  }

  /** The column in terms of the basis. */
  private inBasis({ rows }: Column<T>): Float64Array {
    const result = new Float64Array(this.size);
    for (let r = 0; r < this.size; r += 1)
      for (const [row, by] of rows) result[r]! += this.inverse[r * this.size + row]! * by;
    return result;
  }

  /** The row whose column leaves: the first to reach 0, of equals the largest pivot. */
  private leaving(direction: Float64Array): number {
    let [row, ratio] = [-1, Infinity];
    for (let i = 0; i < this.size; i += 1) {
      if (direction[i]! <= smallest) continue;
      const next = this.values[i]! / direction[i]!;
      const isTie = next < ratio + tie && row >= 0 && direction[i]! > direction[row]!;
      if (next < ratio - tie || isTie) [row, ratio] = [i, next];
    }
    return row;
  }

  /** Takes a column into the basis; false where the programme has no end in that direction. */
  enter(column: Column<T>): boolean {
    const direction = this.inBasis(column);
    const row = this.leaving(direction);
    if (row < 0) return false;
    const { size, inverse, values } = this;
    const step = Math.max(0, values[row]! / direction[row]!);
    for (let i = 0; i < size; i += 1) if (i !== row) values[i] = Math.max(0, values[i]! - step * direction[i]!);
    values[row] = step;
    for (let j = 0; j < size; j += 1) inverse[row * size + j]! /= direction[row]!;
    for (let i = 0; i < size; i += 1) {
      if (i === row || direction[i] === 0) continue;
      for (let j = 0; j < size; j += 1) inverse[i * size + j]! -= direction[i]! * inverse[row * size + j]!;
    }
    this.columns[row] = column;
    this.work.add((size * size) / k.pivotShare.value);
    return true;
  }

  /** What is in the basis, and how much of it. */
  solution(): readonly (readonly [column: Column<T>, value: number])[] {
    return this.columns.map((column, r) => [column, this.values[r]!] as const);
  }
}
