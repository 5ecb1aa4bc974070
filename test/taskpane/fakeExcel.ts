/**
 * The few Excel calls that the pane makes, on a book in memory. It keeps Excel's manner: what was not loaded cannot be
 * read, nothing happens before sync, and what is typed is read as Excel reads it.
 */
type Typed = string | number | boolean;

export interface FakeCell {
  readonly formula: Typed;
  readonly value: Typed;
  readonly format?: string;
}

const empty: FakeCell = { formula: "", value: "" };

/** What Excel makes of something typed: an apostrophe is text, a sign in front a formula, 3/4 a date, digits a number. */
export function asTyped(typed: Typed): FakeCell {
  if (typeof typed !== "string" || typed === "") return { formula: typed, value: typed };
  if (typed.startsWith("'")) return { formula: typed.slice(1), value: typed.slice(1) };
  if (/^[=+\-@]/.test(typed)) return { formula: typed.startsWith("=") ? typed : `=${typed}`, value: "#calculated" };
  if (/^\d+\/\d+$/.test(typed)) return { formula: 45000, value: 45000 };
  return /^[\d.]+$/.test(typed) && !Number.isNaN(Number(typed))
    ? { formula: Number(typed), value: Number(typed) }
    : { formula: typed, value: typed };
}

export interface FakeSheet {
  readonly cells: Map<string, FakeCell>;
  protected: boolean;
  unlocked: boolean;
  hidden: boolean;
  /** What a copy of the whole sheet would bring along. */
  readonly comments: string[];
  readonly rules: string[];
  readonly hiddenRows: Set<number>;
  readonly hiddenColumns: Set<number>;
  readonly widths: Map<number, number>;
  /** "row,column" of a cell to that of the cell whose formula spills into it. */
  readonly spills: Map<string, string>;
}

export const newSheet = (): FakeSheet => ({
  cells: new Map(),
  protected: false,
  unlocked: false,
  hidden: false,
  comments: [],
  rules: [],
  hiddenRows: new Set(),
  hiddenColumns: new Set(),
  widths: new Map(),
  spills: new Map(),
});

const usualWidth = 48;
const isWrong = (value: Typed): boolean => /^#[A-Z]/.test(String(value));

export class FakeBook {
  readonly sheets = new Map<string, FakeSheet>([["Sheet1", newSheet()]]);
  readonly names = new Map<string, string>();
  /** Where each table stands, its headings with it. */
  readonly tables = new Map<string, Area>();
  selection = { sheet: "Sheet1", row: 6, column: 2, rows: 1, columns: 1, areas: 1 };
  /** The call that is to be refused, and with which code. */
  refuse: { readonly call: string; readonly code: string } | undefined;
  syncs = 0;
  /** Workbook protection, and the newest set of calls that this Excel knows, 1.14. */
  structure = false;
  api = 14;
  /** Pasting values brings the formula along, as no Excel should. */
  formulasStick = false;
  /** Sheets that a call has written to. */
  readonly written = new Set<string>();
  readonly listeners: (() => unknown)[] = [];
  readonly visibility: ((message: { visibilityMode: string }) => void)[] = [];

  private at(sheet: string): FakeSheet {
    return this.sheets.get(sheet)!;
  }
  get(sheet: string, row: number, column: number): FakeCell {
    return this.at(sheet).cells.get(`${row},${column}`) ?? empty;
  }
  put(sheet: string, row: number, column: number, typed: Typed): void {
    this.set(sheet, row, column, asTyped(typed));
  }
  /** As it stands: a formula with what it gives. */
  set(sheet: string, row: number, column: number, cell: FakeCell): void {
    this.at(sheet).cells.set(`${row},${column}`, { ...this.get(sheet, row, column), ...cell });
  }
  select(change: Partial<FakeBook["selection"]>): void {
    this.selection = { ...this.selection, ...change };
    for (const tell of this.listeners) tell();
  }
}

const notLoaded = (name: string): never => {
  throw Object.assign(new Error(`${name} was not loaded`), { code: "PropertyNotLoaded" });
};

export interface Area {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

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
    const load = (wanted: object): void =>
      this.called(`${call}.load`, () =>
        Object.assign(
          loaded,
          Object.fromEntries(
            Object.entries(fields()).filter(
              ([name]) => (Array.isArray(wanted) ? wanted.includes(name) : name in wanted) || name === "isNullObject",
            ),
          ),
        ),
      );
    return new Proxy({ ...own, load } as Record<string, unknown>, {
      get: (target, name: string) =>
        name === "format" && name in loaded
          ? loaded[name]
          : name in target
            ? target[name]
            : name in loaded
              ? loaded[name]
              : notLoaded(`${call}.${name}`),
      set: (_, name: string, value) => {
        this.called(`${call}.${name}`, () => {
          if (name === "formulas") (own as { write?: (v: unknown) => void }).write?.(value);
        });
        return true;
      },
    });
  }

  /** The cells of an area that are of a kind, as copyFrom and cellCount need them. */
  private special(where: () => Area, kind: string, of?: string): Record<string, unknown> {
    const { book } = this;
    this.called(`special ${kind}`);
    const found = (): [number, number, FakeCell][] => {
      const asked = where();
      // Asked of one cell, Excel answers for the whole sheet; here a corner of it stands for that.
      const { sheet, row, column, rows, columns } =
        asked.rows * asked.columns === 1 ? { ...asked, row: 0, column: 0, rows: 40, columns: 26 } : asked;
      const at = book.sheets.get(sheet)!;
      const inside = [...at.cells]
        .map(([k, cell]): [number, number, FakeCell] => [Number(k.split(",")[0]), Number(k.split(",")[1]), cell])
        .filter(([r, c]) => r >= row && r < row + rows && c >= column && c < column + columns);
      if (kind === "Formulas")
        return inside.filter(([, , cell]) => String(cell.formula).startsWith("=") && cell.formula !== cell.value);
      if (kind === "Constants")
        return inside.filter(([, , cell]) => of === "Errors" && isWrong(cell.value) && cell.formula === cell.value);
      return Array.from({ length: rows }, (_, r) => row + r)
        .filter((r) => !at.hiddenRows.has(r))
        .flatMap((r) =>
          Array.from({ length: columns }, (__, c) => column + c)
            .filter((c) => !at.hiddenColumns.has(c))
            .map((c) => [r, c, book.get(sheet, r, c)] as [number, number, FakeCell]),
        );
    };
    return this.proxy("special", () => ({ cellCount: found().length, isNullObject: found().length === 0 }), {
      cellsNow: found,
      sheetNow: () => where().sheet,
    });
  }

  /** The used cells of a sheet. */
  private used(name: () => string): Record<string, unknown> {
    const { book } = this;
    const where = (): Area => {
      const keys = [...book.sheets.get(name())!.cells]
        .filter(([, cell]) => cell.formula !== "")
        .map(([k]) => k.split(",").map(Number) as [number, number]);
      const [rows, columns] = [keys.map(([r]) => r), keys.map(([, c]) => c)];
      const [row, column] = [Math.min(...rows), Math.min(...columns)];
      return keys.length === 0
        ? { sheet: name(), row: 0, column: 0, rows: 0, columns: 0 }
        : { sheet: name(), row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
    };
    const fields = () => {
      const { row, column, rows, columns } = where();
      return {
        isNullObject: rows === 0,
        rowIndex: row,
        columnIndex: column,
        rowCount: rows,
        columnCount: columns,
        cellCount: rows * columns,
      };
    };
    const getColumnProperties = () => {
      const result: { value?: unknown } = {};
      this.called("getColumnProperties", () => {
        const { column, columns } = where();
        const at = book.sheets.get(name())!;
        result.value = Array.from({ length: columns }, (_, c) => ({
          columnHidden: at.hiddenColumns.has(column + c),
          format: { columnWidth: at.hiddenColumns.has(column + c) ? 0 : (at.widths.get(column + c) ?? usualWidth) },
        }));
      });
      return result;
    };
    // One cell is what is asked of the used range of one cell, and its sheet what is copied from it.
    const cellsNow = () => {
      const { sheet, row, column } = where();
      return [[row, column, book.get(sheet, row, column)]];
    };
    return this.proxy("used", fields, {
      getColumnProperties,
      cellsNow,
      sheetNow: name,
      getSpecialCellsOrNullObject: (kind: string, of?: string) => this.special(where, kind, of),
    });
  }

  /** Pasting special, as Excel does it: rows and columns that are not in the source close up. */
  private paste(where: () => Area, source: { cellsNow: () => [number, number, FakeCell][] }, kind: string): void {
    const { book } = this;
    this.called(`copyFrom ${kind}`, () => {
      const to = where();
      book.written.add(to.sheet);
      const cells = source.cellsNow();
      const [rows, columns] = [0, 1].map((k) =>
        [...new Set(cells.map((cell) => cell[k] as number))].sort((a, b) => a - b),
      );
      for (const [r, c, cell] of cells) {
        const [row, column] = [to.row + rows!.indexOf(r), to.column + columns!.indexOf(c)];
        const now = book.get(to.sheet, row, column);
        if (kind === "Values")
          book.set(to.sheet, row, column, {
            formula: book.formulasStick ? cell.formula : cell.value,
            value: cell.value,
          });
        else book.set(to.sheet, row, column, { ...now, ...(cell.format === undefined ? {} : { format: cell.format }) });
      }
      if (kind === "Formats") book.sheets.get(to.sheet)!.rules.push("a conditional colour");
    });
  }

  /** Of a range's format: its width can be set; the rest must be loaded. */
  private width(where: () => Area): object {
    const set = (width: number): void =>
      this.called("columnWidth", () => {
        const { sheet, column } = where();
        this.book.written.add(sheet);
        this.book.sheets.get(sheet)!.widths.set(column, width);
      });
    return {
      get protection() {
        return notLoaded("format.protection");
      },
      set columnWidth(width: number) {
        set(width);
      },
    };
  }

  private spillParent(where: () => Area): Record<string, unknown> {
    const { book } = this;
    this.called("getSpillParentOrNullObject");
    return this.proxy(
      "parent",
      () => {
        const { sheet, row, column } = where();
        const parent = book.sheets.get(sheet)!.spills.get(`${row},${column}`);
        if (parent === undefined) return { isNullObject: true };
        const [r, c] = parent.split(",").map(Number) as [number, number];
        return { isNullObject: false, rowIndex: r, columnIndex: c, formulas: [[book.get(sheet, r, c).formula]] };
      },
      {},
    );
  }

  private range(where: () => Area): Record<string, unknown> {
    const { book } = this;
    const grid = (of: "formula" | "value") => {
      const { sheet, row, column, rows, columns } = where();
      return Array.from({ length: rows }, (_, r) =>
        Array.from({ length: columns }, (__, c) => book.get(sheet, row + r, column + c)[of]),
      );
    };
    const write = (typed: Typed[][]): void => {
      const { sheet, row, column } = where();
      book.written.add(sheet);
      typed.forEach((line, r) => line.forEach((t, c) => book.put(sheet, row + r, column + c, t)));
    };
    const fields = () => {
      const a = where();
      const s = book.sheets.get(a.sheet)!;
      return {
        rowIndex: a.row,
        columnIndex: a.column,
        rowCount: a.rows,
        columnCount: a.columns,
        formulas: grid("formula"),
        values: grid("value"),
        numberFormat: grid("value").map((l) => l.map(() => "General")),
        format: { protection: { locked: !s.unlocked } },
      };
    };
    const own: Record<string, unknown> = {
      select: () =>
        this.called("select", () => {
          const a = where();
          book.select({ ...a, areas: 1 });
        }),
      copyFrom: (source: never, kind: string) => this.paste(where, source, kind),
      conditionalFormats: {
        clearAll: () =>
          this.called("clearAll", () => {
            book.written.add(where().sheet);
            book.sheets.get(where().sheet)!.rules.length = 0;
          }),
      },
      getSpecialCellsOrNullObject: (kind: string, of?: string) => this.special(where, kind, of),
      getSpillParentOrNullObject: () => this.spillParent(where),
      format: this.width(where),
      write,
      getCell: () => {
        this.called("getCell");
        return this.range(() => ({ ...where(), rows: 1, columns: 1 }));
      },
    };
    Object.defineProperty(own, "worksheet", { enumerable: true, value: this.sheet(() => where().sheet) });
    return this.proxy("range", fields, own);
  }

  private sheet(name: () => string): Record<string, unknown> {
    const { book } = this;
    const there = (): FakeSheet =>
      book.sheets.get(name()) ??
      (() => {
        throw Object.assign(new Error("no such sheet"), { code: "ItemNotFound" });
      })();
    return {
      get name() {
        return name();
      },
      protection: this.proxy("protection", () => ({ protected: there().protected }), {}),
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) => {
        this.called("getRangeByIndexes");
        return this.range(() => {
          there();
          return { sheet: name(), row, column, rows, columns };
        });
      },
      getRange: (address?: string) => {
        this.called("getRange");
        return this.range(() => {
          there();
          return {
            sheet: name(),
            ...(address === undefined ? { row: 0, column: 0, rows: 1_048_576, columns: 16_384 } : areaOf(address)),
          };
        });
      },
      getUsedRangeOrNullObject: () => {
        this.called("getUsedRangeOrNullObject", there);
        return this.used(name);
      },
      activate: () =>
        this.called("activate", () => {
          if (there().hidden) throw Object.assign(new Error("hidden"), { code: "InvalidOperation" });
        }),
    };
  }

  /** A table; it grows by the rows that are added. */
  private table(name: string): Record<string, unknown> {
    const { book } = this;
    const area = (): Area => book.tables.get(name)!;
    return this.proxy("table", () => ({ isNullObject: !book.tables.has(name), name }), {
      getHeaderRowRange: () => this.range(() => ({ ...area(), rows: 1 })),
      rows: {
        add: (_: undefined, values: Typed[][]) =>
          this.called("rows.add", () => {
            const { sheet, row, column, rows } = area();
            values.forEach((line, r) => line.forEach((t, c) => book.put(sheet, row + rows + r, column + c, t)));
            book.tables.set(name, { ...area(), rows: rows + values.length });
          }),
      },
    });
  }

  get workbook() {
    const { book } = this;
    return {
      tables: { getItemOrNullObject: (name: string) => this.table(name) },
      getSelectedRanges: () => {
        this.called("getSelectedRanges");
        return this.proxy("areas", () => ({ areaCount: book.selection.areas }), {
          areas: { getItemAt: () => this.range(() => book.selection) },
        });
      },
      protection: this.proxy("structure", () => ({ protected: book.structure }), {}),
      worksheets: {
        ...{ load: () => this.called("worksheets.load") },
        get items() {
          return [...book.sheets].map(([name, s]) => ({ name, visibility: s.hidden ? "Hidden" : "Visible" }));
        },
        add: (name: string) => {
          this.called("worksheets.add", () => {
            if ([...book.sheets.keys()].some((n) => n.toLowerCase() === name.toLowerCase()))
              throw Object.assign(new Error("taken"), { code: "ItemAlreadyExists" });
            book.sheets.set(name, newSheet());
          });
          return this.sheet(() => name);
        },
        getItemOrNullObject: (name: string) => ({
          delete: () => this.called("worksheet.delete", () => void book.sheets.delete(name)),
        }),
        getActiveWorksheet: () => this.sheet(() => book.selection.sheet),
        getItem: (name: string) => {
          this.called("getItem");
          return this.sheet(() => name);
        },
      },
      names: {
        ...{ load: () => this.called("names.load") },
        get items() {
          return [...book.names.keys()].map((name) => ({ name }));
        },
        add: (name: string, reference: string) => this.called("names.add", () => book.names.set(name, reference)),
        getItem: (name: string) => ({
          getRange: () => {
            const [, sheet, address] = /^='(.+)'!(.+)$/.exec(book.names.get(name) ?? "='?'!A1")!;
            return this.range(() => ({ sheet: sheet!, ...areaOf(address!) }));
          },
        }),
        getItemOrNullObject: (name: string) => ({
          delete: () => this.called("names.delete", () => book.names.delete(name)),
        }),
      },
      onSelectionChanged: {
        add: (tell: () => unknown) => this.called("onSelectionChanged.add", () => book.listeners.push(tell)),
      },
    };
  }

  sync(): Promise<void> {
    this.book.syncs += 1;
    const { refuse } = this.book;
    const acts = this.queue.splice(0);
    const calls = this.calls.splice(0);
    if (refuse !== undefined && calls.includes(refuse.call))
      return Promise.reject(Object.assign(new Error(refuse.code), { code: refuse.code }));
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
    Office: {
      HostType: { Excel: "Excel" },
      VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" },
      addin: {
        onVisibilityModeChanged: (tell: (message: { visibilityMode: string }) => void) => {
          book.visibility.push(tell);
          return Promise.resolve(() => Promise.resolve());
        },
      },
      context: {
        requirements: { isSetSupported: (_: string, wanted: string) => book.api >= Number(wanted.split(".")[1]) },
      },
      onReady: (tell: (info: { host: string }) => void) => Promise.resolve().then(() => tell({ host })),
    },
    Excel: { run: <T>(batch: (context: FakeContext) => Promise<T>) => batch(new FakeContext(book)) },
  });
}
