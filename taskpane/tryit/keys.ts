/** F6 goes round the page; Tab stays out of the grid, which would keep it. */

const reachable =
  "button:not([disabled]):not([hidden]), a[href], input:not([type=file]), select, textarea, [tabindex='0']";

const seen = (e: HTMLElement): boolean => e.getClientRects().length > 0;
const inside = (root: ParentNode): HTMLElement[] => [...root.querySelectorAll<HTMLElement>(reachable)].filter(seen);

interface Stop {
  readonly has: (e: Element | null) => boolean;
  readonly go: () => void;
}

function stops(focusGrid: () => void, pane: HTMLIFrameElement): readonly Stop[] {
  const bar = document.querySelector<HTMLElement>(".files")!;
  const grid = document.getElementById("grid")!;
  const charts = document.getElementById("charts")!;
  const within = (root: HTMLElement) => (e: Element | null) => root.contains(e);
  const all: Stop[] = [
    { has: within(bar), go: () => inside(bar)[0]?.focus() },
    { has: within(grid), go: focusGrid },
    {
      has: (e) => e === pane,
      go: () => {
        pane.contentWindow?.focus();
        inside(pane.contentDocument!)[0]?.focus();
      },
    },
  ];
  if (!charts.hidden)
    all.splice(2, 0, {
      has: within(charts),
      go: () => {
        charts.focus();
      },
    });
  return all;
}

/** Where Tab goes from an end of the bar, the charts or the pane, so that it does not enter the grid. */
function overGrid(event: KeyboardEvent, all: readonly Stop[], at: Element | null): (() => void) | undefined {
  const bar = document.querySelector<HTMLElement>(".files")!;
  const items = inside(bar);
  if (!event.shiftKey && at === items[items.length - 1]) return all[2]!.go;
  if (event.shiftKey && at?.id === "charts") return () => items[items.length - 1]?.focus();
  return undefined;
}

export function moveByKeys(focusGrid: () => void): void {
  const pane = document.getElementById("pane") as HTMLIFrameElement;
  const onKey = (event: KeyboardEvent): void => {
    const all = stops(focusGrid, pane);
    const at = document.activeElement;
    let go: (() => void) | undefined;
    if (event.key === "F6") {
      const here = all.findIndex((s) => s.has(at));
      const step = event.shiftKey ? all.length - 1 : 1;
      go = all[here < 0 ? 0 : (here + step) % all.length]!.go;
    } else if (event.key === "Tab" && document.querySelector("dialog[open]") === null) go = overGrid(event, all, at);
    if (go === undefined) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    go();
  };
  /** Out of the pane at either end: to the bar or the charts, over the grid. */
  const fromPane = (event: KeyboardEvent): void => {
    if (event.key !== "Tab") {
      onKey(event);
      return;
    }
    const items = inside(pane.contentDocument!);
    if (pane.contentDocument!.activeElement !== items[event.shiftKey ? 0 : items.length - 1]) return;
    event.preventDefault();
    const charts = document.getElementById("charts")!;
    const bar = inside(document.querySelector<HTMLElement>(".files")!);
    (!event.shiftKey ? bar[0] : charts.hidden ? bar[bar.length - 1] : charts)?.focus();
  };
  const listen = (): void => pane.contentDocument?.addEventListener("keydown", fromPane, { capture: true });
  document.addEventListener("keydown", onKey, { capture: true });
  pane.addEventListener("load", listen);
  if (pane.contentDocument?.readyState === "complete") listen();
}
