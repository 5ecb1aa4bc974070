import type { Material } from "../../src/material/material";
import { nearestDesignations } from "../../src/material/nearestDesignations";
import { compactDesignation } from "../../src/material/compactDesignation";
import { searchMaterials, type SearchHit } from "../../src/material/searchMaterials";
import { element } from "./element";
import type { Store } from "../sheet/store";

const most = 30;

const option = ({ material, matched }: SearchHit, i: number): HTMLElement =>
  element(
    "li",
    { role: "option", id: `grade-${i}`, "aria-selected": "false" },
    element("span", { class: "name" }, material.name),
    element("span", { class: "quiet" }, ` ${material.condition}`),
    element("span", { class: "why" }, matched),
  );

/** What to do when nothing is found; a grade is never guessed. */
function noMatch(query: string): string {
  const near = nearestDesignations(compactDesignation(query.slice(0, 120)));
  const begin = near.length === 0 ? "" : ` In the table and beginning like it, but other grades: ${near.join(", ")}.`;
  return `Not in the table: ${query.slice(0, 40)}.${begin} Check the digits, or try another of its numbers: AISI, UNS, W.-Nr., EN or JIS. A grade that is missing goes into the shop block, in an Own material row.`;
}

interface Parts {
  readonly input: HTMLInputElement;
  readonly list: HTMLElement;
  readonly status: HTMLElement;
}

/** A combobox after the ARIA pattern: the focus stays in the input, arrows walk the list, Enter takes, Escape clears. */
class Combobox {
  private hits: readonly SearchHit[] = [];
  private active = -1;

  constructor(
    private readonly parts: Parts,
    private readonly take: (hit: SearchHit) => void,
    private readonly miss: () => void,
  ) {
    const { input, list } = parts;
    input.addEventListener("input", () => {
      this.search();
    });
    input.addEventListener("keydown", (e) => {
      this.key(e);
    });
    // The focus must not leave the input when an option is pressed.
    list.addEventListener("pointerdown", (e) => {
      e.preventDefault();
    });
    list.addEventListener("click", (e) => {
      const at = [...list.children].findIndex((li) => li.contains(e.target as Node));
      if (at >= 0) this.choose(at);
    });
  }

  private say(text: string): void {
    this.parts.status.textContent = text;
  }

  private search(): void {
    const query = this.parts.input.value.trim();
    this.hits = query === "" ? [] : searchMaterials(query, most);
    this.parts.list.replaceChildren(...this.hits.map(option));
    this.open(this.hits.length > 0);
    this.move(-1);
    const count = this.hits.length;
    // The card of another grade below "not in the table" would be taken for the answer.
    if (query !== "" && count === 0) this.miss();
    this.say(
      query === ""
        ? ""
        : count === 0
          ? noMatch(query)
          : count === most
            ? `${most} or more found; type more of the name to narrow it.`
            : `${count} found.`,
    );
  }

  private open(on: boolean): void {
    this.parts.list.hidden = !on;
    this.parts.input.setAttribute("aria-expanded", String(on));
  }

  private move(to: number): void {
    const { input, list } = this.parts;
    list.children[this.active]?.setAttribute("aria-selected", "false");
    this.active = to;
    const option = list.children[to];
    option?.setAttribute("aria-selected", "true");
    option?.scrollIntoView({ block: "nearest" });
    if (option === undefined) input.removeAttribute("aria-activedescendant");
    else input.setAttribute("aria-activedescendant", option.id);
  }

  private choose(at: number): void {
    const hit = this.hits[at];
    if (hit === undefined) return;
    this.parts.input.value = hit.material.name;
    this.open(false);
    this.move(-1);
    this.say(`${hit.material.name}, found as ${hit.matched}, is shown below.`);
    this.take(hit);
  }

  private key(e: KeyboardEvent): void {
    const count = this.hits.length;
    const isOpen = !this.parts.list.hidden;
    if (e.key === "ArrowDown" || e.key === "ArrowUp") {
      e.preventDefault();
      if (count === 0) return;
      this.open(true);
      const step = e.key === "ArrowDown" ? 1 : -1;
      this.move(this.active < 0 && step < 0 ? count - 1 : (this.active + step + count) % count);
    } else if (e.key === "Enter" && isOpen) {
      e.preventDefault();
      this.choose(Math.max(0, this.active));
    } else if (e.key === "Escape") {
      e.preventDefault();
      if (isOpen) this.open(false);
      else {
        this.parts.input.value = "";
        this.search();
      }
      this.move(-1);
    }
  }
}

const mostRecents = 6;

/** Search over every grade and designation; what is chosen becomes the pane's material, and a search that finds nothing leaves none. */
export function materialSearch(store: Store): HTMLElement {
  const input = element("input", {
    id: "grade",
    type: "text",
    role: "combobox",
    "aria-expanded": "false",
    "aria-controls": "grades",
    "aria-autocomplete": "list",
    autocomplete: "off",
    spellcheck: "false",
    maxlength: "120",
    placeholder: "304, S17400, 1.4301, brass",
  });
  const list = element("ul", { id: "grades", role: "listbox", "aria-label": "Grades found", class: "options" });
  list.hidden = true;
  const status = element("p", { role: "status", class: "quiet" });
  const take = ({ material, matched }: { readonly material: Material; readonly matched: string }): void => {
    store.set({
      material,
      matched,
      recents: [material, ...store.state.recents.filter((m) => m !== material)].slice(0, mostRecents),
    });
  };
  const miss = (): void => {
    store.set({ material: undefined, matched: "" });
  };
  new Combobox({ input, list, status }, take, miss);
  return element(
    "div",
    { class: "search" },
    element("label", { for: "grade" }, "Grade or any of its numbers"),
    input,
    list,
    status,
  );
}
