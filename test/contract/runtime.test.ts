// @vitest-environment happy-dom
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../functions/catalogue";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { call } from "../../functions/bind/call";
import { type Entry } from "../../functions/bind/entry";
import { repeats, slots } from "../../functions/bind/slots";
import { parseCall } from "../../functions/bind/parseCall";
import { Memo } from "../../functions/bind/memo";
import { wantBuilt } from "../../config/built.mjs";
import { boot, callAll, shut, type Reply } from "./runtime";

/** The built script, driven by the runtime of @microsoft/office-js that Excel loads. */

const script = "dist/functions.js";
const errorIn = { code: "#N/A", type: "CustomFunctionError" };

/** Ranges as Excel sends them: rows of cells for "matrix", the bare value for the one scalar argument, all that repeats as one array. */
const asSent = (e: Entry, args: readonly (Range | null)[]): unknown[] =>
  slots(e).map((s, i) => {
    if (repeats(s)) return args.slice(i);
    return s.role === "units" ? (args[i]?.[0]?.[0] ?? null) : (args[i] ?? null);
  });
const examples = catalogue.flatMap((e) => e.examples.map((formula) => ({ e, formula, args: parseCall(formula).args })));
const firstVarying = (e: Entry): number =>
  slots(e).findIndex((s) => s.role === "param" && s.param.varies && s.param.kind.width === 1);

/** What the host should have got for a cell of ours. */
const asGot = (cell: Cell): unknown =>
  cell instanceof CellError
    ? expect.objectContaining({ code: cell.code })
    : typeof cell === "number"
      ? expect.closeTo(cell, 9)
      : cell;

beforeAll(() => {
  wantBuilt("dist");
  boot(script);
});

afterAll(shut);

describe("the built functions under Excel's runtime", () => {
  it("give every example's result, as rows of cells", async () => {
    const replies = await callAll(examples.map(({ e, args }) => ({ name: e.name, args: asSent(e, args) })));
    examples.forEach(({ e, args, formula }, i) => {
      expect(replies[i]!.ok, formula).toBe(true);
      expect(replies[i]!.value, formula).toEqual(call(e, args, new Memo()).map((row) => row.map(asGot)));
    });
  });

  it("say in one sentence why a wrong argument is refused", async () => {
    const wrong = catalogue.filter((e) => firstVarying(e) >= 0);
    const replies = await callAll(
      wrong.map((e) => ({
        name: e.name,
        args: asSent(
          e,
          parseCall(e.examples[0]).args.map((r, i) => (i === firstVarying(e) ? [[true]] : r)),
        ),
      })),
    );
    replies.forEach((r, i) => {
      expect(r.ok, wrong[i]!.name).toBe(false);
      expect(r.value, wrong[i]!.name).toMatch(/is TRUE or FALSE/);
    });
  });

  it("pass an error in a cell through", async () => {
    const taking = catalogue.filter((e) => firstVarying(e) >= 0);
    const one = await callAll(
      taking.map((e) => ({
        name: e.name,
        args: asSent(
          e,
          parseCall(e.examples[0]).args.map((r, i) => (i === firstVarying(e) ? ([[errorIn]] as unknown as Range) : r)),
        ),
      })),
    );
    one.forEach((r: Reply, i) => expect(r.ok, taking[i]!.name).toBe(false));
    const inner = await callAll([{ name: "AREA", args: [[["round 7"], [errorIn], ["round 1"]], null] }]);
    expect(inner[0]!.value).toEqual([
      [expect.closeTo(38.48451, 5)],
      [expect.objectContaining({ code: "#N/A" })],
      [expect.closeTo(0.785398, 5)],
    ]);
  });

  it("take a range of a thousand rows in one call", async () => {
    const taking = catalogue.filter(
      (e) => firstVarying(e) >= 0 && (e.result.form !== "row" || e.result.main !== undefined),
    );
    const repeat = (r: Range): Range => Array.from({ length: 1000 }, () => r[0]!);
    const replies = await callAll(
      taking.map((e) => ({
        name: e.name,
        args: asSent(
          e,
          parseCall(e.examples[0]).args.map((r, i) => (i === firstVarying(e) && r !== null ? repeat(r) : r)),
        ),
      })),
    );
    replies.forEach((r, i) => {
      const rows = r.value as unknown[][];
      expect(rows.length, taking[i]!.name).toBe(1000);
      expect(rows[999], taking[i]!.name).toEqual(rows[0]);
      expect(typeof rows[0]![0], taking[i]!.name).not.toBe("object");
    });
  });

  it("read nothing after their last argument: the runtime appends its own", async () => {
    const [plain, more] = await callAll([
      { name: "AREA", args: [[["round 7"]], null] },
      { name: "AREA", args: [[["round 7"]], null, "metric", 5] },
    ]);
    expect(more!.value).toEqual(plain!.value);
  });
});
