import "./pane.css";
import type { Units } from "../src/quantities";
import { isError } from "../functions/formula/cellErrors";
import type { Entry } from "../functions/bind/entry";
import { catalogue } from "../functions/catalogue";
import { button, element } from "./controls/element";
import { InsertControl } from "./controls/insertControl";
import { functionsView, type Extra } from "./views/functionsView";
import { findSheet } from "./sheet/link";
import { materialView } from "./views/materialView";
import type * as Part from "./more";
import type * as Coach from "./coach";
import { refusals } from "./sheet/refusals";
import { shopView } from "./views/shopView";
import { firstState, Store, type Link } from "./sheet/store";
import { tabs, type Tab } from "./controls/tabs";
import { targetLine } from "./controls/targetLine";

const store = new Store(firstState);

type More = typeof Part;

/** What not every visit needs comes when it is asked for. */
const more = (): Promise<More> => import(/* webpackChunkName: "more" */ "./more");

/** Reads where the user is, again whenever that changes; the newest answer counts. */
function follow(link: Link): void {
  if (link.is !== "ready") {
    store.set({ link });
    return;
  }
  let turn = 0;
  const read = async (): Promise<void> => {
    const mine = (turn += 1);
    try {
      const selection = await link.sheet.selected();
      if (mine !== turn) return;
      store.set({ selection, reason: "", trouble: "" });
      const reason = isError(selection.value)
        ? await more().then(
            ({ explain }) => explain(selection, link.sheet),
            () => "",
          )
        : "";
      if (mine === turn) store.set({ reason });
    } catch (problem) {
      if (mine === turn)
        store.set({ selection: undefined, trouble: problem instanceof Error ? problem.message : refusals.noCell });
    }
  };
  const again = (): void => void read();
  store.set({ link, look: again });
  link.sheet.onSelect(again).catch(() => {
    store.set({ trouble: refusals.noCell });
  });
  again();
}

/** Inch or metric, for all that the pane shows and writes. */
function unitsChoice(): HTMLElement {
  const radio = (units: Units): HTMLElement => {
    const input = element("input", { type: "radio", name: "units", id: `units-${units}`, value: units });
    input.checked = store.state.units === units;
    input.addEventListener("change", () => {
      store.set({ units });
    });
    return element("span", {}, input, element("label", { for: input.id }, units));
  };
  return element("fieldset", { class: "units" }, element("legend", {}, "Units"), radio("inch"), radio("metric"));
}

/** A tab whose content is loaded when it is first shown. */
function later(id: string, label: string, view: (part: More) => (store: Store) => HTMLElement): Tab {
  const panel = element("div");
  const open = (): void => {
    if (panel.childElementCount === 0)
      more().then(
        (part) => {
          panel.replaceChildren(view(part)(store));
        },
        () => {
          panel.textContent = refusals.notLoaded;
        },
      );
  };
  return { id, label, panel, open };
}

/** Symptoms, causes and remedies beside CUTCHECK, loaded when they are asked for. */
const trouble: Extra = (of) => {
  const panel = element("div");
  let [stop, ended] = [(): void => undefined, false];
  const open = button(
    "What goes wrong: symptoms, causes, remedies",
    () => {
      const loaded: Promise<typeof Coach> = import(/* webpackChunkName: "coach" */ "./coach");
      loaded.then(
        ({ coachView }) => {
          if (ended) return;
          const view = coachView(of);
          stop = view.stop;
          panel.replaceChildren(view.node);
        },
        () => {
          panel.textContent = refusals.notLoaded;
        },
      );
    },
    { id: "show-trouble" },
  );
  panel.append(open);
  return {
    nodes: [panel],
    stop: () => {
      ended = true;
      stop();
    },
  };
};

/** The working of the selected answer, here or as a formula in the sheet. */
const showWorking =
  (entry: Entry): Extra =>
  (of, formula) => {
    const panel = element("div", { "aria-live": "polite" });
    const show = button(
      "Show the working",
      () => {
        more()
          .then(({ workingTable }) => workingTable(of, entry, formula))
          .then(
            (table) => {
              panel.replaceChildren(table);
            },
            () => {
              panel.textContent = refusals.notLoaded;
            },
          );
      },
      { id: "show-working" },
    );
    const insert = new InsertControl(of, {
      verb: "Insert the working",
      cells: (at) => [[{ formula: formula(at).replace(/^=SAW\.(\w+)\(/, '=SAW.WORKING("$1",') }]],
    });
    return { nodes: [show, panel, insert.node], stop: insert.stop };
  };

const extras = new Map<string, Extra>([
  ["CUTCHECK", trouble],
  ...catalogue.filter((e) => e.working !== undefined).map((e) => [e.name, showWorking(e)] as const),
]);

const { node } = tabs([
  { id: "material", label: "Material", panel: materialView(store) },
  later("section", "Section", (part) => part.sectionView),
  { id: "functions", label: "Functions", panel: functionsView(store, extras) },
  { id: "shop", label: "Shop", panel: shopView(store) },
  later("workbook", "Workbook", (part) => part.workbookView),
]);

document.getElementById("pane")?.append(unitsChoice(), targetLine(store), node);
findSheet(follow);
