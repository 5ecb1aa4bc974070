/** Solved cuts that are kept: four grades, classes of blade or saws for each size. */
const cutsASize = 4;

/**
 * The bounded cache of what was read and solved: all that the add-in keeps of what was typed. Values must never change after they
 * are kept. Emptied when full, so a fill-down of many different sizes costs a little speed and never memory.
 */
export class Memo {
  private readonly kept = new Map<string, Map<string, Map<unknown, unknown>>>();
  private readonly numbers = new WeakMap<object, number>();
  private last = 0;

  constructor(private readonly most = 1000) {}

  /** What `read` gives for this cell, kept per reader and what it reads by. A refusal is not kept: it is thrown and read again. */
  get<T>(reader: string, by: string, cell: unknown, read: () => T, most = this.most): T {
    const map = this.mapOf(reader, by);
    const found = map.get(cell);
    if (found !== undefined) return found as T;
    const value = read();
    if (map.size >= most) map.clear();
    map.set(cell, value);
    return value;
  }

  /** What `solve` gives for the very same things: objects are told apart by which they are, never by what is in them. */
  solved<T>(what: string, by: readonly unknown[], solve: () => T): T {
    let key = "";
    for (const thing of by)
      key += typeof thing === "object" && thing !== null ? `${this.numberOf(thing)}|` : `${String(thing)}|`;
    return this.get(what, "", key, solve, cutsASize * this.most);
  }

  private numberOf(thing: object): number {
    let number = this.numbers.get(thing);
    if (number === undefined) this.numbers.set(thing, (number = this.last += 1));
    return number;
  }

  private mapOf(reader: string, by: string): Map<unknown, unknown> {
    let ofReader = this.kept.get(reader);
    if (ofReader === undefined) this.kept.set(reader, (ofReader = new Map<string, Map<unknown, unknown>>()));
    let map = ofReader.get(by);
    if (map === undefined) ofReader.set(by, (map = new Map<unknown, unknown>()));
    return map;
  }
}
