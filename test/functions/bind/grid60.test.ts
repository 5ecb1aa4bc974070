import { expect, it } from "vitest";
import { call } from "../../../functions/bind/call";
import { catalogue } from "../../../functions/catalogue";
import { CellError, type Range } from "../../../functions/kinds/cell";
import { Memo } from "../../../functions/bind/memo";
import { builtInMaterials } from "../../../src/material/builtInMaterials";

it("60 materials × 3 saws in one formula: the limit of each, in words, or its stated refusal", () => {
  const grades: Range = builtInMaterials()
    .filter((m) => m.isDefault && m.group !== undefined)
    .slice(0, 60)
    .map((m) => [m.key]);
  const block: Range = [
    ["Units", "inch", null, null],
    ["Saw", "small", "medium", "large"],
    ["Motor power", 1.5, 5, 12],
    ["Band width", 1.06, 1.34, 2.13],
    ["Minimum band speed", 65, 50, 33],
    ["Maximum band speed", 260, 330, 490],
    ["Maximum feed", 10, 20, 40],
  ];
  const cutdata = catalogue.find((e) => e.name === "CUTDATA")!;
  const got = call(
    cutdata,
    [[["round 7 in"]], grades, [["carbide"]], [["limit"]], null, block, [["small", "medium", "large"]]],
    new Memo(),
  );
  expect([got.length, got[0]!.length]).toEqual([60, 3]);
  for (const row of got)
    for (const cell of row)
      expect(cell instanceof CellError ? cell.text : cell).toMatch(
        /rate|Motor|Feed force|Gullets|Tooth load|Greatest|speed|too hard/,
      );
  const first = new Set(
    got
      .flat()
      .filter((c) => typeof c === "string")
      .map((c) => (c as string).split(/[ :(]/)[0]),
  );
  expect(first.size).toBeGreaterThan(2);
});
