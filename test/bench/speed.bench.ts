/**
 * The speed table: every path through `call` as a host makes it, in one process: npm run bench -- speed.
 * A bar that is missed is printed as missed; the machine decides times, so no test asks for them.
 */
import { catalogue } from "../../functions/catalogue";
import { call } from "../../functions/bind/call";
import { slots } from "../../functions/bind/slots";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { Memo } from "../../functions/bind/memo";
import { defaultShop } from "../../src/shop/defaultShop";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import type { Shape } from "../../src/section/shape";
import { cutTime } from "../../src/time/cutTime";
import { atMost, tell, type Row } from "../trust/report";

type Given = Readonly<Record<string, Range | Cell>>;

const rows: Row[] = [];
const note = (path: string, measured: number, unit: string, bar: number | null): void => {
  rows.push(atMost(path, measured, bar, unit));
  console.error(path);
};

/** Least milliseconds of several runs, by the clock or by the processor: the others were disturbed. */
const best = (run: () => unknown, times: number): number => {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) {
    const [start, cpu] = [performance.now(), process.cpuUsage()];
    run();
    const { user, system } = process.cpuUsage(cpu);
    least = Math.min(least, performance.now() - start, (user + system) / 1000);
  }
  return least;
};

/** A call by the names of its arguments. */
const asked = (name: string, given: Given): ((memo: Memo) => Cell[][]) => {
  const entry = catalogue.find((e) => e.name === name)!;
  const args = slots(entry).map((s): Range | null => {
    const cells = given[s.name] ?? null;
    return cells === null || Array.isArray(cells) ? (cells as Range | null) : [[cells as Cell]];
  });
  return (memo) => call(entry, args, memo);
};
const column = (n: number, cell: (i: number) => Cell): Range => Array.from({ length: n }, (_, i) => [cell(i)]);
const triple = (n: number, at: (i: number) => readonly Cell[]): Range => Array.from({ length: n }, (_, i) => at(i));

const ten = 10_000;
const hundred = 100_000;
const grades = ["A36", "1018", "1045", "4140", "4140 HT", "D2", "304", "316", "17-4PH", "6061"];
/** No two alike: rounds, flats, tubes and squares in turn. */
const distinct = (i: number): string => {
  const size = (2 + i / 4000).toFixed(5);
  return [`round ${size}`, `flat ${size}x1`, `tube ${size}x0.25`, `square ${size}`][i % 4]!;
};
/** Of a stock list of 96 sizes, never two alike in a row. */
const repeated = (i: number): string => distinct(((i * 7) % 96) * 40);
const grade = (i: number): string => grades[i % grades.length]!;
const saw: Range = [
  ["Units", "inch"],
  ["Motor power", 5],
  ["Band width", 1.34],
  ["Maximum feed", 20],
  ["Maximum band speed", 330],
];
const shop: Range = [
  ["Units", "inch"],
  ["Hourly cost", 72],
  ["Set-up minutes", 10],
  ["Load minutes", 4],
  ["Handling minutes", 1.5],
  ["Blade change minutes", 12],
  ["Availability", 0.85],
  ["Minimum charge", 25],
  ["Margin", 0.2],
  ["Bi-metal price", 180],
  ["Bi-metal life", 9000],
  ["Carbide price", 420],
  ["Carbide life", 15000],
  ["Material price", 0.6],
  ["Stock length", "20 ft"],
  ["Kerf", 0.06],
  ["Trim", 0.4],
  ["Grip", 3],
];

/** Microseconds a row of one call, with nothing kept from before. */
const perRow = (name: string, given: Given, n = ten, times = 5): number => {
  const ask = asked(name, given);
  return (best(() => ask(new Memo()), times) * 1000) / n;
};

// CUTRATE, CUTDATA
const cut = { blade: "bi-metal" };
note(
  "CUTRATE, distinct sizes",
  perRow("CUTRATE", { ...cut, section: column(ten, distinct), material: "4140" }),
  "µs a row",
  25,
);
note(
  "CUTRATE, distinct sizes, a saw described",
  perRow("CUTRATE", { ...cut, section: column(ten, distinct), material: "4140", settings: saw }),
  "µs a row",
  25,
);
const stock = { ...cut, section: column(ten, repeated), material: column(ten, grade) };
note("CUTRATE, repeated sizes", perRow("CUTRATE", stock), "µs a row", 3);
note("CUTRATE, repeated sizes, a saw described", perRow("CUTRATE", { ...stock, settings: saw }), "µs a row", 3);
const fewer = 4000;
const all = { ...cut, section: column(fewer, repeated), material: column(fewer, grade), show: "all" };
note("CUTDATA all, repeated sizes", perRow("CUTDATA", all, fewer), "µs a row", 8);

// QUOTE
const order = (n: number, size: (i: number) => string): Given => ({
  item: column(n, size),
  blade: "bi-metal",
  quantity: column(n, (i) => 1 + ((i * 13) % 200)),
  settings: shop,
  material: column(n, (i) => grades[i % 5]!),
  length: 12.5,
});
note("QUOTE, distinct sizes", perRow("QUOTE", order(ten, distinct)), "µs a row", 50);
note("QUOTE, repeated sizes", perRow("QUOTE", order(ten, repeated)), "µs a row", 9);
const singles = Array.from({ length: 2000 }, (_, i) =>
  asked("QUOTE", { ...order(1, () => repeated(i)), quantity: 1 + ((i * 13) % 200), material: grades[i % 5]! }),
);
const kept = new Memo();
note(
  "QUOTE, single cells with a block",
  (best(() => singles.forEach((ask) => ask(kept)), 7) * 1000) / singles.length,
  "µs a row",
  30,
);

// AREA, BREAKEVEN
note("AREA, distinct sizes", perRow("AREA", { section: column(ten, distinct) }, ten, 9), "µs a row", 6);
const current = (n: number): Range => triple(n, (i) => [100 + (i % 100), 1000 + (i % 300), 2 + (i % 7) / 10]);
const offer = (n: number): Range => triple(n, (i) => [300 + (i % 100), 4000 + i / 100, 6 + (i % 7) / 10]);
const pair = (n: number): Given => ({ current: current(n), offer: offer(n), sawHourValue: 60, change: 10 });
note("BREAKEVEN, distinct rows", perRow("BREAKEVEN", pair(ten), ten, 9), "µs a row", 10);

// CUTTIME against a hand loop over the core, with the same checks, conversions and kept sizes
const rates = (n: number): Range => column(n, (i) => 1 + ((i * 7919) % 1000) * 0.01);
const timed = { section: column(hundred, repeated), rate: rates(hundred), handling: 1.5 };
const handLoop = (sections: Range, given: Range): Cell[][] => {
  const sizes = new Map<string, Shape>();
  return sections.map(([text], i): Cell[] => {
    const rate = given[i]![0];
    if (typeof text !== "string" || typeof rate !== "number") return [new CellError("#VALUE!")];
    let section = sizes.get(text);
    if (section === undefined) {
      const read = readSection(text, "inch");
      sizes.set(text, (section = { ...read, profile: () => sectionProfile(read) }));
    }
    const inCore = rate * 645.16;
    if (!(inCore > 0 && inCore <= 1e8)) return [new CellError("#VALUE!")];
    return [cutTime({ section, rate: inCore, handling: 1.5, shop: defaultShop })];
  });
};
const ask = asked("CUTTIME", timed);
// In turn, so that a busy machine slows both alike.
let [ours, hand] = [Infinity, Infinity];
for (let i = 0; i < 9; i += 1) {
  ours = Math.min(
    ours,
    best(() => ask(new Memo()), 1),
  );
  hand = Math.min(
    hand,
    best(() => handLoop(timed.section, timed.rate), 1),
  );
}
note("CUTTIME, 100,000 repeated sizes, against a hand loop over the core", ours / hand, "×", 3);
const held: Range = [
  ["Units", "inch"],
  ["Maximum feed", 3],
];
const solid = (i: number): string => (i % 2 === 0 ? `round ${2 + (i % 96) / 16}` : `flat ${2 + (i % 96) / 16}x1`);
note(
  "CUTTIME, rounds and flats, with Maximum feed",
  perRow("CUTTIME", { ...timed, section: column(ten, solid), rate: rates(ten), settings: held }, ten, 9),
  "µs a row",
  8,
);

// t(100,000) / t(10,000) of every function that takes a range of rows
const minutes = (n: number): Range => column(n, (i) => 5 + ((i * 31) % 400) / 10);
const log = (n: number): Given => ({
  section: column(n, repeated),
  material: column(n, grade),
  blade: "bi-metal",
  minutes: minutes(n),
});
const counts = (n: number): Range => column(n, (i) => 1 + ((i * 13) % 200));
const lives = (n: number): Range => column(n, (i) => 3000 + ((i * 7919) % 2000));
const grown: Readonly<Record<string, (n: number) => Given>> = {
  CUTRATE: (n) => ({ ...cut, section: column(n, repeated), material: column(n, grade) }),
  PITCH: (n) => ({ ...cut, section: column(n, repeated), material: column(n, grade) }),
  TEETH: (n) => ({ section: column(n, repeated), pitch: "3/4" }),
  CUTDATA: (n) => ({ ...cut, section: column(n, repeated), material: column(n, grade), show: "feed" }),
  CUTCHECK: (n) => ({ ...log(n), pitch: "3/4", bandSpeed: 200 }),
  QUOTE: (n) => order(n, repeated),
  PRICEBREAKS: (n) => ({ ...order(1, repeated), material: "4140", quantity: null, quantities: counts(n) }),
  CUTCOST: (n) => ({ section: column(n, repeated), rate: rates(n), hourlyCost: 60, price: 180, life: 600 }),
  BREAKEVEN: pair,
  OFFERS: (n) => ({
    offers: [
      ["Name", "Price", "Life", "Rate"],
      ...triple(n, (i) => [`offer ${i}`, 100 + ((i * 7919) % 900), 1000 + (i % 300), 2 + (i % 7) / 10]),
    ],
    sawHourValue: 60,
    change: 10,
  }),
  AREA: (n) => ({ section: column(n, repeated) }),
  SECTION: (n) => ({ section: column(n, repeated), show: "mean width" }),
  MASS: (n) => ({ section: column(n, repeated), length: "12 in", material: column(n, grade) }),
  ITEM: (n) => ({ description: column(n, (i) => `${repeated(i)} ${grade(i)} x 20 ft`) }),
  MATERIAL: (n) => ({ material: column(n, grade), show: "group" }),
  CUTTIME: (n) => ({ section: column(n, repeated), rate: rates(n), handling: 1.5 }),
  THROUGHPUT: (n) => ({ minutes: minutes(n), hours: 40 }),
  WORKLOAD: (n) => ({ minutes: minutes(n), quantities: counts(n), hours: 45 * n }),
  BARS: (n) => ({ stock: "20 ft", piece: column(n, (i) => 5 + (i % 90)), quantity: counts(n), kerf: 0.06 }),
  TUNE: log,
  BLADELIFE: (n) => ({ areaCut: lives(n) }),
  BLADEODDS: (n) => ({
    current: [[180, "", 3]],
    offer: [[260, "", 3.4]],
    currentLives: lives(n),
    offerLives: lives(n),
    sawHourValue: 72,
  }),
  JOBMIX: (n) => ({
    section: column(n, repeated),
    material: column(n, grade),
    quantities: counts(n),
    sawHourValue: 72,
    settings: shop,
  }),
};
const growth = (small: () => unknown, large: () => unknown): number => {
  let [a, b] = [Infinity, Infinity];
  const began = performance.now();
  for (let i = 0; i < 2 || (i < 8 && performance.now() - began < 2000); i += 1) {
    a = Math.min(a, best(small, 3));
    b = Math.min(b, best(large, 1));
  }
  return b / a;
};
// What no function can be under that does little else: an answer of 100,000 rows no longer fits the memory of young things.
const bare = (n: number): Cell[][] => Array.from({ length: n }, (_, i) => [i * 1.1]);
const nothing = growth(
  () => bare(ten),
  () => bare(hundred),
);
note("rows of one number with nothing worked out, t(100,000)/t(10,000)", nothing, "×", null);
for (const [name, given] of Object.entries(grown)) {
  const [small, large] = [asked(name, given(ten)), asked(name, given(hundred))];
  const answered = small(new Memo())[0]![0];
  if (answered instanceof CellError) console.log(`${name} is refused: ${answered.text}`);
  const measured = growth(
    () => small(new Memo()),
    () => large(new Memo()),
  );
  note(`${name}, t(100,000)/t(10,000)`, measured, "×", 11.5);
}

tell("bench", rows, "npm run bench -- speed");
