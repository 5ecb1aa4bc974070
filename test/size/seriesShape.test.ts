import { expect, it } from "vitest";
import { seriesFamilies } from "../../src/data/seriesWords";
import { seriesRows } from "../../src/size/seriesRows";
import { seriesShape } from "../../src/size/seriesShape";

const shape = (name: string, at: number) =>
  seriesShape(seriesRows(seriesFamilies.find((family) => family.name === name)!).find(({ cells }) => cells[0] === at)!);

it.each([
  ["JIS I", 200, { slope: 0.1405, toe: 5, root: 10 }], // JIS G 3192: tan 8°
  ["JIS C", 150, { slope: 0.0875, root: 10, toe: 5 }], // tan 5°
  ["GOST У", 20, { slope: 0.1, depth: 200, width: 76, web: 5.2, flange: 9, root: 9.5, toe: 4 }], // GOST 8240-97
  ["GOST П", 20, { slope: 0, depth: 200, width: 76, web: 5.2, flange: 9, root: 9.5, toe: 5.5 }],
  ["GOST I", 20, { slope: 0.12, depth: 200, width: 100, web: 5.2, flange: 8.4 }], // GOST 8239-89
  ["GB C", 20, { slope: 0.1 }], // GB/T 706: 1 : 10
  ["AU PFC", 150, { slope: 0, depth: 150, width: 75, web: 6, flange: 9.5 }], // AS/NZS 3679.1
  ["T", 50, { kind: "tee", depth: 50, width: 50, web: 6, flange: 6, root: 6, toe: 3 }], // EN 10055
])("%s %d", (name, at, expected) => {
  expect(shape(name, at)).toMatchObject(expected);
});

it("toes of GB/T 706 angles are a third of the thickness, those of AS/NZS 3679.1 angles printed apart from the thickness as rolled", () => {
  const angle = shape("GB L", 63);
  if (angle.kind !== "angle") throw new Error("not an angle");
  expect(angle.toe).toBeCloseTo(angle.thickness / 3, 9);
  expect(shape("AU EA", 90)).toMatchObject({ kind: "angle", long: 90, short: 90, toe: 5 });
});
