import "./page.css";
import { demoBook } from "../../functions/workbook/samples/books";
import { bridge } from "../sheet/sheet";
import { bookBar } from "./bookBar";
import { chartPanel } from "./charts";
import { isDark, makeGrid } from "./grid";
import { gridSheet } from "./gridSheet";
import { moveByKeys } from "./keys";
import { widenColumns } from "./looks";
import { takePaste } from "./paste";
import { snapshot } from "./snapshot";

let started = performance.now();
const grid = makeGrid("grid", snapshot(demoBook));
const { api, selected } = grid;
const status = document.getElementById("status")!;
const explain = document.getElementById("explain")!;
const pane = document.getElementById("pane") as HTMLIFrameElement;

/** Says what the selected cell holds, and in one sentence why when it is an error. */
const say = (): void => {
  const cell = selected();
  if (cell === undefined) return;
  explain.textContent =
    cell.sentence === ""
      ? `${cell.address}  ${cell.formula}  ${cell.value}`.trim()
      : `${cell.address} is ${cell.value}: ${cell.sentence}`;
};

/** Told when the selection may have moved, or may hold something else. */
const listeners = new Set<() => void>([say]);
const tellAll = (): void => {
  for (const tell of listeners) tell();
};

/** Once for each sheet that comes into sight, and after each calculation. */
let widened = "";
const widen = (): void => {
  const name = api.getActiveWorkbook()?.getActiveSheet().getSheetName() ?? "";
  if (name === widened || status.dataset["ready"] !== "yes") return;
  widened = name;
  widenColumns(api);
};
listeners.add(widen);

const nothing = "no formula to calculate";

api.getFormula().calculationResultApplied(() => {
  if (status.textContent === nothing) status.textContent = "";
  if (status.dataset["ready"] !== "yes") {
    status.textContent = `calculated in ${((performance.now() - started) / 1000).toFixed(1)} s`;
    status.dataset["ready"] = "yes";
    // Its program waits until the first numbers are there: both would share one thread.
    if (pane.getAttribute("src") === null) pane.src = "pane.html";
  }
  widened = "";
  tellAll();
});

// The grid's own selection events come late in its first seconds: the pointer and the keys tell sooner.
for (const [target, event] of [
  [document.getElementById("grid"), "pointerup"],
  [document, "keyup"],
] as const)
  target?.addEventListener(event, () => setTimeout(tellAll, 30));

const work = bookBar(grid, (formulas) => {
  started = performance.now();
  status.dataset["ready"] = formulas === 0 ? "yes" : "no";
  status.textContent = formulas === 0 ? nothing : "calculating…";
  document.getElementById("data")!.textContent = "";
  setTimeout(tellAll);
});

takePaste(grid);
moveByKeys(grid.focus);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
  grid.dark(isDark());
});
const sheet = gridSheet(api, listeners, grid.filled);
listeners.add(chartPanel(grid, work, sheet));

// The pane in the frame may be there before the grid: it looks here, and listens.
Object.assign(window, { kerfsheetGrid: api, [bridge]: sheet });
window.dispatchEvent(new Event(bridge));
