/**
 * Speed of the size reader, a small script (npm run bench). Goal: a column of 10,000 mixed size strings in one AREA call
 * takes at most 1.3 × the time of 10,000 reads in a plain loop.
 */
import { call } from "../../functions/bind/call";
import { catalogue } from "../../functions/catalogue";
import { Memo } from "../../functions/bind/memo";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";

/** 10,000 mixed size strings, as an order list has them. */
const kinds: readonly ((n: number) => string)[] = [
  (n) => `round ${1 + (n % 12)}`,
  (n) => `RND BAR ${1 + (n % 9)}-1/${[2, 4, 8, 16][n % 4]}" DIA`,
  (n) => `HR FLAT 1/${[2, 4, 8][n % 3]} X ${2 + (n % 6)}`,
  (n) => `${30 + (n % 200)} mm round`,
  (n) => `SQ TUBE ${2 + (n % 4)}X${2 + (n % 4)}X.120W`,
  (n) => ["W12x50", "W8X31", "S12x50", "C8X11.5", "HP14x73", "W310x74"][n % 6]!,
  (n) => ["HEB 200", "IPE 300", "UPN 200", "UB 305x165x40", "HE 200 B"][n % 5]!,
  (n) => ["L4x4x1/2", "L 100x100x10", "angle 6x4x1/2 heel up"][n % 3]!,
  (n) => [`2" SCH 80 PIPE SMLS`, "NPS 4 Sch 40", "DN100 Sch 80", "pipe 2-1/2 XXS"][n % 4]!,
  (n) => `round ${1 + (n % 4)} bundle ${2 + (n % 3)}x3 nested mitre 30`,
];
const texts = Array.from({ length: 10_000 }, (_, n) => kinds[n % kinds.length]!(Math.floor(n / kinds.length)));
const sections = texts.slice(0, 1000).map((text) => readSection(text, "inch"));

const area = catalogue.find((e) => e.name === "AREA")!;
const column = texts.map((text) => [text]);

const best = (run: () => unknown): number => {
  let least = Infinity;
  for (let i = 0; i < 7; i += 1) {
    const begin = performance.now();
    run();
    least = Math.min(least, performance.now() - begin);
  }
  return least;
};
// In turn, so that a busy machine slows both alike; the memo is new each time and smaller than the column.
const loop = best(() => texts.forEach((text) => readSection(text, "inch")));
const one = best(() => call(area, [column], new Memo()));
console.log(
  `10,000 mixed sizes: plain loop ${loop.toFixed(0)} ms, one AREA call ${one.toFixed(0)} ms, ratio ${(one / loop).toFixed(2)}`,
);
console.log(
  `profile of a section: ${((best(() => sections.forEach((section) => sectionProfile(section))) * 1000) / sections.length).toFixed(0)} µs`,
);
