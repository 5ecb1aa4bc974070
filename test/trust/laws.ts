import { call } from "../../functions/bind/call";
import type { Entry, Out } from "../../functions/bind/entry";
import { Memo } from "../../functions/bind/memo";
import { slots } from "../../functions/bind/slots";
import { CellError, type Cell, type Range } from "../../functions/kinds/cell";
import { words } from "../../functions/kinds/words";
import { shopLabels } from "../../functions/shop/labels";
import { quantities, type Quantity } from "../../src/quantities";
import { ask, cellOf, examples, numberOf, numbersOf, relative, type Chance } from "./sheet";
import { anySize, blades, grades } from "./words";

/** What must hold between answers of the worksheet's functions, whatever is asked. A law says what breaks it. */
export interface Law {
  readonly name: string;
  readonly broken: (chance: Chance) => string | undefined;
}

const close = 1e-9;

/** A size, a grade and a class of blade. */
const anyCut = (chance: Chance): readonly [string, string, string] => [
  anySize(chance),
  chance.of(grades),
  chance.of(blades),
];

/** A call of an example, of one function or of any, with other numbers, sizes, grades and blades. */
function anyCall(chance: Chance, only?: Entry): { readonly entry: Entry; readonly args: readonly (Range | null)[] } {
  const { entry, args } = chance.of(only === undefined ? examples : examples.filter((e) => e.entry === only));
  const places = slots(entry);
  const other = (cell: Cell, at: number): Cell => {
    const place = places[at];
    const kind = place?.role === "param" ? place.param.kind.name : "";
    if (typeof cell === "number")
      return Number.isInteger(cell)
        ? Math.max(1, Math.round(cell * chance.number(0.7, 1.4)))
        : cell * chance.number(0.7, 1.4);
    if (kind === "section") return anySize(chance);
    if (kind === "material") return chance.of(grades);
    return (blades as readonly unknown[]).includes(cell) ? chance.of(blades) : cell;
  };
  const isKept = (at: number): boolean => ["settings", "show"].includes(places[at]?.role ?? "");
  return {
    entry,
    args: places.map(
      (_, at) => (args[at] ?? null)?.map((row) => row.map((c) => (isKept(at) ? c : other(c, at)))) ?? null,
    ),
  };
}

const inUnits = (cell: Cell, quantity: Quantity | undefined): Cell =>
  typeof cell === "number" && quantity !== undefined
    ? (cell * quantities[quantity].inch.factor) / quantities[quantity].metric.factor
    : cell;

/** The same shop block in metric units. */
const metricBlock = (block: Range): Range =>
  block.map(([label, ...cells]) => {
    if (label === "Units") return [label, ...cells.map(() => "metric")];
    const row = shopLabels.find((l) => l.label === label);
    return [label!, ...cells.map((cell) => inUnits(cell, row?.kind.quantity))];
  });

const places = (entry: Entry): readonly Out[] =>
  entry.result.form === "cell" ? [entry.result.as] : Object.values(entry.result.columns).map(({ as }) => as);

/** Inches and millimetres: the same answer. */
const units: Law = {
  name: "units: the call in metric units gives the same answer",
  broken(chance) {
    const { entry, args } = anyCall(chance);
    if (entry.takes.units !== true || entry.result.form === "table") return undefined;
    const all = slots(entry);
    // Texts with words of both systems in them are not compared.
    const set = (system: string, convert: boolean): Cell[][] =>
      call(
        entry,
        all.map((s, i) => {
          const range = args[i] ?? null;
          if (s.role === "units") return [[system]];
          if (s.role === "show") return entry.result.form === "row" ? [["all"]] : null;
          if (s.role === "settings") return range === null || !convert ? range : metricBlock(range);
          if (s.role !== "param" || !convert || range === null) return range;
          const { quantity } = s.param.kind;
          // A size is read in the units of the call where it names none.
          return range.map((row) => row.map((c) => (isSize(s.param.kind.name) ? sized(c) : inUnits(c, quantity))));
        }),
        new Memo(),
      );
    const [inch, metric] = [set("inch", false), set("metric", true)];
    const as = places(entry);
    for (const [r, row] of inch.entries())
      for (const [c, cell] of row.entries()) {
        const other = metric[r]?.[c];
        const of = as[c];
        if (typeof cell === "number" && typeof other === "number" && of !== undefined && of !== "text") {
          const { inch: i, metric: m } = quantities[of];
          if (relative(cell * i.factor, other * m.factor) > 1e-6)
            return `${entry.name} ${JSON.stringify(args)}: ${String(cell)} and ${String(other)}`;
        } else if (cell instanceof CellError !== other instanceof CellError)
          return `${entry.name} ${JSON.stringify(args)}: refused in one system only: ${JSON.stringify([cell, other])}`;
      }
    return undefined;
  },
};
const isSize = (kind: string): boolean => kind === "section" || kind === "order item";
/** A size with numbers only, said to be in inches. */
const sized = (cell: Cell): Cell =>
  typeof cell === "string" && !/[a-z"]\s*$|^[A-Z]|mm| in\b/.test(cell)
    ? cell.replace(/( bundle.*| mitre.*)?$/, " in$1")
    : cell;

/** A column is what its cells are alone. */
const columns: Law = {
  name: "ranges: a column of calls is its calls one by one",
  broken(chance) {
    const { entry, args } = anyCall(chance);
    const varying = slots(entry).flatMap((s, i) =>
      s.role === "param" &&
      s.param.varies &&
      (args[i]?.length ?? 0) === 1 &&
      args[i]?.[0]?.length === s.param.kind.width
        ? [i]
        : [],
    );
    if (varying.length === 0 || entry.result.form === "table") return undefined;
    const rows = Array.from({ length: 3 }, () => anyCall(chance, entry).args);
    const show = slots(entry).findIndex((s) => s.role === "show");
    const settled = (range: Range | null, i: number): Range | null =>
      i === show && String(range?.[0]?.[0]) === "card" ? [["all"]] : range;
    const whole = call(
      entry,
      args.map((r, i) => (varying.includes(i) ? rows.map((row) => row[i]?.[0] ?? []) : settled(r, i))),
      new Memo(),
    );
    const single = rows.flatMap((row) =>
      call(
        entry,
        args.map((r, i) => (varying.includes(i) ? (row[i] ?? null) : settled(r, i))),
        new Memo(),
      ),
    );
    return JSON.stringify(whole) === JSON.stringify(single)
      ? undefined
      : `${entry.name} ${JSON.stringify(args)}: ${JSON.stringify(whole)} against ${JSON.stringify(single)}`;
  },
};

/** All results are each result; the card holds them too. */
const shows: Law = {
  name: "show: all results are each by its name, and those of the card",
  broken(chance) {
    const { entry, args } = anyCall(chance);
    const at = slots(entry).findIndex((s) => s.role === "show");
    if (
      at < 0 ||
      entry.result.form !== "row" ||
      args.some((r, i) => i !== at && slots(entry)[i]?.role === "param" && (r?.length ?? 1) > 1)
    )
      return undefined;
    const of = (show: string): Cell[][] =>
      call(
        entry,
        args.map((r, i) => (i === at ? [[show]] : r)),
        new Memo(),
      );
    const all = of("all");
    const names = Object.keys(entry.result.columns);
    const i = chance.whole(0, names.length - 1);
    const [whole, alone] = [all[0]?.[i], cellOf(of(words(names[i]!)))];
    if (JSON.stringify(whole) !== JSON.stringify(alone))
      return `${entry.name} ${names[i]!}: ${JSON.stringify([whole, alone])}`;
    const card = of("card");
    if (card.length === 1) return card[0]![0] instanceof CellError ? undefined : `${entry.name}: a card of one row`;
    const cell = card[i]?.[1];
    return whole instanceof CellError ||
      typeof cell !== "number" ||
      typeof whole !== "number" ||
      relative(cell, whole) < 0.01
      ? undefined
      : `${entry.name} card ${names[i]!}: ${JSON.stringify([whole, cell])}`;
  },
};

const saw = (chance: Chance): Range => [
  ["Units", "inch"],
  ["Hourly cost", chance.number(20, 120)],
  ["Set-up minutes", chance.number(0, 20)],
  ["Handling minutes", chance.number(0.1, 3)],
  ["Blade change minutes", chance.number(2, 20)],
  ["Bi-metal price", chance.number(60, 300)],
  ["Bi-metal life", chance.number(2000, 9000)],
  ["Carbide price", chance.number(200, 700)],
  ["Carbide life", chance.number(6000, 30_000)],
  ["Stock length", "20 ft"],
  ["Trim", chance.number(0, 1)],
  ["Grip", chance.number(0, 5)],
  ["Kerf", 0.06],
  ["Material price", chance.number(0.3, 9)],
  ["Scrap price", chance.number(0.01, 0.25)],
  ["Margin", chance.number(0, 0.5)],
  ["Charge material", chance.of(["yes", "no"])],
];

const parts: Law = {
  name: "parts: price and cost of QUOTE and CUTCOST are their parts' sum; CUTTIME is area by rate and handling",
  broken(chance) {
    const settings = saw(chance);
    const section = anySize(chance);
    const quote = numbersOf(
      ask("QUOTE", {
        item: section,
        blade: chance.of(blades),
        quantity: chance.whole(1, 60),
        settings,
        material: chance.of(grades),
        length: chance.number(1, 60),
        show: [
          [
            "cost each",
            "time cost",
            "blade cost",
            "kerf cost",
            "ends cost",
            "set-up",
            "material cost",
            "price each",
            "price line",
          ],
        ],
      }),
    );
    const cost = numbersOf(
      ask("CUTCOST", {
        section,
        rate: chance.number(0.5, 20),
        hourlyCost: 60,
        price: chance.number(50, 400),
        life: chance.number(1000, 20_000),
        settings,
        show: "all",
      }),
    );
    if (
      cost !== undefined &&
      relative(
        cost[0]!,
        cost.slice(1, 7).reduce((a, b) => a + b, 0),
      ) > close
    )
      return `CUTCOST ${section}: ${JSON.stringify(cost)}`;
    const rate = chance.number(0.5, 20);
    const handling = chance.number(0.1, 5);
    const [time, area] = [numberOf(ask("CUTTIME", { section, rate, handling })), numberOf(ask("AREA", { section }))];
    if (time !== undefined && relative(time, area! / rate + handling) > close) return `CUTTIME ${section}`;
    if (quote === undefined) return undefined;
    const [each, ...rest] = quote;
    const [priceEach, priceLine] = rest.slice(-2) as [number, number];
    const sum = rest.slice(0, 6).reduce((a, b) => a + b, 0);
    const pieces = priceLine / priceEach;
    return Math.abs(pieces - Math.round(pieces)) < 1e-6 && relative(each! * pieces, sum) < 1e-6
      ? undefined
      : `QUOTE ${section}: ${JSON.stringify(quote)}`;
  },
};

const substitution: Law = {
  name: "substitution: one function's answer given to another gives what the other works out itself",
  broken(chance) {
    const [section, material, blade] = anyCut(chance);
    const pitch = cellOf(ask("PITCH", { section, material, blade }));
    if (pitch instanceof CellError) return undefined;
    const rate = numberOf(ask("CUTRATE", { section, material, blade }));
    const typed = numberOf(ask("CUTRATE", { section, material, blade, pitch }));
    const data = numbersOf(
      ask("CUTDATA", { section, material, blade, show: [["rate", "minutes", "band speed", "bite"]] }),
    );
    if (rate === undefined || data === undefined)
      return `refused after PITCH gave ${String(pitch)}: ${section} ${material} ${blade}`;
    const minutes = numberOf(ask("CUTTIME", { section, rate }));
    const [r, m, speed, bite] = data as [number, number, number, number];
    const mass = numberOf(ask("MASS", { section, length: 12, material }));
    const [area, density] = [
      numberOf(ask("AREA", { section })),
      numberOf(ask("MATERIAL", { material, show: "density" })),
    ];
    const mitred = /mitre/.test(section);
    if (relative(typed!, rate) > close || relative(r, rate) > close) return `CUTRATE ${section} ${material} ${blade}`;
    if (relative(minutes!, m) > close)
      return `CUTTIME ${section} ${material} ${blade}: ${String(minutes)} and ${String(m)}`;
    // rate in²/min = band speed ft/min × 12 × bite in thousandths of an inch
    if (relative(speed * 12 * (bite / 1000), r) > close)
      return `bite ${section} ${material}: ${String(speed * 12 * bite)} and ${String(r)}`;
    if (
      mass !== undefined &&
      !mitred &&
      !/bundle/.test(section) &&
      !/^[A-Z]|pipe/.test(section) &&
      relative(mass, area! * 12 * density!) > close
    )
      return `MASS ${section} ${material}`;
    return undefined;
  },
};

const bars: Law = {
  name: "bars: more pieces, longer pieces, wider kerf, more trim or grip never take fewer bars",
  broken(chance) {
    const base = {
      stock: chance.number(60, 300),
      piece: chance.number(1, 50),
      quantity: chance.whole(1, 300),
      kerf: chance.number(0, 0.2),
      trim: chance.number(0, 2),
      grip: chance.number(0, 6),
    };
    const more = {
      piece: chance.number(0, 5),
      quantity: chance.whole(1, 40),
      kerf: chance.number(0, 0.2),
      trim: chance.number(0, 1),
      grip: chance.number(0, 3),
    };
    const key = chance.of(Object.keys(more) as (keyof typeof more)[]);
    const [now, then] = [numberOf(ask("BARS", base)), numberOf(ask("BARS", { ...base, [key]: base[key] + more[key] }))];
    if (now !== undefined && then !== undefined && then < now) return `${key}: ${JSON.stringify(base)}`;
    const longer = numberOf(ask("BARS", { ...base, stock: base.stock * chance.number(1, 2) }));
    return now !== undefined && longer !== undefined && longer > now
      ? `longer stock: ${JSON.stringify(base)}`
      : undefined;
  },
};

const limits: readonly (readonly [label: string, low: number, high: number, free: boolean])[] = [
  ["Motor power", 1, 15, true],
  ["Maximum feed force", 30, 1500, true],
  ["Maximum feed", 0.5, 20, true],
  // Above 394 ft/min a saw that says so is faster in nonferrous metals than one that says nothing.
  ["Maximum band speed", 150, 390, true],
  ["Band tension", 15, 45, false],
];

/** Limits of a saw, each there with that chance. */
const someLimits = (chance: Chance, share: number): Cell[][] =>
  limits.filter(() => chance.is(share)).map(([label, low, high]) => [label, chance.number(low, high)]);

/** The pitch is the same on every saw; with a limit raised or removed the rate never falls. */
const loosened: Law = {
  name: "limits: a limit raised, or taken away, and a pitch more in stock never slow a cut",
  broken(chance) {
    const [section, material, blade] = anyCut(chance);
    const rows = someLimits(chance, 0.6);
    const stocked: Cell[] = ["Pitches stocked", chance.of(["2/3, 3/4, 4/6", "3/4, 6/10, 10/14", "1.4/2, 4/6"])];
    const block = (given: readonly Cell[][]): Range => [["Units", "inch"], ...given];
    const rate = (settings: Range, pitch?: Cell): number | undefined =>
      numberOf(ask("CUTRATE", { section, material, blade, settings, pitch }));
    const pitch = cellOf(ask("PITCH", { section, material, blade }));
    if (rows.length === 0 || pitch instanceof CellError) return undefined;
    const now = rate(block(rows), pitch);
    if (now === undefined) return undefined;
    const [label, value] = chance.of(rows) as [string, number];
    const raised = rate(
      block(
        rows.map((r) =>
          r[0] === label ? [label, Math.min(value * chance.number(1, 3), label === "Band tension" ? 50 : Infinity)] : r,
        ),
      ),
      pitch,
    );
    const said = `${section} ${material} ${blade} ${JSON.stringify(rows)} ${label}`;
    if (raised === undefined || raised < now * (1 - 1e-6))
      return `raised ${said}: ${String(now)} then ${String(raised)}`;
    if (limits.find(([l]) => l === label)![3]) {
      const without = rate(block(rows.filter((r) => r[0] !== label)), pitch);
      if (without === undefined || without < now * (1 - 1e-6))
        return `removed ${said}: ${String(now)} then ${String(without)}`;
    }
    // On a saw that limits nothing every pitch may be had: what is in stock can only be slower.
    const [all, some] = [rate(block([])), rate(block([stocked]))];
    return all !== undefined && some !== undefined && some > all * (1 + 1e-9)
      ? `stocked ${section} ${material} ${blade} ${String(stocked[1])}`
      : undefined;
  },
};

const bounds: Law = {
  name: "bounds: low ≤ nominal ≤ high, of rates, minutes and prices",
  broken(chance) {
    const [section, material, blade] = anyCut(chance);
    const settings = saw(chance);
    const data = numbersOf(
      ask("CUTDATA", {
        section,
        material,
        blade,
        settings,
        show: [["rate low", "rate", "rate high", "minutes low", "minutes", "minutes high"]],
      }),
    );
    const quote = numbersOf(
      ask("QUOTE", {
        item: section,
        blade,
        quantity: chance.whole(1, 90),
        settings,
        material,
        length: chance.number(1, 60),
        show: [["price low", "price line", "price high", "minutes low", "minutes", "minutes high"]],
      }),
    );
    for (const row of [data, quote]) {
      if (row === undefined) continue;
      const [a, b, c, d, e, f] = row as [number, number, number, number, number, number];
      if (!(a <= b && b <= c && d <= e && e <= f && a > 0))
        return `${section} ${material} ${blade}: ${JSON.stringify(row)}`;
    }
    return undefined;
  },
};

const advice: Law = {
  name: "advice: a cut run as CUTDATA says is not faulted by CUTCHECK",
  broken(chance) {
    const [section, material, blade] = anyCut(chance);
    const rows = someLimits(chance, 0.3);
    const settings: Range = [["Units", "inch"], ["Coolant", chance.of(["flood", "mist", "dry"])], ...rows];
    const [data] = ask("CUTDATA", { section, material, blade, settings, show: [["pitch", "band speed", "minutes"]] });
    const [pitch, bandSpeed, minutes] = data!;
    if (typeof minutes !== "number") return undefined;
    const verdict = cellOf(ask("CUTCHECK", { section, material, blade, pitch, bandSpeed, minutes, settings }));
    return typeof verdict === "string" && /^Leave it as it is/.test(verdict)
      ? undefined
      : `${section} ${material} ${blade} ${JSON.stringify(settings)}: ${JSON.stringify(verdict)}`;
  },
};

const triple = (chance: Chance): Cell[] => [
  chance.number(50, 700),
  chance.number(1000, 30_000),
  chance.number(0.5, 12),
];

const symmetry: Law = {
  name: "symmetry: offers in another order, blades changed round, sides of a flat changed round",
  broken(chance) {
    const [current, offer] = [triple(chance), triple(chance)];
    const hour = chance.number(10, 200);
    const saving = (a: Cell[], b: Cell[]): number | undefined =>
      numberOf(ask("BREAKEVEN", { current: [a], offer: [b], sawHourValue: hour, show: "saving" }));
    const [there, back] = [saving(current, offer), saving(offer, current)];
    if (there !== undefined && back !== undefined && Math.abs(there + back) > 1e-9 * Math.max(1e-6, Math.abs(there)))
      return `BREAKEVEN ${JSON.stringify([current, offer, hour])}: ${String(there)} and ${String(back)}`;
    const [a, b] = [chance.number(20, 300).toFixed(1), chance.number(20, 300).toFixed(1)];
    const area = (s: string): number | undefined => numberOf(ask("AREA", { section: s }));
    for (const shape of ["flat", "box"] as const) {
      const of = (x: string, y: string): string => (shape === "flat" ? `flat ${x}x${y} mm` : `box ${x}x${y}x3 mm`);
      const [one, other] = [area(of(a, b)), area(of(b, a))];
      if (one !== undefined && other !== undefined && relative(one, other) > 1e-9) return `${of(a, b)} and ${of(b, a)}`;
    }
    return undefined;
  },
};

const spelling: Law = {
  name: "spelling: capitals and more spaces change no answer",
  broken(chance) {
    const [section, material] = [anySize(chance), chance.of(grades)];
    const of = (s: string, m: string): number | undefined =>
      numberOf(ask("MASS", { section: s, length: 12, material: m }));
    const [plain, other] = [
      of(section, material),
      of(` ${section.toUpperCase().replace(/ /g, "  ")} `, ` ${material} `),
    ];
    return plain === other ? undefined : `${section} ${material}: ${String(plain)} and ${String(other)}`;
  },
};

const plan: Law = {
  name: "plan: a cut plan takes no more bars than each length by itself, and no fewer than its bound",
  broken(chance) {
    const kinds = chance.whole(1, 4);
    const lengths = Array.from({ length: kinds }, () => [Number(chance.number(3, 60).toFixed(2))]);
    const quantities = Array.from({ length: kinds }, () => [chance.whole(1, 25)]);
    const given = { kerf: 0.06, trim: 0.4, grip: 2.5 };
    const rows = ask("CUTPLAN", { lengths, quantities, stocks: 240, ...given });
    const last = rows.at(-1)!;
    if (typeof last[1] !== "number") return undefined;
    const alone = lengths.reduce(
      (sum, [piece], i) =>
        sum + (numberOf(ask("BARS", { stock: 240, piece: piece!, quantity: quantities[i]![0]!, ...given })) ?? NaN),
      0,
    );
    return last[1] <= alone && (typeof last[6] !== "number" || last[6] <= last[1])
      ? undefined
      : `${JSON.stringify({ lengths, quantities })}: ${String(last[1])} bars, ${String(alone)} one by one, bound ${String(last[6])}`;
  },
};

export const laws: readonly Law[] = [
  units,
  columns,
  shows,
  parts,
  substitution,
  bars,
  loosened,
  bounds,
  advice,
  symmetry,
  spelling,
  plan,
];
