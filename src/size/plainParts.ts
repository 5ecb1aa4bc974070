import type { Parts } from "./sizeParts";
import type { Token } from "./sizeTokens";

const dimension = "(\\d{1,4}(?:\\.\\d{1,6})?)";
const plainSize = new RegExp(
  `^(round|square|hex|flat|tube|box) ${dimension}(?:x${dimension})?(?:x${dimension})?(?: (in|mm))?$`,
);

/**
 * The parts of a size in its plainest writing, a shape, decimal dimensions and at most one unit: "round 7", "flat 6x1 in".
 * Most sizes of a column are written so, and the full reader reads the same from them, slower.
 * @param text as it stands in the cell [text]
 * @returns parts as sizeParts gives them [-]; undefined for every other writing
 * @source definition
 */
export function plainParts(text: string): Parts | undefined {
  const found = plainSize.exec(text);
  if (found === null) return undefined;
  const numbers: Token[] = [];
  for (let i = 2; i <= 4 && found[i] !== undefined; i += 1) {
    if (i > 2) numbers.push({ kind: "x", text: "x", value: 0, fraction: false, unit: "", tag: "" });
    const written = found[i]!;
    const unit = i === 4 || found[i + 1] === undefined ? (found[5] ?? "") : "";
    numbers.push({ kind: "number", text: written, value: Number(written), fraction: false, unit, tag: "" });
  }
  return { shapes: [found[1]!], numbers, schedule: undefined, cold: false, flat: false };
}
