// @vitest-environment happy-dom
import { beforeEach, expect, it } from "vitest";
import { Store, firstState } from "../../taskpane/sheet/store";
import { materialView } from "../../taskpane/views/materialView";

let store: Store;
let view: HTMLElement;
const input = (): HTMLInputElement => view.querySelector("input#grade")!;
const card = (): HTMLElement => view.querySelector("article")!;
const status = (): string => view.querySelector('[role="status"]')!.textContent;
const type = (text: string): void => {
  input().value = text;
  input().dispatchEvent(new Event("input", { bubbles: true }));
};
const enter = (): void => {
  input().dispatchEvent(new KeyboardEvent("keydown", { key: "Enter", bubbles: true }));
};

beforeEach(() => {
  store = new Store(firstState);
  view = materialView(store);
  document.body.replaceChildren(view);
});

it("a grade that is found shows its card", () => {
  type("304");
  enter();
  expect([card().hidden, store.state.material?.key]).toEqual([false, "304"]);
});

it("a search that finds nothing leaves no card of the grade before, and names what begins alike", () => {
  type("4140");
  enter();
  type("4141");
  expect([card().hidden, store.state.material, store.state.matched]).toEqual([true, undefined, ""]);
  expect(status()).toContain("Not in the table: 4141.");
  expect(status()).toContain("SAE 4140");
  const before = [...view.querySelectorAll(".recents button")].map((button) => button.textContent);
  expect(before).toEqual(["4140 Cr-Mo steel"]);
});

it("trade names are found as typed and shown by the UNS number", () => {
  type("inconel 625");
  expect(view.querySelector("li .why")!.textContent).toBe("UNS N06625");
  enter();
  expect(status()).toBe("Alloy 625, found as UNS N06625, is shown below.");
});

it("an emptied field keeps the card", () => {
  type("304");
  enter();
  type("");
  expect(card().hidden).toBe(false);
});
