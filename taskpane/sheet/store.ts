import type { Material } from "../../src/material/material";
import type { Units } from "../../src/quantities";
import type { Selection, Sheet } from "./sheet";

/** The way to the sheet: there, not yet, or not at all and why. */
export type Link =
  { readonly is: "ready"; readonly sheet: Sheet } | { readonly is: "waiting" | "none"; readonly why: string };

/** All that the pane remembers, as long as the page is open; nothing is stored anywhere. */
export interface State {
  readonly units: Units;
  /** The size as typed. */
  readonly section: string;
  readonly material: Material | undefined;
  /** How the material was found: "UNS S17400". */
  readonly matched: string;
  readonly recents: readonly Material[];
  readonly link: Link;
  readonly selection: Selection | undefined;
  /** Why the selected cell holds an error, in one sentence. */
  readonly reason: string;
  /** Why there is no selection to write to; empty where there is one. */
  readonly trouble: string;
  /** What wrote last: only that can be undone. */
  readonly writer: unknown;
  /** Reads the selection again. */
  readonly look: () => void;
  /** Name of the shop block that this pane has inserted. */
  readonly shop: string | undefined;
}

type Watcher = (state: State, before: State) => void;

export class Store {
  private readonly watchers = new Set<Watcher>();

  constructor(private now: State) {}

  get state(): State {
    return this.now;
  }

  set(change: Partial<State>): void {
    const before = this.now;
    this.now = { ...before, ...change };
    for (const tell of this.watchers) tell(this.now, before);
  }

  /** Tells now, and whenever one of these fields changes, until it is stopped. */
  watch(fields: readonly (keyof State)[], tell: (state: State) => void): () => void {
    const watcher: Watcher = (state, before) => {
      if (fields.some((f) => state[f] !== before[f])) tell(state);
    };
    this.watchers.add(watcher);
    tell(this.now);
    return () => void this.watchers.delete(watcher);
  }
}

export const firstState: State = {
  units: "inch",
  section: "round 7",
  material: undefined,
  matched: "",
  recents: [],
  link: { is: "waiting", why: "Looking for the sheet." },
  selection: undefined,
  reason: "",
  trouble: "",
  writer: undefined,
  look: () => undefined,
  shop: undefined,
};
