import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { CellError } from "../../../functions/kinds/cell";
import { slots } from "../../../functions/bind/slots";
import { parseCall } from "../../../functions/bind/parseCall";
import { Memo } from "../../../functions/bind/memo";
import { driveTable, type Parts } from "./table";

const parts: Parts = { call, CellError, slots, parseCall, Memo, catalogue };

/** The parts again, with one piece of one file replaced. */
async function withFault(file: string, was: string, is: string): Promise<Parts> {
  const path = resolve(file);
  const source = readFileSync(path, "utf8");
  expect(source.split(was).length, `${file} must hold once: ${was}`).toBe(2);
  const result = await build({
    stdin: {
      contents:
        'export { call } from "./functions/bind/call"; export { catalogue } from "./functions/catalogue"; export { CellError } from "./functions/kinds/cell"; export { slots } from "./functions/bind/slots"; export { parseCall } from "./functions/bind/parseCall"; export { Memo } from "./functions/bind/memo";',
      resolveDir: process.cwd(),
      loader: "ts",
    },
    bundle: true,
    write: false,
    format: "cjs",
    plugins: [
      {
        name: "fault",
        setup: (b) =>
          b.onLoad({ filter: /\.ts$/ }, ({ path: loaded }) =>
            loaded === path ? { contents: source.replace(was, is), loader: "ts" } : undefined,
          ),
      },
    ],
  });
  const module = { exports: {} };
  new Function("module", "exports", result.outputFiles[0]!.text)(module, module.exports);
  return module.exports as Parts;
}

const faults: readonly (readonly [what: string, file: string, was: string, is: string])[] = [
  ["0 is taken as a value everywhere", "functions/kinds/cell.ts", "(cell === 0 && !zeroIsValue)", "false"],
  [
    "text is taken as a number",
    "functions/kinds/number.ts",
    'if (typeof cell !== "number") throw wrongType(cell ?? null, parameter, "a number");',
    "cell = Number(cell); if (Number.isNaN(cell)) throw wrongType(null, parameter, 'a number');",
  ],
  ["a blank row in the middle is calculated", "functions/bind/call.ts", "if (isGap(row))", "if (false as boolean)"],
  ["ranges of different size are cut to the shorter", "functions/bind/layout.ts", "a[axis] !== most[axis])", "false)"],
  ["units are not converted on the way out", "functions/bind/results.ts", "own / factor", "own"],
  ["an error in a cell is passed on as text", "functions/kinds/refusal.ts", "passing.has(error.code)", "false"],
  [
    "an optional blank is read",
    "functions/bind/items.ts",
    "return isBlankItem(line, at, laid) ?",
    "return isBlankItem(line, at, laid) && false ?",
  ],
];

describe("every argument of every function", () => {
  const outcome = driveTable(parts);

  it("refuses what it should, by name, in both unit systems", () => {
    expect(outcome.failures).toEqual([]);
  });

  it("accepts what it should: more than 95 % of the good values tried", () => {
    expect(outcome.tried).toBeGreaterThan(100);
    expect(outcome.accepted / outcome.tried, outcome.refused.join("\n")).toBeGreaterThan(0.95);
  });
});

describe("the table catches a fault planted in bind", () => {
  it.each(faults)("%s", async (what, file, was, is) => {
    const faulty = await withFault(file, was, is);
    expect(isCaught(faulty), what).toBe(true);
  });

  it("and finds nothing in a copy without one", async () => {
    const copy = await withFault(
      "functions/kinds/cell.ts",
      "(cell === 0 && !zeroIsValue)",
      "(cell === 0 && !zeroIsValue)",
    );
    expect(driveTable(copy).failures).toEqual([]);
    expect(unitsDisagree(copy)).toBe(false);
  });
});

/** A failure that the table names, units that disagree, or an error of our own thrown out of bind. */
function isCaught(faulty: Parts): boolean {
  try {
    return driveTable(faulty).failures.length > 0 || unitsDisagree(faulty);
  } catch {
    return true;
  }
}

/** 7 in round and 177.8 mm round are the same cut: 38.4845 in² is 248.287 cm². */
function unitsDisagree({ call: run, catalogue: all, Memo: M }: Parts): boolean {
  const area = all.find((e) => e.name === "AREA")!;
  const inch = run(area, [[["round 177.8 mm"]], [["inch"]]], new M())[0]![0] as number;
  const metric = run(area, [[["round 7 in"]], [["metric"]]], new M())[0]![0] as number;
  return Math.abs(inch * 6.4516 - metric) > 1e-9;
}
