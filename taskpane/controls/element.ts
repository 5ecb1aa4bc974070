type Attributes = Readonly<Record<string, string>>;

/** Makes an element with text and children; text only ever goes in as text. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children);
  return made;
}

/** The same for a drawing. */
export function drawn(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: readonly (Node | string)[]
): SVGElement {
  const made = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, String(value));
  made.append(...children);
  return made;
}

/** A button that does something here and now. */
export function button(label: string, act: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, label);
  made.addEventListener("click", act);
  return made;
}

/** A field with its label above it. */
export const field = (label: string, control: HTMLElement): HTMLElement =>
  element("p", { class: "field" }, element("label", { for: control.id }, label), control);

export const select = (id: string, choices: readonly (readonly [value: string, label: string])[]): HTMLSelectElement =>
  element("select", { id }, ...choices.map(([value, label]) => element("option", { value }, label)));

/** A row of a table whose first cell is its heading. */
export const row = (head: string, ...cells: readonly string[]): HTMLElement =>
  element("tr", {}, element("th", { scope: "row" }, head), ...cells.map((c) => element("td", {}, c)));
