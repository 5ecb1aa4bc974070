import { LexerTreeBuilder, sequenceNodeType, type ISequenceNode } from "@univerjs/engine-formula";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellErrors, isError, isYounger } from "../../../functions/formula/cellErrors";
import { rewritten, sheetNamed, tableWords, tokensOf, type TokenKind } from "../../../functions/formula/tokens";

const cut = (formula: string): string =>
  tokensOf(formula)
    .map(({ kind, text }) => `${kind} ${text}`)
    .join(" | ");

describe("the tokens of a formula (grammar: ECMA-376-1, 18.17.2)", () => {
  it.each([
    ['="a ""b"""&"it\'s [x]"', 'operator = | text "a ""b""" | operator & | text "it\'s [x]"'],
    ["'It''s (1)'!$A$1:B$2", "sheet 'It''s (1)'! | reference $A$1:B$2"],
    ["Sheet1!A:$C+3:$5", "sheet Sheet1! | reference A:$C | operator + | reference 3:$5"],
    ["2024!A1+Jan:Mar!B2", "sheet 2024! | reference A1 | operator + | sheet Jan:Mar! | reference B2"],
    ["Q!A1:Q!B2", "sheet Q! | reference A1 | operator : | sheet Q! | reference B2"],
    ["[1]Prices!A1", "sheet [1]Prices! | reference A1"],
    ["'C:\\x\\[b.xlsx]Bill''s'!A1", "sheet 'C:\\x\\[b.xlsx]Bill''s'! | reference A1"],
    ["[2]!_xldudf_SAW_AREA(A2)", "sheet [2]! | function _xldudf_SAW_AREA | open ( | reference A2 | close )"],
    ["A7#*SORT(B1)#", "reference A7# | operator * | function SORT | open ( | reference B1 | close ) | operator #"],
    [
      "A1:OFFSET(B1,1,)",
      "reference A1 | operator : | function OFFSET | open ( | reference B1 | separator , | number 1 | separator , | close )",
    ],
    ["A1:B2 B1:C3", "reference A1:B2 | space   | reference B1:C3"],
    ["Lines[[#This Row],[a b]]*2", "table Lines[[#This Row],[a b]] | operator * | number 2"],
    ["[@size]&Lines[a'[b']]", "table [@size] | operator & | table Lines[a'[b']]"],
    ['Lines[[a]:[b (c"]]', 'table Lines[[a]:[b (c"]]'],
    [
      '{1,-2.5;"a",TRUE}',
      'open { | number 1 | separator , | operator - | number 2.5 | separator ; | text "a" | separator , | logical TRUE | close }',
    ],
    ["1.5e-3+.5+2E+10%", "number 1.5e-3 | operator + | number .5 | operator + | number 2E+10 | operator %"],
    ["_xlfn._xlws.SORT(x)", "function _xlfn._xlws.SORT | open ( | name x | close )"],
    ["SAW.AREA (A1)", "function SAW.AREA | space   | open ( | reference A1 | close )"],
    [
      "LOG10(1)+ATAN2(1,2)",
      "function LOG10 | open ( | number 1 | close ) | operator + | function ATAN2 | open ( | number 1 | separator , | number 2 | close )",
    ],
    ["true<>FALSE()", "logical true | operator <> | function FALSE | open ( | close )"],
    ["#N/A=#DIV/0!", "error #N/A | operator = | error #DIV/0!"],
    ["Sheet1!#REF!", "sheet Sheet1! | error #REF!"],
    [
      "XFD1048576+XFE1+A1048577+TAX_2024",
      "reference XFD1048576 | operator + | name XFE1 | operator + | name A1048577 | operator + | name TAX_2024",
    ],
    ["Länge.1*größe\\2", "name Länge.1 | operator * | name größe\\2"],
    ["@A1<=1e", "operator @ | reference A1 | operator <= | unknown 1e"],
    ['A1&"open', 'reference A1 | operator & | unknown "open'],
    ["A1+Lines[[a]", "reference A1 | operator + | name Lines | unknown [[a]"],
    ["'a'+!\u{1F600}", "unknown 'a' | operator + | unknown ! | unknown \u{1F600}"],
    ["", ""],
  ])("%s", (formula, tokens) => expect(cut(formula)).toBe(tokens));

  it("have a place each, and say what they hold", () => {
    const [, at, table] = tokensOf("='It''s'!Lines[@[cut minutes]]");
    expect([at!.start, at!.end, table!.start, table!.end]).toEqual([1, 9, 9, 30]);
    expect(sheetNamed(at!)).toBe("It's");
    expect(tableWords(table!)).toEqual({ here: true, words: ["cut minutes"] });
    expect(rewritten("A1+A1", ({ text }, i) => (i === 0 ? "B1" : text))).toBe("B1+A1");
  });

  it("are the formula again, whatever it is", () => {
    const piece = fc.oneof(
      fc.constantFrom(
        ..."'\"[]{}(),;:!#$@%\\. \n",
        "''",
        '""',
        "A1",
        "Lines[",
        "SAW.AREA(",
        "1e5",
        "#N/A",
        "'x'!",
        "[1]",
      ),
      fc.string({ unit: "binary", maxLength: 3 }),
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
        const formula = pieces.join("");
        const tokens = tokensOf(formula);
        expect(tokens.map((t) => t.text).join("")).toBe(formula);
        for (const { text, start, end } of tokens) expect(formula.slice(start, end)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    '"',
    "'",
    "[",
    "(",
    "[a",
    "[a]",
    "a[",
    "a:",
    "A1:",
    "1e",
    "a  ",
    "a!",
    "'a",
    "'a''",
    "\"'[",
    "$",
    "#",
    "\ud800",
    "[[a]",
  ])("100,000 characters of %j take no second", (piece) => {
    // The quickest of three, by the processor: the machine is shared.
    const times = [1, 2, 3].map(() => {
      const before = process.cpuUsage();
      tokensOf(piece.repeat(100_000 / piece.length));
      tokensOf(`a${" ".repeat(100_000)}`);
      return process.cpuUsage(before).user / 1000;
    });
    expect(Math.min(...times)).toBeLessThan(1000);
  });
});

/** Formulas by a grammar, without what the engine's lexer reads in another way: blanks, tables, what spills, arrays in sums. */
const { formula } = fc.letrec<{ formula: string; value: string; call: string }>((tie) => {
  const column = fc.constantFrom("A", "b", "Z", "AA", "XFD").chain((c) => fc.constantFrom(c, `$${c}`));
  const row = fc.constantFrom("1", "12", "1048576").chain((r) => fc.constantFrom(r, `$${r}`));
  const cell = fc.tuple(column, row).map((p) => p.join(""));
  const area = fc.oneof(cell, ...[cell, column, row].map((part) => fc.tuple(part, part).map((ends) => ends.join(":"))));
  const sheet = fc.constantFrom("", "", "Sheet1!", "Größe!", "'It''s (1), \"x\"'!", "'a+b'!", "[1]Prices!");
  const reference = fc.tuple(sheet, area).map((p) => p.join(""));
  const text = fc.constantFrom('""', '"round 7"', '"A1,(B2"', '"it\'s [x]"', '"SUM(1)"', '"{1;2}"');
  const number = fc.constantFrom("0", "12", "2.54", "1.5E+3", "7e2", "3E-2");
  const array = fc.constantFrom("{1,2;3,4}", '{"a","b;c"}', "{-1,TRUE}");
  const name = fc.constantFrom("Setup", "kerf_1", "Länge.x", "TRUE", "#N/A", "#REF!");
  return {
    value: fc.oneof(
      { maxDepth: 3 },
      reference,
      text,
      number,
      name,
      tie("call"),
      tie("formula").map((f) => `(${f})`),
    ),
    call: fc
      .tuple(
        fc.constantFrom("SUM", "SAW.CUTTIME", "_xlfn.XLOOKUP", "LOG10", "_xldudf_SAW_AREA"),
        fc.array(fc.oneof({ maxDepth: 3 }, fc.constant(""), array, tie("formula")), { minLength: 1, maxLength: 3 }),
      )
      .map(([called, args]) => `${called}(${args.join(",")})`),
    formula: fc
      .tuple(tie("value"), fc.array(fc.tuple(fc.constantFrom(..."+-*/^&=<>"), tie("value")), { maxLength: 2 }))
      .map(([first, more]) => first + more.map((p) => p.join("")).join("")),
  };
});

describe("against the grid engine's own lexer", () => {
  const lexer = new LexerTreeBuilder();
  const nodes = (text: string, ...types: readonly sequenceNodeType[]): string[] =>
    (lexer.sequenceNodesBuilder(`=${text}`) ?? [])
      .filter((n): n is ISequenceNode => typeof n !== "string" && types.includes(n.nodeType))
      .map((n) => n.token);
  /** Tokens of some kinds outside array constants, each with the sheet that stands before it. */
  const found = (text: string, ...kinds: readonly TokenKind[]): string[] => {
    const all = tokensOf(text);
    let inArray = false;
    return all.flatMap((t, i) => {
      if (t.text === "{" || t.text === "}") inArray = t.text === "{";
      const sheet = all[i - 1]?.kind === "sheet" ? all[i - 1]!.text : "";
      return kinds.includes(t.kind) && !inArray ? [sheet + t.text] : [];
    });
  };

  it("finds the same references, texts, numbers, calls and names", () => {
    fc.assert(
      fc.property(formula, (text) => {
        expect(found(text, "reference")).toEqual(nodes(text, sequenceNodeType.REFERENCE));
        expect(found(text, "text")).toEqual(nodes(text, sequenceNodeType.STRING));
        expect(found(text, "number")).toEqual(nodes(text, sequenceNodeType.NUMBER));
        expect(found(text, "function", "name", "logical", "error")).toEqual(
          nodes(text, sequenceNodeType.FUNCTION, sequenceNodeType.DEFINED_NAME),
        );
      }),
      { numRuns: 1000 },
    );
  });
});

describe("the errors of a cell", () => {
  it("are one list: each is an error to the pane, a token of a formula, and of the format or younger", () => {
    for (const error of cellErrors) {
      expect([isError(error), cut(error)]).toEqual([true, `error ${error}`]);
      expect(isYounger(error)).toBe(
        !["#N/A", "#NUM!", "#VALUE!", "#DIV/0!", "#REF!", "#NULL!", "#NAME?", "#GETTING_DATA"].includes(error),
      );
    }
    expect([isError("#N/A!"), isError("N/A"), isError(null)]).toEqual([false, false, false]);
  });
});
