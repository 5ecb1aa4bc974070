import { expect, it } from "vitest";
import { seriesText } from "../../src/size/seriesText";

it.each([
  ["310uc97", "uc 310x97"],
  ["310 uc 96.8", "uc 310x96.8"],
  ["150pfc", "pfc 150"],
  ["380pfc 55.2", "pfc 380x55.2"],
  ["jis h-200x100x5.5x8", "jish 200x100x5.5x8"],
  ["gb i20a", "gbi 20x1"],
  ["i20a#", "gbi 20x1"],
  ["[20b", "gbc 20x2"],
  ["[10", "gbu 10"],
  ["[-150x75x6.5x10", "channel 150x75x6.5x10"],
  ["20у", "gostu 20"],
  ["гост 20", "gosti 20"],
  ["гост20", "gosti 20"],
  ["гост двутавр 20", "gosti 20"],
  ["гост i 20", "gosti 20"],
  ["c 20c", "gbc 20x3"],
  ["gbi 20b", "gbi 20x2"],
  ["[16ап", "gostp 16x1"],
  ["6,5п", "gostp 6.5"],
  ["gost i20", "gosti 20"],
  ["ismb 300 @ 44.2", "ismb 300x44.2"],
  ["isa 5050x6", "isa 50x50x6"],
  ["isa 100100x10", "isa 100x100x10"],
  ["rebar #5", "round 0.625 in"],
  ["#9 rebar", "round 1.128 in"],
  ["rebar 12 mm", "round 12 mm"],
  ["keystock 1/4", "square 1/4"],
  ["1/4 x 3/16 key stock", "1/4 x 3/16 flat"],
])("%s becomes %s (spellings of the standards; common practice, ASTM A615 for rebar)", (text, becomes) => {
  expect(seriesText(text)).toBe(becomes);
});

it.each([
  "w12x50",
  "c8x11.5",
  "ub 305x165x40",
  "round 7",
  "hss6x4x1/4",
  "ipe 300",
  "pfc 150x75x18",
  "#10 rebar",
  "c 8x11.5 a36",
])("%s stays", (text) => {
  expect(seriesText(text)).toBe(text);
});

it.each([
  ["#5 rebar", "round 0.625 in"],
  ["no. 5 rebar", "round 0.625 in"],
  ["no 8 rebar", "round 1 in"],
  ["rebar #3", "round 0.375 in"],
  ["rebar no.11", "round 1.41 in"],
  ["rebar 16 mm", "round 16 mm"],
  ["rebar #2", "rebar #2"],
  ["2 #5 rebar", "2 #5 rebar"],
  ["rebar #5 x 20", "rebar #5 x 20"],
])("%s is %s (ASTM A615)", (plain, text) => {
  expect(seriesText(plain)).toBe(text);
});
