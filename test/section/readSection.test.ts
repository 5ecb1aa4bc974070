import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { americanSections } from "../../src/data/sectionsUs";
import { InputError } from "../../src/errors";
import { outlineArea } from "../../src/section/outlineArea";
import { readSection } from "../../src/section/readSection";
import { sectionProfile } from "../../src/section/sectionProfile";
import { sectionStack } from "../../src/section/sectionStack";
import type { Section } from "../../src/section/section";
import { fixture, refusal } from "./fixture";

const stackArea = ({ outline, pieces, mitre }: Section) =>
  (outlineArea(outline!) * pieces) / Math.cos((mitre * Math.PI) / 180);

describe("82 examples (common practice; areas and heights by a separate program)", () => {
  const rows = fixture("examples.csv");
  it("all are there", () => {
    expect(rows).toHaveLength(82);
  });
  it.each(rows)("%s (%s) is %s", (text, defaultUnit, _as, unit, orientation, bundle, turn, area, height) => {
    const section = readSection(text!, defaultUnit as "inch" | "metric");
    // The reference gives the outline's area to the mm² and the height to 0.1 mm.
    expect(Math.abs(stackArea(section) - Number(area))).toBeLessThanOrEqual(0.51);
    expect(Math.abs(sectionProfile(section).height - Number(height))).toBeLessThanOrEqual(0.051);
    expect(section.note.includes("inches assumed")).toBe(unit === "in*");
    expect(section.note.includes("millimetres assumed")).toBe(unit === "mm*");
    const said = orientation === "diamond" ? "point up" : orientation!.replace("-", " ");
    expect(section.note).toContain(said);
    if (orientation !== "") expect(section.text).toContain(said);
    const [stack = "1x1", nested] = bundle === "" ? [] : bundle!.split(" ");
    expect(`${section.rows}x${section.columns}`).toBe(stack);
    expect(section.nested).toBe(nested === "nested");
    const [kind, angle] = turn!.split(" ");
    expect(section.mitre).toBe(kind === "miter" ? Number(angle) : 0);
    if (kind === "rot") expect(section.text).toContain(turn);
  });
});

describe("52 refusals (common practice, no source)", () => {
  const rows = fixture("refusals.csv");
  it("all are there", () => {
    expect(rows).toHaveLength(52);
  });
  it.each(rows)("%s %s: %s", (kind, text, code, message) => {
    const { reason, parameter, sentence } = refusal(() =>
      readSection(kind === "number" ? Number(text) : text!, "inch"),
    );
    expect(sentence).toBe(message);
    expect(parameter).toBe("section");
    expect(reason).toBe(code === "NOT-FOUND" ? "none" : "invalid");
  });
});

describe("order-list habits, sizes (areas in in²: geometry by hand, or the published area of the standard named)", () => {
  const tube = (diameter: number, wall: number) => Math.PI * wall * (diameter - wall);
  const box = (b: number, h: number, t: number, outer: number, inner: number) =>
    2 * t * (b + h - 2 * t) - (4 - Math.PI) * t * t * (outer ** 2 - inner ** 2);
  const cases: readonly (readonly [text: string, canonical: string, area: number])[] = [
    [`RND BAR 3-1/2" DIA`, "round 3.5 in", (Math.PI * 3.5 ** 2) / 4],
    [`2" SCH 80 PIPE SMLS`, "NPS 2 Sch 80", tube(2.375, 0.218)], // ASME B36.10M
    ["HR FLAT 1/4 X 3", "flat 3 in x 0.25 in", 0.75],
    ["SQ TUBE 2X2X.120W", "box 2 in x 2 in x 0.12 in wall", box(2, 2, 0.12, 2, 1)],
    ["CR RD 1", "round 1 in", Math.PI / 4],
    ["CF HEX 1-1/4 AF", "hex 1.25 in", (Math.sqrt(3) / 2) * 1.25 ** 2],
    ["HOT ROLLED ROUND 2-1/2 IN DIA", "round 2.5 in", (Math.PI * 2.5 ** 2) / 4],
    ["FLAT BAR 1/2 X 4", "flat 4 in x 0.5 in", 2],
    ["1/2 X 4 FLAT BAR", "flat 4 in x 0.5 in", 2],
    ["SQ BAR 1-1/2", "square 1.5 in", 2.25],
    ["6x6 square bar", "square 6 in", 36],
    ["ANGLE IRON 2X2X3/16", "L2X2X3/16", 0.722], // ASTM A6/A6M
    ["2X2X1/4 ANGLE", "L2X2X1/4", 0.944], // ASTM A6/A6M
    ["L 2 x 2 x .25", "L2X2X1/4", 0.944],
    ["C6X8.2 CHANNEL", "C6X8.2", 2.39], // ASTM A6/A6M
    ["C 10 X 20 #", "C10X20", 5.87], // ASTM A6/A6M
    ["W BEAM 8X31", "W8X31", 9.13], // ASTM A6/A6M
    ["WIDE FLANGE 8X31", "W8X31", 9.13],
    ["W8X31 BEAM", "W8X31", 9.13],
    ["W12x50#/FT", "W12X50", 14.6], // ASTM A6/A6M
    ["W310x74 KG/M", "W12X50", 14.6],
    ["W12-50", "W12X50", 14.6],
    ["beam IPE 300", "IPE 300", 53.8 / 6.4516], // EN 10365
    ["RECT TUBE 4X2X3/16", "box 4 in x 2 in x 0.1875 in wall", box(4, 2, 0.1875, 2, 1)],
    ["4 X 2 X 3/16 RECT TUBE", "box 4 in x 2 in x 0.1875 in wall", box(4, 2, 0.1875, 2, 1)],
    ["TUBE SQ 3X3X1/4", "box 3 in x 3 in x 0.25 in wall", box(3, 3, 0.25, 2, 1)],
    ["RD TUBE 2 OD X .120 WALL", "tube 2 in x 0.12 in wall", tube(2, 0.12)],
    ["DOM TUBE 3 OD X 2-1/2 ID", "tube 3 in x 0.25 in wall", (Math.PI * (9 - 6.25)) / 4],
    [`TUBE 3" OD X .250" W`, "tube 3 in x 0.25 in wall", tube(3, 0.25)],
    ["O.D. 3 tube x I.D. 2", "tube 3 in x 0.5 in wall", (Math.PI * (9 - 4)) / 4],
    ["tube 100 mm OD x 80 mm ID", "tube 100 mm x 10 mm wall", tube(100, 10) / 645.16],
    ["tube 4 in OD x 80 mm ID", "tube 4 in x 10.8 mm wall", tube(101.6, 10.8) / 645.16],
    ["OD 2 x wall .25 tube", "tube 2 in x 0.25 in wall", tube(2, 0.25)],
    ["PIPE 4 STD", "NPS 4 Sch STD", tube(4.5, 0.237)], // ASME B36.10M
    ["PIPE 4 S40", "NPS 4 Sch 40", tube(4.5, 0.237)],
    ["x-strong pipe 4", "NPS 4 Sch XS", tube(4.5, 0.337)],
    ["pipe 2-1/2 XXS", "NPS 2-1/2 Sch XXS", tube(2.875, 0.552)],
    ["pipe 2-1/2 xx-strong", "NPS 2-1/2 Sch XXS", tube(2.875, 0.552)],
    ["DN15 SCH 40", "NPS 1/2 Sch 40", tube(0.84, 0.109)],
    ["NPS 1/8 SCH 40", "NPS 1/8 Sch 40", tube(0.405, 0.068)],
    ["PIPE 6 SCH 40S", "NPS 6 Sch 40S", tube(6.625, 0.28)], // ASME B36.19M from memory
    ["PL 1/2 X 12", "flat 12 in x 0.5 in", 6],
    ["PLATE 2 THK X 12", "flat 12 in x 2 in", 24],
    ["mill edge flat 3x1/4", "flat 3 in x 0.25 in", 0.75],
    ["hex 1 a/f", "hex 1 in", Math.sqrt(3) / 2],
    ["SHAFT 2-7/16 TGP", "round 2.4375 in", (Math.PI * 2.4375 ** 2) / 4],
    ["ROUND 1-1/2 COLD DRAWN TGP", "round 1.5 in", (Math.PI * 1.5 ** 2) / 4],
    ["round 12,7 mm", "round 12.7 mm", Math.PI / 16],
    ["round dia. 2", "round 2 in", Math.PI],
    ["IPE 300 A", "IPE A 300", 46.5 / 6.4516], // EN 10365
    ["HE B 200", "HEB 200", 78.1 / 6.4516], // EN 10365
    ["HE200M", "HEM 200", 131 / 6.4516], // EN 10365
    ["203x203x46 UC", "UC 203x203x46", 58.7 / 6.4516], // EN 10365
    ["RHS 200x100x6.3 hot finished", "box 200 mm x 100 mm x 6.3 mm wall", box(200, 100, 6.3, 1.5, 1) / 645.16],
    ["SHS 100x100x5 cold formed", "box 100 mm x 100 mm x 5 mm wall cold", box(100, 100, 5, 2, 1) / 645.16],
    ["SHS 4x4x.25", "box 4 in x 4 in x 0.25 in wall", box(4, 4, 0.25, 2, 1)],
    ["T 50x50x6", "tee 50 mm x 50 mm x 6 mm", 5.64 / 6.4516],
    ["angle 60x60x7.5 mm", "angle 60 mm x 60 mm x 7.5 mm", 8.4375 / 6.4516],
    ["45 deg miter W12x50", "W12X50 mitre 45", 14.6 * Math.SQRT2],
    ["round 2 2 high", "round 2 in bundle 2x1", 2 * Math.PI],
    ["round 2, 3 pcs", "round 2 in bundle 1x3", 3 * Math.PI],
    ["stack of 4 flat 3x1/2", "flat 3 in x 0.5 in bundle 4x1", 6],
    ["area 38,5 cm2", "area 38.5 cm2", 38.5 / 6.4516],
    ["area 10 sq in", "area 10 in2", 10],
    ["BAR, ROUND, 2-1/2, HR.", "round 2.5 in", (Math.PI * 2.5 ** 2) / 4],
    ["2 IN PIPE SCHED 40", "NPS 2 Sch 40", tube(2.375, 0.154)],
    ["REC TUBE 4X2X1/4", "box 4 in x 2 in x 0.25 in wall", box(4, 2, 0.25, 2, 1)],
    ["CHAN 6X8.2", "C6X8.2", 2.39],
    ["3 X 3 X 1/4 ANG", "L3X3X1/4", 1.44], // ASTM A6/A6M
    ["oct 2", "octagon 2 in", 2 * (Math.SQRT2 - 1) * 4],
  ];
  it.each(cases)("%s is %s", (text, canonical, area) => {
    const section = readSection(text, "inch");
    expect(section.text).toBe(canonical);
    expect(section.area / 645.16 / area - 1).toBeLessThan(1e-9);
    expect(section.area / 645.16 / area - 1).toBeGreaterThan(-1e-9);
  });
  it("at least 60 with the refusals below", () => {
    expect(cases.length).toBeGreaterThan(55);
  });
});

describe("order-list habits, refusals (common practice, no source)", () => {
  it.each([
    ["DIA 80", "write the unit, 80 in or 80 mm"],
    ["flat 80x20", "write the unit"],
    ["flat 100x1/2", "write the unit"],
    ["FLAT 2X2 11GA", "0.1196 in as steel sheet, 0.120 in as tube"],
    ["gauge 11 tube 2", "gauge sizes are not read"],
    ["ROUND BAR STEEL 3", '"steel" is a material'],
    ["A36 W12x50", '"a36"'],
    ["304 HR flat 6x1", '"304" before "flat" looks like a grade'],
    ["W8X31X20'", "means feet"],
    ["W8 x 31 x 20 ft", '"ft" is a length unit'],
    ["round 3 X 6 m", '"m" is a length unit'],
    ["W12x50x20", "The cut length does not belong in the size"],
    ["HSS 4x4x1/4x20", "The cut length does not belong in the size"],
    ["I-BEAM 8", "give the series too"],
    ["half round 2", '"half"'],
    ["hollow bar 80x40", '"hollow"'],
    ["round edge flat 2x1/4", '"round edge"'],
    ["TS 4x4x1/4", '"ts"'],
    ["constructor 7", '"constructor"'],
    ["__proto__", "cannot read the character"],
    ["toString 2", '"tostring"'],
    ["ROUND 3 1/8 WALL", "a solid round has no wall"],
    ["RECT TUBE 4x1 1/8", "found 2 dimensions"],
    ["angle 6x4 1/2", "more than half of the 6 in leg"],
    ["round tube 60x5x2", "found 3 dimensions"],
    ["pipe 100 mm sch 40", "not a standard pipe size"],
    ["NPS 14 Sch 40S", "no schedule 40S"],
    ["HRS 1/4 X 3", "which shape is HRS 1/4 X 3?"],
    ["A106 PIPE 2 SCH 40", '"a106"'],
    ["2-oct", "is a date"],
    ["2025-03-04", "is a date"],
    ["99999", "only a number"],
    ["#REF!", "the Excel error #REF!"],
    ["round 2.5.3", "two points or commas"],
    ["round 1/2/3", "not a proper inch fraction"],
    ["W12x50 45°", "say what the angle is"],
    ["W12x50 on edge", "it lies web flat, web up"],
    ["round 7 flat", "it lies the same every way"],
    ["square 2 bundle 2x2 nested", "only rounds and round tubes nest"],
    ["round 3 nested", '"nested" belongs to a bundle'],
    ["round 20 bundle 20x20", "over 4 m"],
    ["round 2 bundle 101x2", "more than 100"],
    ["area 1,250", "could mean"],
    ["area 5 bundle 2x2", "an area is written alone"],
    ["flat 3 wide x 1/4", "a number is missing"],
    ["x".repeat(121), "at most 120 characters"],
    ["round 0.001", "too small"],
    ["Rundstahl 50", "unknown word"],
    ["bundle 2x2", "names no shape"],
    ["tube 4 sch", "needs its number"],
    ["angle 2 sch 40", "a schedule belongs to a pipe"],
  ])("%s: %s", (text, part) => {
    expect(refusal(() => readSection(text, "inch")).sentence).toContain(part);
  });
  it.each(["round 3", "flat 6x1", "tube 6x0.5"])(
    "%s with a metric default is more likely in inches: write the unit",
    (text) => {
      expect(refusal(() => readSection(text, "metric")).sentence).toContain("write the unit");
    },
  );
  it("a mistyped word is never corrected by itself", () => {
    expect(refusal(() => readSection("hexx 2", "inch")).sentence).toContain('did you mean "hex"?');
  });
});

describe("traps", () => {
  it("XXS is a word and not x XS: the wall of NPS 2-1/2 is 14.02 mm (ASME B36.10M)", () => {
    const stack = sectionStack(readSection("pipe 2-1/2 XXS", "inch"));
    expect(stack.height).toBeCloseTo(73.025, 3);
    expect(sectionProfile(readSection("pipe 2-1/2 XXS", "inch")).maximumWidth).toBeCloseTo(
      2 * Math.sqrt(14.0208 * (73.025 - 14.0208)),
      3,
    );
  });
  it.each([10959, 37257, 45720, 73050])("the whole number %d is a date", (serial) => {
    expect(refusal(() => readSection(serial, "inch")).sentence).toContain("Excel turned the size");
  });
  it.each([7, 0.75, 10958, 73051, -3, 45720.5])("the number %d is only a number", (number) => {
    expect(refusal(() => readSection(number, "inch")).sentence).toBe(
      `${number} is only a number: round ${number}, or area ${number}`,
    );
  });
  it("what follows an empty cell says: put the size in quotes", () => {
    expect(refusal(() => readSection("  ", "inch")).sentence).toContain("Put the size in quotes");
  });
});

const sizes = fc.oneof(
  fc.constantFrom(
    "W12x50",
    "C8X11.5",
    "HEB 200",
    "L4X4X1/2",
    "L 100x100x10",
    "L6X4X1/2",
    "WT6x25",
    "UPN 200",
    "IPN 200",
    "NPS 4 Sch 40",
    "HSS6X4X1/4",
    "SHS 100x100x5 cold",
    "tee 4x4x1/2",
  ),
  fc
    .tuple(fc.constantFrom("round", "square", "hex", "octagon"), fc.integer({ min: 20, max: 600 }))
    .map(([shape, mm]) => `${shape} ${mm} mm`),
  fc
    .tuple(fc.integer({ min: 20, max: 600 }), fc.integer({ min: 2, max: 9 }))
    .map(([mm, wall]) => `tube ${mm} mm x ${wall} mm`),
  fc
    .tuple(fc.integer({ min: 30, max: 600 }), fc.integer({ min: 30, max: 400 }), fc.integer({ min: 2, max: 12 }))
    .map(([a, b, t]) => `box ${a} mm x ${b} mm x ${t} mm`),
  fc
    .tuple(fc.integer({ min: 20, max: 600 }), fc.integer({ min: 2, max: 300 }))
    .map(([a, b]) => `flat ${a} mm x ${b} mm`),
);
const stacks = fc.tuple(
  sizes,
  fc.integer({ min: 0, max: 359 }),
  fc.integer({ min: 1, max: 3 }),
  fc.integer({ min: 1, max: 3 }),
  fc.integer({ min: 0, max: 60 }),
);

describe("laws", () => {
  it("area depends neither on turning nor on orientation, and is n times one bar's / cos(mitre)", () => {
    fc.assert(
      fc.property(stacks, ([size, turn, rows, columns, mitre]) => {
        const one = readSection(size, "inch");
        const many = readSection(`${size} rot ${turn} bundle ${rows}x${columns} mitre ${mitre}`, "inch");
        expect(
          Math.abs((many.area * Math.cos((mitre * Math.PI) / 180)) / (rows * columns * one.area) - 1),
        ).toBeLessThan(1e-12);
        expect(
          Math.abs((stackArea(many) / (stackArea(one) * rows * columns)) * Math.cos((mitre * Math.PI) / 180) - 1),
        ).toBeLessThan(1e-9);
        expect(many.pieceArea).toBeCloseTo(one.pieceArea, 6);
      }),
      { seed: 7, numRuns: 300 },
    );
  });
  it("reading what was printed gives the same section under either default", () => {
    fc.assert(
      fc.property(stacks, ([size, turn, rows, columns, mitre]) => {
        const first = readSection(`${size} rot ${turn} bundle ${rows}x${columns} mitre ${mitre}`, "inch");
        for (const unit of ["inch", "metric"] as const) {
          const again = readSection(first.text, unit);
          expect({ ...again, note: "" }).toEqual({ ...first, note: "" });
        }
      }),
      { seed: 8, numRuns: 300 },
    );
    for (const [text, unit] of fixture("examples.csv")) {
      const first = readSection(text!, unit as "inch");
      expect({ ...readSection(first.text, "metric"), note: "" }).toEqual({ ...first, note: "" });
    }
  });
  it("inch and metric agree", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("round", "square", "hex", "octagon"),
        fc.integer({ min: 1, max: 24 * 16 }),
        (shape, sixteenths) => {
          const inches = readSection(`${shape} ${sixteenths / 16} in`, "metric");
          const metric = readSection(`${shape} ${((sixteenths / 16) * 25.4).toFixed(6)} mm`, "inch");
          expect(Math.abs(metric.area / inches.area - 1)).toBeLessThan(1e-6);
        },
      ),
      { seed: 9, numRuns: 200 },
    );
    for (const family of americanSections.filter(({ rows }) => rows.includes("|"))) {
      const [inch = "", metric = ""] = family.rows.trim().split("\n")[0]!.split(",")[0]!.split("|");
      expect(readSection(`${family.name}${metric}`, "metric").text).toBe(
        readSection(`${family.name}${inch}`, "inch").text,
      );
    }
  });
});

const fuzzed = Number(process.env.STRINGS ?? 60_000);

describe(`${String(fuzzed)} fuzzed strings`, () => {
  const words = [
    "round",
    "flat",
    "W",
    "x",
    "X",
    "C",
    "L",
    "HEB",
    "pipe",
    "sch",
    "XXS",
    "tube",
    "box",
    "od",
    "wall",
    "bundle",
    "nested",
    "of",
    "high",
    "wide",
    "mitre",
    "rot",
    "deg",
    "on edge",
    "flat",
    "in",
    "mm",
    '"',
    "'",
    "ft",
    "#",
    "lb",
    "area",
    "in2",
    "HE",
    "IPE",
    "M",
    "s",
    "std",
    "DN",
    "NPS",
    "dia",
    "ga",
    "oct",
    "hss",
    "angle",
    "tee",
    "bar",
    "beam",
    "by",
    "constructor",
    "__proto__",
    "valueOf",
    "Ø",
    "½",
    "×",
    "–",
    "°",
    ",",
    ".",
    "-",
    "/",
    "(",
    "&",
    "=",
    "\u00e9",
    "\ud83d\ude00",
    "1e9",
  ];
  const numbers = [
    "0",
    "1",
    "2",
    "3/4",
    "1-1/2",
    "2 1/4",
    "6",
    "7",
    "12",
    "40",
    "50",
    "80",
    "100",
    "200",
    "1,250",
    "0.5",
    ".25",
    "4140",
    "45720",
    "1/0",
    "999999",
    "00012",
    "3,5",
  ];
  const shapes = [
    "round",
    "round",
    "flat",
    "flat",
    "square",
    "hex",
    "box",
    "tube",
    "tube",
    "angle",
    "L",
    "HSS",
    "SHS",
    "pipe",
    "area",
    "UPN",
    "W",
    "tee",
    "bar",
  ];
  const good = ["1/4", "1/2", "0.5", "1", "2", "3", "4", "6", "12", "25", "40", "80", "100", "200", "2-1/2", "5000"];
  const tails = [
    "",
    "",
    "",
    " in",
    " mm",
    " on edge",
    " bundle 2x3",
    " bundle 3x3 nested",
    " mitre 30",
    " rot 15",
    " smls",
    " wall",
    " 5 wide",
    "#",
  ];
  it("nothing but InputError is thrown, and no size is above 4 m", () => {
    let state = 12345;
    const random = (n: number) => ((state = (Math.imul(state, 1664525) + 1013904223) >>> 0) >>> 8) % n;
    const pick = (list: readonly string[]) => list[random(list.length)]!;
    const mixed = () =>
      Array.from({ length: 1 + random(7) }, () => pick(random(2) === 0 ? words : numbers)).join(
        pick(["", " ", " ", "x"]),
      );
    const likely = () =>
      `${pick(shapes)} ${Array.from({ length: 1 + random(3) }, () => pick(good)).join("x")}${pick(tails)}${pick(tails)}`;
    const stackTraceLimit = Error.stackTraceLimit;
    Error.stackTraceLimit = 0; // half of the time would go into traces of refusals
    let read = 0;
    for (let i = 0; i < fuzzed; i++) {
      const text = random(2) === 0 ? mixed() : likely();
      try {
        const section = readSection(text, random(2) === 0 ? "inch" : "metric");
        read += 1;
        if (!(section.area > 0)) throw new Error("no area");
        if (section.outline === undefined) continue;
        // 4 m in every dimension; a turned bar may be √2 times as high.
        const { height, width } = sectionStack(section);
        if (!(height <= 4000 * Math.SQRT2 && width <= 4000 * Math.SQRT2)) throw new Error(`${height} x ${width} mm`);
      } catch (error) {
        if (!(error instanceof InputError)) throw new Error(`${JSON.stringify(text)}: ${String(error)}`);
      }
    }
    Error.stackTraceLimit = stackTraceLimit;
    expect(read).toBeGreaterThan(fuzzed / 40);
  });
  it("a text of any length is refused at once", () => {
    expect(refusal(() => readSection("1".repeat(2_000_000), "inch")).sentence).toContain("at most 120 characters");
    expect(refusal(() => readSection(" ".repeat(2_000_000) + "round 7", "inch")).reason).toBe("invalid");
  });
});

describe("the area of a stack", () => {
  it.each([
    ["flat 6x1", 6 * 645.16],
    ["W12x50", 14.6 * 645.16], // ASTM A6/A6M
    ["flat 100 mm x 50 mm mitre 45", 5000 * Math.SQRT2], // geometry
    ["round 50 mm bundle 3x4", 12 * 625 * Math.PI],
    ["area 38.5", 38.5 * 645.16],
  ])("%s", (text, area) => {
    expect(readSection(text, "inch").area / area).toBeCloseTo(1, 12);
  });
});
