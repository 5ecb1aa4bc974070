/**
 * The bounded cache of parsed texts: all the state that the add-in keeps. Values must never change after they are
 * kept. Emptied when full, so a fill-down of many different sizes costs a little speed and never memory.
 */
export class Memo {
  private readonly kept = new Map<string, Map<string, unknown>>();

  constructor(private readonly most = 1000) {}

  /** What `read` gives for this key, kept per reader. A refusal is not kept: it is thrown and read again. */
  get<T>(reader: string, key: string, read: () => T): T {
    let map = this.kept.get(reader);
    if (map === undefined) this.kept.set(reader, (map = new Map<string, unknown>()));
    const found = map.get(key);
    if (found !== undefined) return found as T;
    const value = read();
    if (map.size >= this.most) map.clear();
    map.set(key, value);
    return value;
  }
}
