import { element, field } from "./element";
import { readSize } from "../sheet/readings";
import type { Store } from "../sheet/store";

/** The size, typed once for the whole pane. */
export function sectionField(store: Store, id: string): HTMLElement {
  const input = element("input", {
    id,
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    maxlength: "120",
    "aria-describedby": `${id}-problem`,
  });
  const problem = element("p", { id: `${id}-problem`, class: "problem", role: "status" });
  input.addEventListener("input", () => {
    store.set({ section: input.value });
  });
  store.watch(["section", "units"], ({ section, units }) => {
    if (input.value !== section) input.value = section;
    const read = readSize(section, units);
    problem.textContent = "problem" in read ? read.problem : "";
    input.setAttribute("aria-invalid", String("problem" in read));
  });
  return element("div", {}, field("Size of the work", input), problem);
}
