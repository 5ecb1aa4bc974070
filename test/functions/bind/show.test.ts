import { describe, expect, it } from "vitest";
import type { Entry } from "../../../functions/bind/entry";
import { readShow } from "../../../functions/bind/show";
import { catalogue } from "../../../functions/catalogue";
import type { Range } from "../../../functions/kinds/cell";
import { InputError } from "../../../src/errors";
import { both, inches, rows } from "./fixture";

describe("what show asks for", () => {
  it("is the main result when it is left out or blank", () => {
    expect(readShow(both, null)).toEqual({ columns: ["half"], card: false });
    expect(readShow(both, [["", null]])).toEqual({ columns: ["half"], card: false });
  });

  it("is a name, a row of names, all, or a card", () => {
    expect(readShow(both, [[" Double "]])).toEqual({ columns: ["double"], card: false });
    expect(readShow(both, [["said", "half"]])).toEqual({ columns: ["said", "half"], card: false });
    expect(readShow(both, [["ALL"]])).toEqual({ columns: ["half", "double", "said"], card: false });
    expect(readShow(both, [["card"]])).toEqual({ columns: ["half", "double", "said"], card: true });
  });

  it("is refused with the names that there are", () => {
    expect(() => readShow(both, [["third"]])).toThrow(/is not a result; choose from/);
    expect(() => readShow(both, [["half"], ["said"]])).toThrow(/one cell or one row of names/);
    expect(() => readShow(both, [["half", ""]])).toThrow(/has an empty cell among its names/);
    expect(() => readShow(both, [["half", 3]])).toThrow(/is not text/);
  });

  it("is nothing to ask of one result, or of a table", () => {
    expect(readShow(inches, null)).toEqual({ columns: [""], card: false });
    expect(readShow(rows, null)).toEqual({ columns: ["depth", "said"], card: false });
  });
});

describe("names of several words", () => {
  const quote = catalogue.find(({ name }) => name === "QUOTE")!;
  it.each(["cost each", "  Cost   each ", "COST\neach", "cost\u00a0each"])("%j is the cost each", (name) => {
    expect(readShow(quote, [[name]]).columns).toEqual(["costEach"]);
  });
  it.each(["costeach", "cost-each", ""])("%j is none", (name) => {
    expect(() => readShow(quote, [["price each", name]])).toThrow(InputError);
  });
});

describe("refusals whole", () => {
  const refused = (range: Range, of = both) => {
    try {
      readShow(of, range);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const { reason, parameter, problem, facts } = error;
      return [reason, parameter, problem.replace(/\{(n\w+)\}/g, (_, name: string) => String(facts[name]))];
    }
    throw new Error("not refused");
  };
  it.each([
    [[["third"]], '"third" is not a result; choose from half, double, said, all or card'],
    [[["n".repeat(50)]], `"${"n".repeat(40)}" is not a result; choose from half, double, said, all or card`],
    [[["half"], ["said"]], "{parameter} takes one cell or one row of names"],
    [[["half", ""]], "{parameter} has an empty cell among its names"],
    [[["half", null]], "{parameter} has an empty cell among its names"],
    [[["half", 3]], "{parameter} is not text"],
    [[["half", "card"]], '"card" is not a result; choose from half, double, said, all or card'],
  ] as const)("%j: %s", (range, says) => {
    expect(refused(range as unknown as Range)).toEqual(["invalid", "show", says]);
  });
  it("a function without a main result wants a name", () => {
    const result = { ...(both.result as Extract<Entry["result"], { form: "row" }>), main: undefined };
    expect(refused([[""]], { ...both, result } as never)).toEqual([
      "invalid",
      "show",
      "{parameter} is empty; choose from half, double, said, all or card",
    ]);
  });
});
