import { LocaleType, LogLevel, Univer, type IWorkbookData } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { ALL_IMPLEMENTED_FUNCTIONS_SET, FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import "@univerjs/sheets/facade";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets-formula/facade";
import { catalogue } from "../catalogue";
import { gridFunctions } from "../grid";
import { AnchorArray } from "./anchorArray";
import { correctIndexCache } from "./indexCache";

/** Our functions, and the one that files need beside them. */
export const bookFunctions = () => [...gridFunctions(catalogue), [AnchorArray, "ANCHORARRAY"] as const];

const named = new Set<string>(bookFunctions().map(([, name]) => name));

/** Whether a function of this name, in capitals, can be calculated here. */
export const knows = (name: string): boolean => named.has(name) || (ALL_IMPLEMENTED_FUNCTIONS_SET as ReadonlySet<string>).has(name);

/** The grid's engine without its page. */
export function startEngine() {
  correctIndexCache();
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} } });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: bookFunctions() } as never);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.NO_CALCULATION });
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  return {
    /** Loads a book and calculates it; `tell` hears how many formulas are done of how many. */
    calculate: async (data: Partial<IWorkbookData>, tell: (done: number, of: number) => void) => {
      const book = api.createWorkbook(data);
      const formula = api.getFormula();
      const applied = new Promise<void>((resolve) => formula.calculationResultApplied(() => { resolve(); }));
      formula.calculationProcessing(({ completedFormulasCount, totalFormulasToCalculate }) => { tell(completedFormulasCount, totalFormulasToCalculate); });
      formula.executeCalculation();
      await applied;
      return book;
    },
    model: () => injector.get(FormulaDataModel),
    stop: () => { univer.dispose(); },
  };
}
