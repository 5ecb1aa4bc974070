import type { Pitch } from "../../src/blade/pitch";
import { contactRows } from "../../src/section/contactRows";
import { sectionStack } from "../../src/section/sectionStack";
import type { Shape } from "../../src/section/shape";
import { drawn } from "../controls/element";
import { outlinePath } from "./outlinePath";

const box = { width: 320, height: 190, left: 132, gap: 36, top: 8, bed: 6, jaw: 7 } as const;
type Stack = ReturnType<typeof sectionStack>;

const mostBars = 400;
const mostTeeth = 60;

interface Frame {
  readonly shape: Shape;
  readonly stack: Stack;
  /** Drawing units per mm; depth is the same on both sides. */
  readonly down: number;
}

/** Where every bar of the stack lies [mm]: rounds that nest lie in the hollows of the row below. */
function places(
  { layers, spread, barHeight }: Stack,
  { rows, columns, nested }: Shape,
): readonly (readonly [x: number, y: number])[] {
  const step = nested && rows > 1 ? layers[0]!.period : barHeight;
  return Array.from({ length: rows * columns }, (_, i) => {
    const r = Math.floor(i / columns);
    const shift = nested && r % 2 === 1 ? spread.spacing / 2 : 0;
    return [((i % columns) * spread.spacing + shift) * spread.secant, r * step] as const;
  });
}

/** The bars as they lie, on the bed and between the jaws of the vice. */
function bars({ shape, stack, down }: Frame): readonly SVGElement[] {
  const wide = stack.width * stack.spread.secant * down;
  const high = stack.height * down;
  const x0 = box.jaw + 6 + (box.left - wide) / 2;
  const corners = shape.outline!.loops.flat();
  const [left, top] = [
    Math.min(...corners.map((c) => c.x)) * stack.spread.secant,
    Math.min(...corners.map((c) => c.y)),
  ];
  const d = outlinePath(shape.outline!, stack.spread.secant);
  const all = places(stack, shape);
  const metal =
    all.length > mostBars
      ? [drawn("rect", { class: "metal", x: x0, y: box.top, width: wide, height: high })]
      : all.map(([x, y]) =>
          drawn("path", {
            class: "metal",
            d,
            "fill-rule": "evenodd",
            transform: `translate(${x0 + (x - left) * down} ${box.top + (y - top) * down}) scale(${down})`,
          }),
        );
  const jaw = (x: number): SVGElement =>
    drawn("rect", { class: "vice", x, y: box.top + high * 0.15, width: box.jaw, height: high * 0.85 });
  return [
    ...metal,
    jaw(x0 - box.jaw - 1),
    jaw(x0 + wide + 1),
    drawn("rect", {
      class: "vice",
      x: Math.max(0, x0 - 3 * box.jaw),
      y: box.top + high + 1,
      width: wide + 6 * box.jaw,
      height: box.bed,
    }),
  ];
}

/** Engaged width against the way down, with a line for every tooth of the pitch that stands in it. */
function profile({ shape, stack, down }: Frame, pitch: Pitch | undefined): readonly SVGElement[] {
  const rows = contactRows({ section: shape, steps: 160 });
  const widest = shape.profile().maximumWidth;
  const x0 = box.left + 2 * box.jaw + box.gap;
  const across = (box.width - x0 - 4) / widest;
  const high = stack.height * down;
  const at = (width: number, depth: number): string =>
    `${(x0 + width * across).toFixed(2)},${(box.top + depth * down).toFixed(2)}`;
  const points = [at(0, 0), ...rows.map((r) => at(r.width, r.depth)), at(0, stack.height)].join(" ");
  const teeth = pitch === undefined ? 0 : Math.floor(widest / pitch.mean);
  const every = Math.ceil(teeth / mostTeeth);
  const marks = Array.from(
    { length: every === 0 ? 0 : Math.floor(teeth / every) },
    (_, i) => x0 + (i + 1) * every * pitch!.mean * across,
  );
  const lines = marks.map((x) =>
    drawn("line", { class: "tooth", x1: x, x2: x, y1: box.top, y2: box.top + high, "clip-path": "url(#engaged)" }),
  );
  return [
    drawn("clipPath", { id: "engaged" }, drawn("polygon", { points })),
    drawn("polygon", { class: "engaged", points }),
    ...lines,
    drawn("line", { class: "axis", x1: x0, x2: x0, y1: box.top, y2: box.top + high }),
  ];
}

/** The cut face and, beside it at the same depth, how much of the band is in the work. Words say it again in `label`. */
export function sectionPicture(shape: Shape, pitch: Pitch | undefined, label: string): SVGElement {
  const stack = sectionStack(shape);
  const down = Math.min(
    (box.height - box.top - box.bed - 4) / stack.height,
    box.left / (stack.width * stack.spread.secant),
  );
  const frame = { shape, stack, down };
  const height = box.top + stack.height * down + box.bed + 4;
  return drawn(
    "svg",
    { viewBox: `0 0 ${box.width} ${height.toFixed(1)}`, role: "img", "aria-label": label, class: "picture" },
    ...bars(frame),
    ...profile(frame, pitch),
  );
}
