import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { parseCall } from "../../../functions/bind/parseCall";
import { Memo } from "../../../functions/bind/memo";

describe("the cache of parsed texts", () => {
  it("keeps a value per reader and key, and is emptied when full", () => {
    const memo = new Memo(2);
    let reads = 0;
    const read = (reader: string, key: string) => memo.get(reader, "", key, () => ({ reader, key, n: (reads += 1) }));
    expect([read("a", "x").n, read("a", "x").n, read("b", "x").n]).toEqual([1, 1, 2]);
    expect([read("a", "y").n, read("a", "z").n, read("a", "x").n]).toEqual([3, 4, 5]);
  });

  it("changes no result: every example with a warm, a cold and a tiny cache", () => {
    const warm = new Memo();
    const tiny = new Memo(1);
    for (const e of catalogue) {
      for (const formula of e.examples) {
        const { args } = parseCall(formula);
        const cold = call(e, args, new Memo());
        for (const memo of [warm, warm, tiny]) expect(call(e, args, memo), formula).toEqual(cold);
      }
    }
  });

  it("keeps no refusal", () => {
    const memo = new Memo();
    let tries = 0;
    const read = () => {
      tries += 1;
      throw new Error("refused");
    };
    expect(() => memo.get("a", "", "x", read)).toThrow();
    expect(() => memo.get("a", "", "x", read)).toThrow();
    expect(tries).toBe(2);
  });
});
