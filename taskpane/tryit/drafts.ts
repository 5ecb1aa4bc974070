import { createStore, del, delMany, get, keys, set, type UseStore } from "idb-keyval";
import type { CellChange } from "../../functions/workbook/patchSheet";

/** Unsaved work in this browser's own storage: the file as it was opened, once, and after each change what differs. */

export interface Draft {
  readonly id: string;
  readonly file: string;
  /** When it was last kept, in ms since 1970. */
  readonly at: number;
  readonly changes: ReadonlyMap<string, readonly CellChange[]>;
}

const what = "changes/";
const base = "base/";

/** Why the browser keeps nothing, as a person can act on it. */
const reason = (problem: unknown): string =>
  problem instanceof DOMException && problem.name === "QuotaExceededError"
    ? "its storage is full"
    : "it lets this page store nothing";

/** What is said where work cannot be kept. */
export const notKept = (problem: unknown): string =>
  `This browser keeps no draft, because ${reason(problem)}: save your work to a file.`;

export function makeDrafts() {
  let store: UseStore | undefined;
  const open = (): UseStore => (store ??= createStore("kerfsheet", "drafts"));
  return {
    /** Each call may be refused by the browser. */
    keep: async (draft: Draft, bytes: () => Uint8Array): Promise<void> => {
      if ((await get(base + draft.id, open())) === undefined) await set(base + draft.id, bytes(), open());
      await set(what + draft.id, draft, open());
    },
    drop: async (id: string): Promise<void> => delMany([what + id, base + id], open()),
    list: async (): Promise<readonly Draft[]> => {
      const ids = (await keys<string>(open())).filter((key) => key.startsWith(what));
      const drafts = await Promise.all(ids.map((key) => get<Draft>(key, open())));
      return drafts.filter((d) => d !== undefined).sort((a, b) => b.at - a.at);
    },
    bytes: async (id: string): Promise<Uint8Array | undefined> => get<Uint8Array>(base + id, open()),
    /** A base without changes is left where the page was closed between the two. */
    clean: async (): Promise<void> => {
      const all = await keys<string>(open());
      const live = new Set(all.filter((k) => k.startsWith(what)).map((k) => k.slice(what.length)));
      for (const key of all) if (key.startsWith(base) && !live.has(key.slice(base.length))) await del(key, open());
    },
  };
}

export type Drafts = ReturnType<typeof makeDrafts>;
