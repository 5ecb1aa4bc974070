/**
 * The few Excel calls that the pane makes, on a book in memory. It keeps Excel's manner: what was not loaded cannot be
 * read, nothing happens before sync, and what is typed is read as Excel reads it.
 */
type Typed = string | number | boolean;

export interface FakeCell {
  readonly formula: Typed;
  readonly value: Typed;
}

const empty: FakeCell = { formula: "", value: "" };

/** What Excel makes of something typed: an apostrophe is text, a sign in front a formula, 3/4 a date, digits a number. */
export function asTyped(typed: Typed): FakeCell {
  if (typeof typed !== "string" || typed === "") return { formula: typed, value: typed };
  if (typed.startsWith("'")) return { formula: typed.slice(1), value: typed.slice(1) };
  if (/^[=+\-@]/.test(typed)) return { formula: typed.startsWith("=") ? typed : `=${typed}`, value: "#calculated" };
  if (/^\d+\/\d+$/.test(typed)) return { formula: 45000, value: 45000 };
  return /^[\d.]+$/.test(typed) && !Number.isNaN(Number(typed)) ? { formula: Number(typed), value: Number(typed) } : { formula: typed, value: typed };
}

export interface FakeSheet {
  readonly cells: Map<string, FakeCell>;
  protected: boolean;
  unlocked: boolean;
}

export class FakeBook {
  readonly sheets = new Map<string, FakeSheet>([["Sheet1", { cells: new Map(), protected: false, unlocked: false }]]);
  readonly names = new Map<string, string>();
  selection = { sheet: "Sheet1", row: 6, column: 2, rows: 1, columns: 1, areas: 1 };
  /** The call that is to be refused, and with which code. */
  refuse: { readonly call: string; readonly code: string } | undefined;
  syncs = 0;
  readonly listeners: (() => unknown)[] = [];

  private at(sheet: string): FakeSheet {
    return this.sheets.get(sheet)!;
  }
  get(sheet: string, row: number, column: number): FakeCell {
    return this.at(sheet).cells.get(`${row},${column}`) ?? empty;
  }
  put(sheet: string, row: number, column: number, typed: Typed): void {
    this.at(sheet).cells.set(`${row},${column}`, asTyped(typed));
  }
  select(change: Partial<FakeBook["selection"]>): void {
    this.selection = { ...this.selection, ...change };
    for (const tell of this.listeners) tell();
  }
}

const notLoaded = (name: string): never => {
  throw Object.assign(new Error(`${name} was not loaded`), { code: "PropertyNotLoaded" });
};

interface Area { readonly sheet: string; readonly row: number; readonly column: number; readonly rows: number; readonly columns: number }

/** "$A$1:B2" as a place and a size; one letter a column is enough here. */
const areaOf = (address: string) => {
  const [from, to = from] = address.replace(/\$/g, "").split(":");
  const [row, column] = [Number(from!.slice(1)) - 1, from!.charCodeAt(0) - 65];
  return { row, column, rows: Number(to!.slice(1)) - row, columns: to!.charCodeAt(0) - 64 - column };
};

export class FakeContext {
  private readonly queue: (() => void)[] = [];
  private readonly calls: string[] = [];

  constructor(private readonly book: FakeBook) {}

  private called(call: string, act: () => void = () => undefined): void {
    this.calls.push(call);
    this.queue.push(act);
  }

  /** An object whose fields can be read once they were loaded and synced. */
  private proxy(call: string, fields: () => Record<string, unknown>, own: object): Record<string, unknown> {
    const loaded: Record<string, unknown> = {};
    const load = (wanted: object): void => this.called(`${call}.load`, () => Object.assign(loaded, Object.fromEntries(Object.entries(fields()).filter(([name]) => name in wanted || name === "isNullObject"))));
    return new Proxy({ ...own, load } as Record<string, unknown>, {
      get: (target, name: string) => (name in target ? target[name] : name in loaded ? loaded[name] : notLoaded(`${call}.${name}`)),
      set: (_, name: string, value) => {
        this.called(`${call}.${name}`, () => { if (name === "formulas") own["write" as never] && (own as { write: (v: unknown) => void }).write(value); });
        return true;
      },
    });
  }

  private range(where: () => Area): Record<string, unknown> {
    const { book } = this;
    const grid = (of: "formula" | "value") => { const { sheet, row, column, rows, columns } = where(); return Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (__, c) => book.get(sheet, row + r, column + c)[of])); };
    const write = (typed: Typed[][]): void => { const { sheet, row, column } = where(); typed.forEach((line, r) => line.forEach((t, c) => book.put(sheet, row + r, column + c, t))); };
    const fields = () => { const a = where(); const s = book.sheets.get(a.sheet)!; return { rowIndex: a.row, columnIndex: a.column, rowCount: a.rows, columnCount: a.columns, formulas: grid("formula"), values: grid("value"), numberFormat: grid("value").map((l) => l.map(() => "General")), format: { protection: { locked: !s.unlocked } } }; };
    const own: Record<string, unknown> = { write, getCell: () => { this.called("getCell"); return this.range(() => ({ ...where(), rows: 1, columns: 1 })); } };
    Object.defineProperty(own, "worksheet", { enumerable: true, value: this.sheet(() => where().sheet) });
    return this.proxy("range", fields, own);
  }

  private sheet(name: () => string): Record<string, unknown> {
    const { book } = this;
    const there = (): FakeSheet => book.sheets.get(name()) ?? (() => { throw Object.assign(new Error("no such sheet"), { code: "ItemNotFound" }); })();
    return {
      get name() { return name(); },
      protection: this.proxy("protection", () => ({ protected: there().protected }), {}),
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) => { this.called("getRangeByIndexes"); return this.range(() => { there(); return { sheet: name(), row, column, rows, columns }; }); },
      getRange: (address: string) => { this.called("getRange"); return this.range(() => ({ sheet: name(), ...areaOf(address) })); },
      getUsedRangeOrNullObject: () => { this.called("getUsedRangeOrNullObject"); return this.proxy("used", () => { const keys = [...there().cells.keys()].map((k) => Number(k.split(",")[1])); return { isNullObject: keys.length === 0, columnIndex: 0, columnCount: Math.max(0, ...keys) + 1 }; }, {}); },
    };
  }

  get workbook() {
    const { book } = this;
    return {
      getSelectedRanges: () => {
        this.called("getSelectedRanges");
        return this.proxy("areas", () => ({ areaCount: book.selection.areas }), { areas: { getItemAt: () => this.range(() => book.selection) } });
      },
      worksheets: { getActiveWorksheet: () => this.sheet(() => book.selection.sheet), getItem: (name: string) => { this.called("getItem"); return this.sheet(() => name); } },
      names: {
        ...{ load: () => this.called("names.load") },
        get items() { return [...book.names.keys()].map((name) => ({ name })); },
        add: (name: string, reference: string) => this.called("names.add", () => book.names.set(name, reference)),
        getItem: (name: string) => ({ getRange: () => { const [, sheet, address] = /^='(.+)'!(.+)$/.exec(book.names.get(name) ?? "='?'!A1")!; return this.range(() => ({ sheet: sheet!, ...areaOf(address!) })); } }),
        getItemOrNullObject: (name: string) => ({ delete: () => this.called("names.delete", () => book.names.delete(name)) }),
      },
      onSelectionChanged: { add: (tell: () => unknown) => this.called("onSelectionChanged.add", () => book.listeners.push(tell)) },
    };
  }

  sync(): Promise<void> {
    this.book.syncs += 1;
    const { refuse } = this.book;
    const acts = this.queue.splice(0);
    const calls = this.calls.splice(0);
    if (refuse !== undefined && calls.includes(refuse.call)) return Promise.reject(Object.assign(new Error(refuse.code), { code: refuse.code }));
    try {
      for (const act of acts) act();
      return Promise.resolve();
    } catch (problem) {
      return Promise.reject(problem as Error);
    }
  }
}

/** Puts Office and Excel where the pane looks for them. */
export function installFake(book: FakeBook, host = "Excel"): void {
  Object.assign(globalThis, {
    Office: { HostType: { Excel: "Excel" }, onReady: (tell: (info: { host: string }) => void) => Promise.resolve().then(() => tell({ host })) },
    Excel: { run: <T>(batch: (context: FakeContext) => Promise<T>) => batch(new FakeContext(book)) },
  });
}
