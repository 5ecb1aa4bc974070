import { choosePitch } from "../../src/cutting/choosePitch";
import { readPitch } from "../../src/blade/readPitch";
import type { Pitch } from "../../src/blade/pitch";
import { teethInCut } from "../../src/cutting/teethInCut";
import type { Shape } from "../../src/section/shape";
import { defaultShop } from "../../src/shop/defaultShop";
import { button, element, field, row } from "../controls/element";
import { answer, brief, measured, readSize, type Answer } from "../sheet/readings";
import { sectionField } from "../controls/sectionField";
import { sectionPicture } from "./sectionPicture";
import type { State, Store } from "../sheet/store";

/** The pitch to mark: as typed, else the one to order for the grade of the card, else none. */
function pitchFor(shape: Shape, typed: string, { material, units }: State): Answer<Pitch | undefined> {
  if (typed.trim() !== "") return answer(units, () => readPitch(typed));
  if (material === undefined) return { value: undefined };
  const blade = material.group?.blades["bi-metal"] === undefined ? "carbide" : "bi-metal";
  return answer(units, () => choosePitch({ section: shape, material, blade, shop: defaultShop }));
}

const whence = (pitch: Pitch, typed: string, { material }: State): string =>
  typed.trim() === "" ? `${pitch.text}, to order for ${material?.name ?? ""}` : pitch.text;

function figures(shape: Shape, pitch: Pitch | undefined, typed: string, state: State): HTMLElement {
  const { units } = state;
  const profile = shape.profile();
  const teeth = pitch && teethInCut({ profile, pitch });
  const count = (n: number): string => brief(n, "count", units);
  const rows = [
    row("read as", shape.note),
    row("cut area", measured(profile.area, "area", units)),
    row("height", measured(profile.height, "size", units)),
    row("mean width", measured(profile.meanWidth, "size", units)),
    row("maximum width", measured(profile.maximumWidth, "size", units)),
    row("longest single contact", measured(profile.longestContact, "size", units)),
    row("thinnest lasting contact", measured(profile.thinnest, "size", units)),
    ...(pitch === undefined || teeth === undefined
      ? []
      : [
          row("pitch marked", whence(pitch, typed, state)),
          row(
            "teeth in the cut",
            `${count(teeth.mean)} on the mean width, ${count(teeth.most)} at most, ${count(teeth.fewest)} in the thinnest part`,
          ),
        ]),
  ];
  return element("table", { "aria-label": "Figures of the section" }, element("tbody", {}, ...rows));
}

const pictureLabel = (shape: Shape, pitch: Pitch | undefined): string =>
  `Cut face of ${shape.note} on the bed of the saw, and beside it the engaged width down the travel${pitch === undefined ? "" : ` with the teeth of a ${pitch.text} pitch`}`;

function drawing(shape: Shape, typed: string, state: State): readonly Node[] {
  const pitch = pitchFor(shape, typed, state);
  const value = "value" in pitch ? pitch.value : undefined;
  if (shape.outline === undefined)
    return [element("p", {}, `An area alone has no shape to draw: ${measured(shape.area, "area", state.units)}.`)];
  return [
    sectionPicture(shape, value, pictureLabel(shape, value)),
    element(
      "p",
      { class: "quiet" },
      value === undefined
        ? "Left: the cut face on the bed, between the jaws. Right: how much of the band is in the work, from top to bottom."
        : "Left: the cut face on the bed, between the jaws. Right: how much of the band is in the work, from top to bottom; each line is a tooth.",
    ),
    ...("problem" in pitch ? [element("p", { class: "problem" }, pitch.problem)] : []),
    figures(shape, value, typed, state),
  ];
}

/** Takes the size from the sheet: the selected cell, where it holds one. */
function fromSheet(store: Store): HTMLElement {
  const take = button("", () => {
    store.set({ section: String(store.state.selection?.value ?? "") });
  });
  const box = element("p", {}, take);
  store.watch(["selection", "units"], ({ selection, units }) => {
    const text = typeof selection?.value === "string" ? selection.value : "";
    box.hidden = text === "" || "problem" in readSize(text, units);
    take.textContent = `Draw the selected cell: ${text.slice(0, 40)}`;
  });
  return box;
}

/** The size as it lies in the saw. */
export function sectionView(store: Store): HTMLElement {
  const pitch = element("input", {
    id: "pitch",
    type: "text",
    autocomplete: "off",
    maxlength: "20",
    placeholder: "3/4, or left to the grade",
  });
  const out = element("div");
  const draw = (): void => {
    const shape = readSize(store.state.section, store.state.units);
    out.replaceChildren(...("problem" in shape ? [] : drawing(shape.value, pitch.value, store.state)));
  };
  pitch.addEventListener("input", draw);
  store.watch(["section", "units", "material"], draw);
  return element(
    "div",
    {},
    element("h2", {}, "Section"),
    sectionField(store, "size"),
    fromSheet(store),
    field("Pitch, teeth per inch", pitch),
    out,
  );
}
