import { button, element } from "./element";

export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly panel: HTMLElement;
  /** Called whenever it is shown. */
  readonly open?: () => void;
}

/** Tabs after the ARIA pattern: one stop for the Tab key, arrows, Home and End between them, shown at once. */
export function tabs(all: readonly Tab[]): { readonly node: HTMLElement; readonly show: (id: string) => void } {
  const heads = all.map(({ id, label }) =>
    button(
      label,
      () => {
        show(id);
      },
      { role: "tab", id: `tab-${id}`, "aria-controls": `panel-${id}` },
    ),
  );
  const panels = all.map(({ id, panel }) =>
    element("div", { role: "tabpanel", id: `panel-${id}`, "aria-labelledby": `tab-${id}` }, panel),
  );
  const show = (id: string): void => {
    all.forEach((tab, i) => {
      const on = tab.id === id;
      heads[i]!.setAttribute("aria-selected", String(on));
      heads[i]!.tabIndex = on ? 0 : -1;
      panels[i]!.hidden = !on;
      if (on) tab.open?.();
    });
  };
  const list = element("div", { role: "tablist", class: "tabs", "aria-label": "Parts of the pane" }, ...heads);
  list.addEventListener("keydown", (e) => {
    const now = heads.indexOf(document.activeElement as HTMLButtonElement);
    const to = { ArrowRight: now + 1, ArrowLeft: now - 1, Home: 0, End: heads.length - 1 }[e.key];
    if (to === undefined || now < 0) return;
    e.preventDefault();
    const next = (to + heads.length) % heads.length;
    show(all[next]!.id);
    heads[next]!.focus();
  });
  show(all[0]!.id);
  return { node: element("div", {}, list, ...panels), show };
}
