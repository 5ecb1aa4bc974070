import { describe, expect, it } from "vitest";
import { sizeTokens } from "../../src/size/sizeTokens";
import { refusal } from "../section/fixture";

const short = (text: string) =>
  sizeTokens(text).map(({ kind, text: written, unit }) =>
    kind === "number"
      ? `${written}${unit === "" ? "" : `:${unit}`}`
      : kind === "x"
        ? "×"
        : kind === "dash"
          ? "~"
          : written,
  );

describe("sizeTokens (common practice, no source)", () => {
  it.each([
    ["w12x50", ["w", "12", "×", "50"]],
    ["6 in x 20 mm flat", ["6:in", "×", "20:mm", "flat"]],
    ['2"x1/4"', ["2:in", "×", "1/4:in"]],
    ["2x2x.120w", ["2", "×", "2", "×", ".120", "w"]],
    ["6xx1", ["6", "×", "×", "1"]],
    ["pipe 2-1/2 xxs", ["pipe", "2-1/2", "xxs"]],
    ["2-1/2xs", ["2-1/2", "xs"]],
    ["x-strong", ["x", "strong"]],
    ["6 by 4", ["6", "×", "4"]],
    ["w12-50", ["w", "12", "~", "50"]],
    ["i-beam 8", ["i", "beam", "8"]],
    ["sch-40", ["sch", "40"]],
    ["2 o.d. x .5", ["2", "od", "×", ".5"]],
    ["hex 1 a/f", ["hex", "1", "af"]],
    ["50#/ft", ["50:lb"]],
    ["74 kg/m", ["74:lb"]],
    ["6'", ["6:'"]],
    ["11 ga", ["11:ga"]],
    ["tg&p", ["tg&p"]],
    ["l: 2", ["l", "2"]],
    ["l=2", ["l", "2"]],
    ["dia. 2, od: 3; id=4", ["dia", "2", "od", "3", "id", "4"]],
  ])("%s", (text, tokens) => {
    expect(short(text)).toEqual(tokens);
  });
  it.each([
    ["7 $", '"$"'],
    ["7 \ud83d\ude00", '"\ud83d\ude00"'],
    ["round -3", "negative"],
    ["a=b==3", '"="'],
  ])("%s is refused: %s", (text, part) => {
    expect(refusal(() => sizeTokens(text)).sentence).toContain(part);
  });
});
