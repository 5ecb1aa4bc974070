import { call } from "../../functions/bind/call";
import type { Entry } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { catalogue } from "../../functions/catalogue";
import type { Cell } from "../../functions/kinds/cell";
import { callArguments } from "../sheet/callArguments";
import type { Call } from "../sheet/callsIn";
import type { Sheet } from "../sheet/sheet";

/** Calls the function again with the same cells, or another entry with its arguments; undefined where an argument is none. */
export async function callAgain(
  asked: Call,
  on: string,
  sheet: Sheet,
  entry: Entry = catalogue.find((e) => e.name === asked.name)!,
): Promise<Cell[][] | undefined> {
  const given = await callArguments(asked, on, sheet);
  return given && call(entry, given, new Memo());
}
