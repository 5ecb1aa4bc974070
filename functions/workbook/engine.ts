import {
  ICommandService,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type IWorkbookData,
  type Workbook,
} from "@univerjs/core";
import {
  ALL_IMPLEMENTED_FUNCTIONS_SET,
  FormulaDataModel,
  SetFormulaCalculationNotificationMutation,
  SetTriggerFormulaCalculationStartMutation,
  UniverFormulaEnginePlugin,
  type ISetFormulaCalculationNotificationMutation,
} from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { CalculationMode, FormulaCalculationSessionService, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { catalogue } from "../catalogue";
import { gridFunctions, type GridFunction } from "../hosts/grid";
import { AnchorArray } from "./anchorArray";
import { Compare } from "./comparisons";
import { correctEngine } from "./correctEngine";

/** Our functions, the one that files need beside them, and the engine's own that is corrected. */
export const bookFunctions = (): readonly GridFunction[] => [
  ...gridFunctions(catalogue),
  [AnchorArray, "ANCHORARRAY"],
  [Compare, "COMPARE"],
];

const named = new Set<string>(bookFunctions().map(([, name]) => name));

/** Whether a function of this name, in capitals, can be calculated here. */
export const knows = (name: string): boolean =>
  named.has(name) || (ALL_IMPLEMENTED_FUNCTIONS_SET as ReadonlySet<string>).has(name);

/** The grid's engine without its page: its own services are used, since its facade belongs to the page where there is one. */
function startUniver(): Univer {
  correctEngine();
  const locales = { [LocaleType.EN_US]: {} };
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US, locales });
  univer.registerPlugin(UniverFormulaEnginePlugin, { function: bookFunctions() } as never);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin, { initialFormulaComputing: CalculationMode.NO_CALCULATION });
  return univer;
}

/** The engine, ready for one book after the other. */
export function startEngine() {
  const univer = startUniver();
  const injector = univer.__getInjector();
  return {
    /** Loads a book and calculates it; `tell` hears how many formulas are done of how many. */
    calculate: async (data: Partial<IWorkbookData>, tell: (done: number, of: number) => void): Promise<Workbook> => {
      const book = univer.createUnit<Partial<IWorkbookData>, Workbook>(UniverInstanceType.UNIVER_SHEET, data);
      const commands = injector.get(ICommandService);
      commands.onCommandExecuted(({ id, params }) => {
        const stage =
          id === SetFormulaCalculationNotificationMutation.id
            ? (params as ISetFormulaCalculationNotificationMutation).stageInfo
            : undefined;
        if (stage !== undefined) tell(stage.completedFormulasCount, stage.totalFormulasToCalculate);
      });
      const applied = new Promise<void>((resolve) => {
        injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(() => {
          resolve();
        });
      });
      await commands.executeCommand(
        SetTriggerFormulaCalculationStartMutation.id,
        { commands: [], forceCalculation: true },
        { onlyLocal: true },
      );
      await applied;
      return book;
    },
    model: () => injector.get(FormulaDataModel),
    stop: () => {
      univer.dispose();
    },
  };
}
