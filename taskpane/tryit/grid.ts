import {
  LocaleType,
  LogLevel,
  Univer,
  mergeLocales,
  type ICellData,
  type IWorkbookData,
  type Nullable,
  type PluginCtor,
} from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { CellAlertManagerService, type ICellAlert } from "@univerjs/sheets-ui";
import { ILayoutService } from "@univerjs/ui";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { bookFunctions } from "../../functions/workbook/engine";
import { correctEngine } from "../../functions/workbook/correctEngine";
import { catalogue } from "../../functions/catalogue";
import { isError } from "../../functions/formula/cellErrors";
import { gridDescriptions } from "../../functions/hosts/grid";
import { short, shortenNumbers } from "./looks";
import { mistyped } from "./mistyped";
import { settleSpills } from "./spills";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";

type Book = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;
type Preset = ReturnType<typeof UniverSheetsCorePreset>;

interface Engine {
  readonly api: FUniver;
  readonly formulas: FormulaDataModel;
}

/** The selected cell as the page explains it. */
export interface Selected {
  readonly address: string;
  readonly formula: string;
  readonly value: string;
  /** The sentence of an error of ours; empty for anything else. */
  readonly sentence: string;
}

const register = (univer: Univer, presets: readonly Preset[]): void => {
  for (const preset of presets) {
    for (const plugin of preset.plugins) {
      const [ctor, options] = (Array.isArray(plugin) ? plugin : [plugin, undefined]) as [PluginCtor, never];
      univer.registerPlugin(ctor, options);
    }
  }
};

/** Everything anew: an edit does not always reach a formula whose place was taken. */
function calculateAll(api: FUniver, formulas: FormulaDataModel, isSettled: () => boolean): Promise<void> {
  const sheets = formulas.getFormulaData()[api.getActiveWorkbook()!.getId()] ?? {};
  // Without a formula the engine has nothing to say when it is done.
  if (!Object.values(sheets).some((sheet) => Object.keys(sheet ?? {}).length > 0)) return Promise.resolve();
  return new Promise((done) => {
    const applied = api.getFormula().calculationResultApplied(() => {
      if (!isSettled()) return;
      applied.dispose();
      done();
    });
    api.getFormula().executeCalculation();
  });
}

export const isDark = (): boolean => matchMedia("(prefers-color-scheme: dark)").matches;

/** Items of the grid's menus that would spoil a grade such as 304, or that no file made here can keep. */
const hiddenItems = [
  "sheet.contextMenu.text-to-number",
  "sheet.toolbar.text-to-number",
  "sheet.contextMenu.permission",
  "sheet.menu.cell-insert",
  "sheet.menu.delete",
  "sheet.command.insert-multi-rows-above",
  "sheet.command.insert-multi-rows-after",
  "sheet.command.insert-multi-cols-before",
  "sheet.command.insert-multi-cols-right",
  "sheet.command.insert-row-before",
  "sheet.command.insert-row-after",
  "sheet.command.insert-col-before",
  "sheet.command.insert-col-after",
  "sheet.command.remove-row-confirm",
  "sheet.command.remove-col-confirm",
  "sheet.command.remove-sheet-confirm",
  "sheet.command.copy-sheet",
  "sheet.operation.rename-sheet",
  "sheet.command.set-worksheet-hidden",
  "sheet.command.set-worksheet-show",
  "sheet.command.change-sheet-protection-from-sheet-bar",
  "sheet.command.delete-worksheet-protection-from-sheet-bar",
  "sheet.command.add-range-protection-from-sheet-bar",
  "sheet.command.view-sheet-permission-from-sheet-bar",
  "sheet.command.add-range-protection-from-context-menu",
  "sheet.command.set-range-protection-from-context-menu",
  "sheet.command.delete-range-protection-from-context-menu",
  "sheet.command.view-sheet-permission-from-context-menu",
];

/** The grid's own program in `container`, with our functions registered as its own classes. */
function startUniver(container: string): Univer {
  const locales = { [LocaleType.EN_US]: mergeLocales(coreWords, validationWords) };
  const darkMode = isDark();
  const univer = new Univer({ darkMode, locale: LocaleType.EN_US, locales, logLevel: LogLevel.ERROR });
  const formula = { function: bookFunctions(), description: gridDescriptions(catalogue), initialFormulaComputing: 0 };
  register(univer, [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      // What a selection adds up to is said in the strip above the grid: there it covers no sheet's name.
      footer: { statisticBar: false, menus: false, zoomSlider: false, addSheetButtonConfig: { show: false } },
      menu: Object.fromEntries(hiddenItems.map((id) => [id, { hidden: true }])),
      formula,
      sheets: { disableForceStringMark: true, disableForceStringAlert: true },
    } as Parameters<typeof UniverSheetsCorePreset>[0]),
    UniverSheetsDataValidationPreset({}),
  ]);
  return univer;
}

/** What a formula fills a cell with, as the engine keeps it. */
const filledAt = (
  { formulas }: Engine,
  unit: string,
  sheet: string,
  row: number,
  column: number,
): Nullable<ICellData> => formulas.getArrayFormulaCellData()[unit]?.[sheet]?.[row]?.[column];

const toldBy = (cell: Nullable<ICellData>): string =>
  (cell?.custom as { readonly sentence?: string } | undefined)?.sentence ?? "";

function sentenceAt(engine: Engine, row: number, column: number): string {
  const range = engine.api.getActiveWorkbook()?.getActiveSheet().getRange(row, column);
  const data = range?.getCellData();
  // The engine leaves the sentence on a cell that has recovered: it counts only while the value is an error.
  if (range === undefined || !isError(data?.v)) return "";
  const told = toldBy(data) || toldBy(filledAt(engine, range.getUnitId(), range.getSheetId(), row, column));
  return told === "" ? mistyped(data?.f ?? "") : told;
}

/** The grid's own note of an error gives way to our sentence where there is one. */
function tellSentences(univer: Univer, engine: Engine): void {
  const alerts = univer.__getInjector().get(CellAlertManagerService);
  const alert = alerts.showAlert.bind(alerts);
  alerts.showAlert = (about: ICellAlert) => {
    const text = about.location === undefined ? "" : sentenceAt(engine, about.location.row, about.location.col);
    alert(text === "" ? about : { ...about, title: "Kerfsheet", message: text, width: 280 });
  };
}

/** Of a selection larger than this only the first cell is said: it would be counted at every key. */
const mostCounted = 20_000;

/** What several selected cells come to; undefined for one cell. */
function several(
  range: NonNullable<ReturnType<ReturnType<Book["getActiveSheet"]>["getActiveRange"]>>,
): string | undefined {
  const size = range.getHeight() * range.getWidth();
  if (size === 1 || size > mostCounted) return undefined;
  const numbers = range
    .getValues()
    .flat()
    .filter((v): v is number => typeof v === "number");
  if (numbers.length < 2) return undefined;
  const sum = numbers.reduce((a, b) => a + b, 0);
  const said = (n: number): string => short(n).toLocaleString("en", { maximumFractionDigits: 10 });
  return `${numbers.length} numbers, sum ${said(sum)}, mean ${said(sum / numbers.length)}, ${said(Math.min(...numbers))} to ${said(Math.max(...numbers))}`;
}

function selectedIn(engine: Engine): Selected | undefined {
  const range = engine.api.getActiveWorkbook()?.getActiveSheet().getActiveRange();
  if (range === null || range === undefined) return undefined;
  return {
    address: range.getA1Notation(),
    formula: range.getFormula(),
    value: several(range) ?? range.getDisplayValue(),
    sentence: sentenceAt(engine, range.getRow(), range.getColumn()),
  };
}

/** What is done to the grid, before and after. */
const watched = (api: FUniver) => ({
  /** Asks before anything is done to the grid whether it may be. */
  beforeCommand: (may: (id: string) => boolean): void => {
    api.addEvent(api.Event.BeforeCommandExecute, (event) => {
      if (!may(event.id)) event.cancel = true;
    });
  },
  /** Told of every change of cells that is not the calculation's own. */
  onChange: (tell: () => void): void => {
    api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
      const own = options as { readonly fromFormula?: boolean; readonly onlyLocal?: boolean } | undefined;
      if (id === "sheet.mutation.set-range-values" && own?.fromFormula !== true && own?.onlyLocal !== true) tell();
    });
  },
});

/** The grid in `container`, holding a book. */
export function makeGrid(container: string, book: Partial<IWorkbookData>) {
  correctEngine();
  const univer = startUniver(container);
  const api = FUniver.newAPI(univer);
  let books = 0;
  api.createWorkbook(book);
  const formulas = univer.__getInjector().get(FormulaDataModel);
  const engine: Engine = { api, formulas };
  tellSentences(univer, engine);
  shortenNumbers(univer);
  /** Another book in place of the one that is shown. */
  const show = (next: Partial<IWorkbookData>): void => {
    const old = api.getActiveWorkbook()?.getId();
    if (old !== undefined) api.disposeUnit(old);
    books += 1;
    api.createWorkbook({ ...next, id: `book${books}` });
    // The keys need a cell to start from.
    api.getActiveWorkbook()!.getActiveSheet().getRange(0, 0).activate();
  };
  const isSettled = settleSpills(api, formulas);
  return {
    api,
    selected: () => selectedIn(engine),
    show,
    calculate: () => calculateAll(api, formulas, isSettled),
    ...watched(api),
    formulas,
    filled: (unit: string, sheet: string, row: number, column: number): unknown =>
      filledAt(engine, unit, sheet, row, column)?.v,
    /** The keyboard is the grid's. */
    focus: () => {
      univer.__getInjector().get(ILayoutService).focus();
    },
    dark: (on: boolean) => {
      api.toggleDarkMode(on);
    },
  };
}

export type Grid = ReturnType<typeof makeGrid>;
