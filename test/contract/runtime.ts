import { readFileSync } from "node:fs";
import { createRequire } from "node:module";

/**
 * Drives the custom-functions runtime that Excel uses, in happy-dom, through a fake host bridge. The message forms are
 * read in the runtime of @microsoft/office-js 1.1.110 and undocumented: they stand in this file only, and the package is pinned.
 */
export interface Reply {
  readonly ok: boolean;
  readonly value: unknown;
  readonly wire: readonly unknown[];
}

interface Bridge {
  sendMessageToHost(text: string): void;
  onMessageFromHost(text: string): void;
}

const errorsAllowed = 4;
const sent: string[] = [];

const bridge = {
  sendMessageToHost(text: string) {
    const message = JSON.parse(text) as { id: number; type: number; message: { body: unknown } };
    if (message.type !== 1) return;
    const { body } = message.message;
    sent.push(typeof body === "string" ? body : JSON.stringify(body));
    queueMicrotask(() =>
      bridge.onMessageFromHost(
        JSON.stringify({
          id: message.id,
          type: 2,
          message: { statusCode: 200, headers: {}, body: JSON.stringify({ Results: [], ProcessedResults: [] }) },
        }),
      ),
    );
  },
} as Bridge;

const timers: ReturnType<typeof setTimeout>[] = [];
const ownTimeout = globalThis.setTimeout;

/** Ends what the runtime would still do later, when its window is gone. */
export function shut(): void {
  globalThis.setTimeout = ownTimeout;
  timers.forEach(clearTimeout);
}

/** Boots the runtime and loads our built script as Excel's page does: one classic script, nothing else. */
export function boot(script: string): void {
  globalThis.setTimeout = Object.assign((run: () => void, ms?: number) => {
    const timer = ownTimeout(run, ms);
    timers.push(timer);
    return timer;
  }, ownTimeout);
  Object.assign(globalThis, { _richApiNativeBridge: bridge });
  document.head.innerHTML = '<script type="text/plain" src="http://localhost/custom-functions-runtime.js"></script>';
  const runtime = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/custom-functions-runtime.js");
  (0, eval)(readFileSync(runtime, "utf8"));
  (0, eval)(readFileSync(script, "utf8"));
}

/** A reply on the wire: number of the call, whether it went well, its value or the text of the error, the code. */
type Wire = readonly [id: number, ok: boolean, value: unknown, code?: unknown];

const wires = (body: string): Wire[] => {
  const { Actions = [] } = JSON.parse(body) as {
    Actions?: { Name?: string; ArgumentInfo?: { Arguments?: [Wire[]] } }[];
  };
  return Actions.filter((a) => a.Name === "SetInvocationArrayResults").flatMap(
    (a) => a.ArgumentInfo?.Arguments?.[0] ?? [],
  );
};

let last = 0;

/** Sends all calls in one batch, as Excel does, and gives their replies in order. */
export async function callAll(
  calls: readonly { readonly name: string; readonly args: readonly unknown[] }[],
): Promise<Reply[]> {
  const ids = calls.map(() => (last += 1));
  const entries = calls.map(({ name, args }, i) => ({
    messageCategory: 1,
    messageType: 1000,
    targetId: "",
    message: [ids[i], name, args, "Sheet1!A1", errorsAllowed],
  }));
  bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } }));
  for (let wait = 0; wait < 2000; wait += 1) {
    await new Promise((r) => setTimeout(r, 10));
    const got = new Map(sent.flatMap(wires).map((w) => [w[0], w]));
    if (ids.every((id) => got.has(id)))
      return ids.map((id) => ({ ok: got.get(id)![1], value: got.get(id)![2], wire: got.get(id)! }));
  }
  throw new Error("no reply from the runtime");
}
