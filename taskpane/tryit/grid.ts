import { LocaleType, LogLevel, Univer, mergeLocales, type IWorkbookData, type PluginCtor } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { CellAlertManagerService, type ICellAlert } from "@univerjs/sheets-ui";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { bookFunctions } from "../../functions/workbook/engine";
import { correctIndexCache } from "../../functions/workbook/indexCache";
import { catalogue } from "../../functions/catalogue";
import { isError } from "../../functions/formula/cellErrors";
import { gridDescriptions } from "../../functions/hosts/grid";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";

type Preset = ReturnType<typeof UniverSheetsCorePreset>;

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
function calculateAll(api: FUniver, formulas: FormulaDataModel): Promise<void> {
  const sheets = formulas.getFormulaData()[api.getActiveWorkbook()!.getId()] ?? {};
  // Without a formula the engine has nothing to say when it is done.
  if (!Object.values(sheets).some((sheet) => Object.keys(sheet ?? {}).length > 0)) return Promise.resolve();
  return new Promise((done) => {
    const applied = api.getFormula().calculationResultApplied(() => {
      applied.dispose();
      done();
    });
    api.getFormula().executeCalculation();
  });
}

/** The grid's own program in `container`, with our functions registered as its own classes. */
function startUniver(container: string): Univer {
  const locales = { [LocaleType.EN_US]: mergeLocales(coreWords, validationWords) };
  const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.ERROR });
  const formula = { function: bookFunctions(), description: gridDescriptions(catalogue), initialFormulaComputing: 0 };
  register(univer, [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      formula,
      sheets: { disableForceStringMark: true, disableForceStringAlert: true },
    } as Parameters<typeof UniverSheetsCorePreset>[0]),
    UniverSheetsDataValidationPreset({}),
  ]);
  return univer;
}

function sentenceAt(api: FUniver, row: number, column: number): string {
  const data = api.getActiveWorkbook()?.getActiveSheet().getRange(row, column).getCellData();
  // The engine leaves the sentence on a cell that has recovered: it counts only while the value is an error.
  return isError(data?.v) ? ((data?.custom as { sentence?: string } | undefined)?.sentence ?? "") : "";
}

/** The grid's own note of an error gives way to our sentence where there is one. */
function tellSentences(univer: Univer, api: FUniver): void {
  const alerts = univer.__getInjector().get(CellAlertManagerService);
  const alert = alerts.showAlert.bind(alerts);
  alerts.showAlert = (about: ICellAlert) => {
    const text = about.location === undefined ? "" : sentenceAt(api, about.location.row, about.location.col);
    alert(text === "" ? about : { ...about, title: "Kerfsheet", message: text, width: 280 });
  };
}

function selectedIn(api: FUniver): Selected | undefined {
  const range = api.getActiveWorkbook()?.getActiveSheet().getActiveRange();
  if (range === null || range === undefined) return undefined;
  return {
    address: range.getA1Notation(),
    formula: range.getFormula(),
    value: range.getDisplayValue(),
    sentence: sentenceAt(api, range.getRow(), range.getColumn()),
  };
}

/** The grid in `container`, holding a book. */
export function makeGrid(container: string, book: Partial<IWorkbookData>) {
  correctIndexCache();
  const univer = startUniver(container);
  const api = FUniver.newAPI(univer);
  let books = 0;
  api.createWorkbook(book);
  tellSentences(univer, api);
  /** Another book in place of the one that is shown. */
  const show = (next: Partial<IWorkbookData>): void => {
    const old = api.getActiveWorkbook()?.getId();
    if (old !== undefined) api.disposeUnit(old);
    books += 1;
    api.createWorkbook({ ...next, id: `book${books}` });
  };
  /** Asks before anything is done to the grid whether it may be. */
  const beforeCommand = (may: (id: string) => boolean): void => {
    api.addEvent(api.Event.BeforeCommandExecute, (event) => {
      if (!may(event.id)) event.cancel = true;
    });
  };
  /** Told of every change of cells that is not the calculation's own. */
  const onChange = (tell: () => void): void => {
    api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
      const own = options as { readonly fromFormula?: boolean; readonly onlyLocal?: boolean } | undefined;
      if (id === "sheet.mutation.set-range-values" && own?.fromFormula !== true && own?.onlyLocal !== true) tell();
    });
  };
  const formulas = univer.__getInjector().get(FormulaDataModel);
  return {
    api,
    selected: () => selectedIn(api),
    show,
    calculate: () => calculateAll(api, formulas),
    beforeCommand,
    onChange,
    formulas,
  };
}

export type Grid = ReturnType<typeof makeGrid>;
