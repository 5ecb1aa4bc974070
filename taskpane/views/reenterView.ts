import { button, element } from "../controls/element";
import type { Sheet, Stuck } from "../sheet/sheet";
import type { Uses } from "./listUses";

/** Cells that are typed again before the pane says how far it is, and may be stopped. */
const together = 500;

const counted = (n: number): string => `${n.toLocaleString("en-US")} cell${n === 1 ? "" : "s"}`;

/** What the person may do meanwhile. */
interface Going {
  readonly say: (text: string) => void;
  readonly stopped: () => boolean;
}

/** Types the cells of one sheet again, some at a time; how many, and why not all. */
async function sheetAgain(
  sheet: Sheet,
  name: string,
  cells: readonly Stuck[],
  { say, stopped }: Going,
): Promise<{ readonly done: number; readonly why: string }> {
  for (let from = 0; from < cells.length; from += together) {
    if (stopped()) return { done: from, why: "" };
    say(`Re-entering ${name}, cell ${(from + 1).toLocaleString("en-US")} of ${cells.length.toLocaleString("en-US")} …`);
    const why = await sheet.reenter(name, cells.slice(from, from + together));
    if (why !== "") return { done: from, why };
  }
  return { done: cells.length, why: "" };
}

/** The chosen sheets one after the other, and in a sentence what came of it. */
export async function reenterAll(sheet: Sheet, chosen: Uses["stuck"], going: Going): Promise<string> {
  let done = 0;
  const left: string[] = [];
  for (const [name, cells] of chosen) {
    const one = await sheetAgain(sheet, name, cells, going);
    done += one.done;
    if (one.why !== "") left.push(`${name} was skipped: ${one.why}`);
  }
  const rest = going.stopped() ? "Stopped; the others are as they were." : "";
  return [`${counted(done)} re-entered.`, ...left, rest].filter((t) => t !== "").join(" ");
}

/** The cells that stay at #NAME?, by sheet, to be typed again in one go. */
export function reenterView(sheet: Sheet, stuck: Uses["stuck"]): readonly Node[] {
  if (stuck.size === 0) return [];
  const status = element("p", { role: "status" });
  const boxes = [...stuck].map(([name, cells], i) => {
    const box = element("input", { type: "checkbox", id: `stuck-${i}`, value: name });
    box.checked = true;
    return {
      box,
      line: element("div", {}, box, element("label", { for: box.id }, `${name}: ${counted(cells.length)}`)),
    };
  });
  let [busy, stop] = [false, false];
  const say = (text: string): void => {
    status.textContent = text;
  };
  const run = async (): Promise<void> => {
    if (busy) return;
    [busy, stop] = [true, false];
    halt.hidden = false;
    const chosen = new Map([...stuck].filter(([name]) => boxes.some(({ box }) => box.checked && box.value === name)));
    say(await reenterAll(sheet, chosen, { say, stopped: () => stop }));
    busy = false;
    halt.hidden = true;
  };
  const halt = button("Stop", () => {
    stop = true;
  });
  halt.hidden = true;
  return [
    element("h3", {}, "Stuck at #NAME?"),
    element("p", {}, intro),
    element("fieldset", { class: "stuck" }, element("legend", {}, "Sheets"), ...boxes.map(({ line }) => line)),
    button("Re-enter", () => void run(), { class: "main" }),
    halt,
    status,
  ];
}

const intro =
  "These cells were calculated while the add-in was not there. Recalculating does not mend them; typing their formulas again does. Protected sheets are skipped.";
