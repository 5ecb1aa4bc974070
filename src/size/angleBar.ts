import { InputError } from "../errors";
import type { Units } from "../quantities";
import type { Bar } from "./bar";
import { rolledRow } from "./rolledRow";
import { rolledShape } from "./rolledShape";
import { seriesBar } from "./seriesBar";
import { sizeUnits, type Dimension } from "./sizeUnits";
import type { Token } from "./sizeTokens";
import { wrongCount } from "./wrongCount";

/**
 * An angle, leg x leg x thickness or leg x thickness. Legs of 20 and more are millimetres: American legs end at 12 in, European ones begin at
 * 20 mm. Sizes that are in no table are calculated with sharp corners.
 * @param numbers as written [-]
 * @param defaultUnit unit of bare numbers [text]
 * @returns the bar, with its published area where the tables have one [-]
 * @throws InputError "invalid": wrong number of dimensions, thickness not smaller than the legs
 * @source ASTM A6/A6M, EN 10056-1
 */
export function angleBar(numbers: readonly Token[], defaultUnit: Units): Bar {
  const found = numbers.length;
  if (found < 2 || found > 3) throw wrongCount("angle", "leg x leg x thickness (angle 4x4x1/2)", found, 3);
  const largest = Math.max(...numbers.map(({ value }) => value));
  const { list, notes } = sizeUnits(numbers, "angle", largest >= 20 ? "mm" : "in", defaultUnit);
  const thickness = list.find(({ tag }) => tag === "wall") ?? list[found - 1]!;
  const [long, short] = legs(list.filter((dimension) => dimension !== thickness));
  checkThickness(thickness, short);
  const listed = tableAngle([long, short, thickness]);
  if (listed !== undefined) return { ...listed, notes: [...notes, ...listed.notes] };
  const metric = [long, short, thickness].map(({ mm }) => ({ ...numbers[0]!, value: Number(mm.toFixed(6)), unit: "" }));
  const further = seriesBar("l", metric);
  if (further !== undefined) return { ...further, notes: [...notes, ...further.notes] };
  const text = `angle ${[long, short, thickness].map((dimension) => dimension.text).join(" x ")}`;
  const shape = { kind: "angle" as const, long: long.mm, short: short.mm, thickness: thickness.mm, root: 0, toe: 0 };
  return { text, notes: [...notes, "not in the tables: calculated with sharp corners"], shape };
}

function checkThickness(thickness: Dimension, short: Dimension): void {
  // 6x4 1/2 would else be an angle 6x6x4-1/2.
  if (2 * thickness.mm <= short.mm) return;
  const how = thickness.mm >= short.mm ? "not smaller than" : "more than half of";
  const facts = { thickness: thickness.text, leg: short.text };
  throw new InputError(
    "invalid",
    "section",
    `the thickness {thickness} is ${how} the {leg} leg; angle is written leg x leg x thickness`,
    facts,
  );
}

function tableAngle(dimensions: readonly Dimension[]): Bar | undefined {
  for (const unit of ["in", "mm"] as const) {
    const sizes = dimensions.map(({ mm }) => Number((mm / (unit === "in" ? 25.4 : 1)).toFixed(6)));
    const row = rolledRow("L", sizes.join("x"), unit);
    if (row === undefined) continue;
    const { shape, area } = rolledShape(row);
    const text = unit === "in" ? `L${sizes.map(inchFraction).join("X")}` : `L ${sizes.join("x")}`;
    return area === undefined ? { text, notes: ["area calculated"], shape } : { text, notes: [], shape, area };
  }
  return undefined;
}

function legs([first, second]: readonly Dimension[]): readonly [Dimension, Dimension] {
  const other = second ?? first!;
  return first!.mm >= other.mm ? [first!, other] : [other, first!];
}

function inchFraction(value: number): string {
  const [whole, sixteenths] = [Math.floor(value), Math.round((value % 1) * 16)];
  if (sixteenths === 0) return String(whole);
  const shared = [8, 4, 2, 1].find((divisor) => sixteenths % divisor === 0)!;
  return `${whole === 0 ? "" : `${whole}-`}${sixteenths / shared}/${16 / shared}`;
}
