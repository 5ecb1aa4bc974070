// The cut a third time: written from docs/method.md and docs/sources.md alone, by someone who has not seen the product's
// code. Plain loops over many thin slices; every number is read out of the tables of sources.md.
import { readFileSync } from "node:fs";

const page = readFileSync(new URL("../../docs/sources.md", import.meta.url), "utf8");
const tables = page
  .split(/\n(?!\|)/)
  .map((block) => block.split("\n").filter((line) => line.startsWith("| ")))
  .filter((lines) => lines.length > 2)
  .map((lines) =>
    lines
      .filter((line) => !line.startsWith("| ---"))
      .map((line) =>
        line
          .slice(2, -2)
          .split(" | ")
          .map((cell) => cell.trim()),
      ),
  );
const tableOf = (...heads) => tables.find(([first]) => heads.every((head, i) => first[i] === head));
const constants = Object.fromEntries(
  tableOf("constant", "value")
    .slice(1)
    .map(([name, value]) => [name, value]),
);
const K = (name) => {
  if (constants[name] === undefined) throw new Error(`sources.md has no "${name}"`);
  return parseFloat(constants[name]);
};
const groups = Object.fromEntries(
  tableOf("group", "letter")
    .slice(1)
    .map(([name, letter, kc, R, hb0, ...bands]) => [
      name,
      {
        letter,
        kc11: parseFloat(kc.split("/")[0]),
        mc: parseFloat(kc.split("/")[1]),
        R: +R,
        hb0: +hb0,
        "bi-metal": { v: bands[0] * 1000, b: bands[1] / 1000, S: +bands[2] },
        carbide: { v: bands[3] * 1000, b: bands[4] / 1000, S: +bands[5] },
      },
    ]),
);
const grades = Object.fromEntries(
  tableOf("key", "grade")
    .slice(1)
    .map((row) => [row[0], { v: row[3] * 304.8, bite: row[5] === "" ? 1 : +row[5] }]),
);
const mmOf = (pitch) =>
  50.8 /
  pitch
    .split("/")
    .map(Number)
    .reduce((a, b) => a + b, pitch.includes("/") ? 0 : +pitch);
const lines = tables.filter(([first]) => first[0] === "mean width [in]");
const [pitchWidths, pitchRow] = lines[0];
const [speedWidths, speedRow] = lines[1];
const bands = [
  ...constants["usual band by overall width"].matchAll(/(\d+) × ([\d.]+) mm, kerf ([\d.]+) (?:to (\d+) mm|above)/g),
].map((m) => ({
  width: +m[1],
  thick: +m[2],
  kerf: +m[3],
  upTo: m[4] === undefined ? 1e9 : +m[4],
}));
const made = {
  "bi-metal": constants["pitches made, bi-metal"].split(" "),
  carbide: constants["pitches made, carbide"].split(" "),
};

function between(widths, values, width, goesOn) {
  const xs = widths.slice(1).map((w) => w * 25.4);
  const ys = values.slice(1);
  if (width >= xs[xs.length - 1]) return ys[ys.length - 1];
  if (width <= xs[0] && !goesOn) return ys[0];
  let i = 1;
  while (xs[i] < width) i++;
  return ys[i - 1] + ((ys[i] - ys[i - 1]) * Math.log(width / xs[i - 1])) / Math.log(xs[i] / xs[i - 1]);
}

/** Slices of a work: { dy, L, e, single } with the shortest single contact; from an outline or from rows of CONTACT. */
export function slices(work, n) {
  const out = [];
  if (work.shape === "rectangle") return [{ dy: work.height, L: work.width, e: work.width, single: work.width }];
  if (work.shape === "rows") {
    for (let i = 1; i < work.rows.length; i++) {
      const L = (work.rows[i - 1].width + work.rows[i].width) / 2;
      out.push({ dy: work.rows[i].depth - work.rows[i - 1].depth, L, e: L, single: L });
    }
    const share = work.area / out.reduce((sum, s) => sum + s.L * s.dy, 0);
    return out.map((s) => ({ ...s, L: s.L * share }));
  }
  const R = work.diameter / 2,
    r = work.shape === "tube" ? R - work.wall : 0;
  for (let i = 0; i < n; i++) {
    const y = -R + (2 * R * (i + 0.5)) / n;
    const outer = 2 * Math.sqrt(R * R - y * y);
    const inner = Math.abs(y) < r ? 2 * Math.sqrt(r * r - y * y) : 0;
    const L = outer - inner;
    out.push({ dy: (2 * R) / n, L, e: outer, single: inner >= K("touching gap") ? L / 2 : L });
  }
  return out;
}

export function prepare(job) {
  const { work, group: groupName, key, hardness, blade, saw = {}, stock } = job;
  const g = groups[groupName],
    row = g[blade],
    own = grades[key],
    half = blade === "carbide" ? K("carbide share") : 1;
  const way = slices(work, 2000);
  const H = way.reduce((sum, s) => sum + s.dy, 0),
    A = work.area,
    W = A / H;
  let t = work.thinnest;
  if (t === undefined) {
    let gone = 0;
    for (const s of slices(work, 16000).sort((a, b) => a.single - b.single)) {
      gone += s.dy;
      t = s.single;
      if (gone >= K("thinnest way") * H) break;
    }
    if (work.kind === "solid" || work.kind === "bundle of solids") t = Math.min(t, W);
  }
  // pitch
  const bulky = groupName === "aluminium" ? K("bulky pitch") : 1;
  const list = made[blade];
  const finest = mmOf(list[0]);
  const target = Math.max(
    finest,
    Math.min(
      between(
        pitchWidths,
        pitchRow.map((p, i) => (i === 0 ? 0 : mmOf(p))),
        W,
        true,
      ) * bulky,
      t / K("fewest teeth"),
    ),
  );
  const away = (p) => Math.abs(Math.log(mmOf(p) / target));
  const choose = (from) => {
    let best;
    for (const p of [...from].sort((a, b) => mmOf(a) - mmOf(b)))
      if (t / mmOf(p) >= K("fewest teeth") * K("rule slack") && (best === undefined || away(p) < away(best) - 1e-12))
        best = p;
    return best;
  };
  const hollow = work.kind === "hollow" || work.kind === "bundle of hollow";
  const light = blade === "bi-metal" && hollow && t / finest >= K("finest teeth") ? list[0] : undefined;
  const best = choose(list) ?? light;
  const stocked = stock?.filter((p) => mmOf(p) >= finest * K("rule slack"));
  const pitch =
    stocked === undefined
      ? best
      : (choose(stocked) ??
        (light !== undefined && choose(list) === undefined && stocked.includes(list[0]) ? light : undefined));
  if (pitch === undefined) return undefined;
  const factor = Math.min(1, Math.exp((best === undefined ? 0 : away(best)) - away(pitch)));
  // speed
  const v0 = own === undefined ? row.v : blade === "carbide" ? row.v * (own.v / g["bi-metal"].v) ** half : own.v;
  const hard = hardness > g.hb0 ? Math.max(K("hardness least"), (g.hb0 / hardness) ** K("hardness speed")) : 1;
  const dryAsRule = groupName === "grey iron" || job.magnesium;
  const cool = dryAsRule ? 1 : saw.coolant === "dry" ? K("dry speed") : saw.coolant === "mist" ? K("mist speed") : 1;
  const worn = saw.condition === "worn";
  const wanted = v0 * between(speedWidths, speedRow.map(Number), W, false) * hard * cool * (worn ? K("worn speed") : 1);
  const slowest = saw.slowest ?? 0;
  if (slowest > K("too fast") * wanted) return undefined;
  const top = saw.top ?? (g.letter === "N" ? K("general top speed") : Infinity);
  const v = Math.max(slowest, Math.min(wanted, top));
  const credit = v > wanted ? wanted / v : 1;
  const i = {
    solid: 1,
    hollow: K("hollow bite"),
    "bundle of solids": K("solid bundle bite"),
    "bundle of hollow": K("hollow bundle bite"),
  }[work.kind];
  const b = row.b * (own?.bite ?? 1) ** half * i * (worn ? K("worn bite") : 1) * (saw.factor ?? 1) * credit;
  const B = ((K("gullet area") * K("gullet fill") * target) / g.R) * credit;
  return { way, A, H, W, pitch, target, factor, v, wanted, slowest, credit, b, B, g, saw, row };
}

export function rate(job) {
  const c = prepare(job);
  if (c === undefined) return undefined;
  const { way, A, W, target, factor, v, b, B, g, saw } = c;
  const p = mmOf(c.pitch),
    six = K("full teeth") * target;
  const widest = Math.max(...way.map((s) => s.e));
  const near =
    saw.bandWidth === undefined
      ? bands.find((x) => widest <= x.upTo)
      : (bands.find((x) => x.width >= saw.bandWidth - 2) ?? bands[bands.length - 1]);
  const span = widest + (saw.guideGap ?? 75);
  const force = (f, n) =>
    near.kerf *
    K("saw factor") *
    K("wear factor") *
    n *
    f *
    g.kc11 *
    Math.max(K("least law chip"), K("set") * f) ** -g.mc;
  const chipAt = (F, n) => {
    // by halving: the force grows with the chip
    let [low, high] = [0, 1];
    for (let k = 0; k < 40; k++) {
      const middle = (low + high) / 2;
      if (force(middle, n) < F) low = middle;
      else high = middle;
    }
    return low;
  };
  let central = Infinity;
  if (saw.bandWidth !== undefined) {
    const [w, t, E] = [saw.bandWidth, near.thick, K("modulus")];
    const [Iy, J, r2, T] = [
      (w * t ** 3) / 12,
      ((w * t ** 3) / 3) * (1 - (0.63 * t) / w),
      (w * w + t * t) / 12,
      (saw.tension ?? 250) * w * t,
    ];
    central =
      (K("buckling share") * 4 * Math.sqrt(((Math.PI ** 2 * E * Iy) / span ** 2 + T) * ((E / 2.6) * J + T * r2))) /
      span;
  }
  const idle =
    saw.motor === undefined ? 0 : Math.min(K("idle most") * saw.motor, K("idle base") + K("idle share") * saw.motor);
  const power = saw.motor === undefined ? Infinity : 0.75 * (saw.motor - idle);
  let minutes = 0,
    heldArea = 0,
    chipArea = 0;
  for (const { dy, L, e } of way) {
    if (L <= 0) continue;
    const n = L / p;
    let u = (Math.min(b * Math.min(1, L / six), B) * factor) / L;
    const most = Math.min(saw.force ?? Infinity, central / (1 - e / (2 * span)));
    if (most < Infinity) {
      const held = (c.credit * chipAt(most / K("feed share"), n)) / p;
      if (held < u) {
        u = held;
        heldArea += L * dy;
      }
    }
    chipArea += u * p * L * dy;
    let feed = u * v;
    if (power < Infinity) {
      const can = (60000 * power) / force(u * p, n);
      const least = Math.min(v, Math.max(c.slowest, Math.min(K("motor speed"), K("motor share") * c.wanted)));
      if (can < least) feed = (chipAt((60000 * power) / least, n) / p) * least;
      else if (can < v) feed = u * can;
    }
    minutes += dy / Math.min(feed, saw.feed ?? Infinity);
  }
  if (heldArea > A / 2 && chipArea / A < K("force chip")) return undefined;
  return { rate: A / minutes, pitch: c.pitch, W };
}
