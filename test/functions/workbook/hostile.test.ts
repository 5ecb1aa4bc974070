import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folder, recalc } from "./fixture";
import { hostileBooks, sound } from "./hostileBooks";

describe("recalc, given a file that is no sound workbook", () => {
  const dir = folder();
  it.each(hostileBooks)("%s: one line, nothing written", (_, make, says) => {
    const own = folder();
    const [file, out] = [join(own, "book.xlsx"), join(own, "out.xlsx")];
    writeFileSync(file, make());
    const run = recalc(file, "--write", out, "--send", `${out}2`, "--only", "Quote");
    expect(run.status).toBe(2);
    expect(run.stderr.trimEnd()).toMatch(says);
    expect(run.stderr.trimEnd().split("\n")).toHaveLength(1);
    expect([run.stdout, existsSync(out), existsSync(`${out}2`), existsSync(`${out}.part`)]).toEqual([
      "",
      false,
      false,
      false,
    ]);
    expect(run.seconds).toBeLessThan(5);
    expect(run.memory).toBeLessThan(512);
  });

  it.each([
    [["nowhere.xlsx"], /nowhere\.xlsx is not there/],
    [[dir], /is a folder/],
    [[], /usage: npm run recalc/],
    [["a.xlsx", "--send", "b.xlsx"], /usage/],
    [["a.xlsx", "--write", "./a.xlsx"], /would be written over/],
    [["a.xlsx", "--colour"], /usage/],
  ] as const)("%j: one line, exit 2", (args, says) => {
    const run = recalc(...args);
    expect(run.status).toBe(2);
    expect(run.stderr.trimEnd()).toMatch(says);
    expect(run.stderr.trimEnd().split("\n")).toHaveLength(1);
  });

  it("a sound one is read", () => {
    const file = join(dir, "sound.xlsx");
    writeFileSync(file, sound());
    const run = recalc(file);
    expect([run.status, run.stderr]).toEqual([0, ""]);
    expect(readFileSync(file)).toHaveLength(sound().length);
  });
});
