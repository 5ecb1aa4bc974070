import { element } from "../controls/element";

/** Questions that stop everything else until they are answered. */

export interface Choice {
  readonly id: string;
  readonly label: string;
}

/** Asks; the id of the answer, "" where the question was left by Escape. `more` stands between the text and the answers. */
export function ask(text: string, choices: readonly Choice[], more: readonly Node[] = []): Promise<string> {
  const dialog = element("dialog", { class: "ask", "aria-labelledby": "ask-text" });
  const form = element("form", { method: "dialog" });
  form.append(
    element("p", { id: "ask-text" }, text),
    ...more,
    element(
      "div",
      { class: "answers" },
      ...choices.map(({ id, label }) => element("button", { value: id, id: `ask-${id}` }, label)),
    ),
  );
  dialog.append(form);
  document.body.append(dialog);
  const before = document.activeElement;
  return new Promise((done) => {
    dialog.addEventListener("close", () => {
      dialog.remove();
      if (before instanceof HTMLElement) before.focus();
      done(dialog.returnValue);
    });
    dialog.showModal();
  });
}

/** A question with boxes to tick; the values of those that are ticked, undefined where it was left. */
export async function askWhich(
  text: string,
  names: readonly string[],
  ticked: string,
  go: string,
): Promise<string[] | undefined> {
  const boxes = names.map((name, i) => {
    const box = element("input", { type: "checkbox", id: `which-${i}`, value: name });
    box.checked = name === ticked;
    return { box, line: element("div", {}, box, element("label", { for: box.id }, name)) };
  });
  const group = element("fieldset", {}, element("legend", {}, "Sheets"), ...boxes.map((b) => b.line));
  const answer = await ask(
    text,
    [
      { id: "go", label: go },
      { id: "no", label: "Cancel" },
    ],
    [group],
  );
  return answer === "go" ? boxes.filter((b) => b.box.checked).map((b) => b.box.value) : undefined;
}
