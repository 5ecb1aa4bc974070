import { dataWorking } from "../../src/cutting/dataWorking";
import { rateWorking } from "../../src/cutting/cutWorking";
import { cutCheck } from "../../src/cutting/cutCheck";
import { cutData } from "../../src/cutting/cutData";
import { choosePitch } from "../../src/cutting/choosePitch";
import { cutRate } from "../../src/cutting/cutRate";
import { teethInCut } from "../../src/cutting/teethInCut";
import type { Pitch } from "../../src/blade/pitch";
import type { Shape } from "../../src/section/shape";
import { contactRows } from "../../src/section/contactRows";
import { number, symptom } from "../kinds";
import { column, each, entry, one, optional, orElse } from "../bind/entry";
import { blades, materials, oneSection, optionalPitches, pitches, sections } from "./parameters";

const model = "own model: group table and limits, each constant with its mark in docs/sources.md";

export const cutting = [
  entry({
    name: "CUTRATE",
    subject: "Cutting",
    help: "Predicted removal rate of a cut, nominal: the middle figure, with its low and high in CUTDATA.",
    examples: ['SAW.CUTRATE("round 7", "17-4PH", "bi-metal")', 'SAW.CUTRATE("W12x50", "A992", "bi-metal")'],
    source: model,
    asks: ["how fast can it cut", "removal rate", "square inches per minute"],
    params: { section: sections(), material: materials(), blade: blades(), pitch: optionalPitches() },
    takes: { settings: "optional", saw: true, units: true },
    result: { form: "cell", as: "areaRate", of: "rate", help: "removal rate, nominal" },
    working: rateWorking,
    run: cutRate,
  }),
  entry({
    name: "PITCH",
    subject: "Cutting",
    help: "Tooth pitch to order for a cut, as text such as 3/4; only pitches in stock when the shop block names them.",
    examples: ['SAW.PITCH("round 7", "4140", "bi-metal")', 'SAW.PITCH("tube 6x0.5", "A36", "bi-metal")'],
    source: model,
    asks: ["which blade", "which pitch", "how many teeth per inch"],
    params: { section: sections(), material: materials(), blade: blades() },
    takes: { settings: "optional", saw: true, units: true },
    result: { form: "cell", as: "text", of: "text", help: "teeth per inch, as the blade is ordered" },
    run: choosePitch,
  }),
  entry({
    name: "TEETH",
    subject: "Cutting",
    help: "Teeth in the cut for a size and a pitch: on the mean width, most, and fewest in one lasting contact.",
    examples: ['SAW.TEETH("round 7", "2/3")', 'SAW.TEETH("tube 6x0.5", "6/10", "all")'],
    source: "teeth = contact / pitch: German vocational tables book, sawing page (read)",
    asks: ["how many teeth are in the cut", "three teeth rule"],
    params: { section: sections(), pitch: pitches() },
    takes: { show: "optional", units: true },
    result: {
      form: "row",
      main: "mean",
      columns: {
        mean: column("count", "on the mean width"),
        most: column("count", "on the widest contact"),
        fewest: column("count", "in the thinnest lasting contact"),
      },
    },
    run: ({ section, pitch }: { readonly section: Shape; readonly pitch: Pitch }) =>
      teethInCut({ profile: section.profile(), pitch }),
  }),
  entry({
    name: "CUTDATA",
    subject: "Cutting",
    help: "The running sheet of one cut: band speed, feed, pitch, teeth, bite, chip, rate low to high, limit, what to change first.",
    examples: [
      'SAW.CUTDATA("round 7", "17-4PH", "bi-metal", "card")',
      'SAW.CUTDATA("round 4", "A36", "carbide", "band speed")',
    ],
    source: model,
    asks: ["what band speed", "which settings", "what limits the cut", "how sure is it", "feet per minute"],
    params: { section: sections(), material: materials(), blade: blades(), pitch: optionalPitches() },
    takes: { show: "required", settings: "optional", saw: true, units: true },
    result: {
      form: "row",
      main: undefined,
      columns: {
        bandSpeed: column("bandSpeed", "to set", 3),
        feed: column("feed", "to set, mean over the way down", 3),
        pitch: column("text", "teeth per inch"),
        teeth: column("count", "in the cut, on the mean width", 3),
        bite: column("chip", "area cut per length of band travel: rate / band speed", 3),
        chipThickness: column("chip", "of one tooth, on the mean width", 3),
        rate: column("areaRate", "nominal, not a promise"),
        rateLow: column("areaRate", "what stands behind low and high: see basis"),
        rateHigh: column("areaRate", "what stands behind low and high: see basis"),
        minutes: column("minutes", "cutting only, nominal"),
        minutesLow: column("minutes", "at the high rate"),
        minutesHigh: column("minutes", "at the low rate"),
        limit: column("text", "what holds the cut back"),
        changeFirst: column("text", "to cut faster"),
        basis: column("text", "which figures are a handbook's, which derived, which judgement"),
        powerAtBand: column("power", "greatest on the way down"),
        powerAtMotor: column("power", "through the drive, with the idle band"),
        feedForce: column("force", "greatest on the way down"),
        gulletFill: column("ratio", "fullest gullet; 1 is all that may fill, 70 % of the gullet"),
        bandWidth: column("size", "of the band, yours or the usual one"),
        "break-in": column("text", "for a new blade"),
        notes: column("text", "what a careful sawyer would add"),
        cautions: column("text", "reminders; the machine's manual comes first"),
      },
    },
    working: dataWorking,
    run: cutData,
  }),
  entry({
    name: "CUTCHECK",
    subject: "Cutting",
    help: "Judges a cut as it runs now: what to change first; with a symptom, its likely causes and their checks.",
    examples: [
      'SAW.CUTCHECK("round 7", "17-4PH", "bi-metal", "2/3", 95, 30)',
      'SAW.CUTCHECK("round 4", "A36", "bi-metal", "8/12", 270, 1.5, , , , "all")',
      'SAW.CUTCHECK("round 4", "304", "bi-metal", "3/4", 200, 2.9, "dull too soon")',
    ],
    source: model,
    asks: [
      "is this cut running right",
      "what should I change",
      "why are teeth breaking",
      "crooked cut",
      "blade dull too soon",
      "noise",
    ],
    params: {
      section: sections(),
      material: materials(),
      blade: blades(),
      pitch: pitches(),
      bandSpeed: each(number("bandSpeed"), "band speed as set"),
      minutes: each(number("minutes"), "minutes of cutting, without handling"),
      symptom: optional(
        each(symptom, 'what goes wrong, such as "teeth broken off", also with "new blade" or "old blade"'),
      ),
    },
    takes: { show: "optional", settings: "optional", saw: true, units: true },
    result: {
      form: "row",
      main: "verdict",
      columns: {
        verdict: column("text", "what to change first; before it, of a symptom, what to stop for, causes and checks"),
        rate: column("areaRate", "as it runs"),
        chipThickness: column("chip", "of one tooth, on the mean width", 3),
        teeth: column("count", "in the cut, on the mean width", 3),
        gulletFill: column("ratio", "fullest gullet; 1 is all that may fill, 70 % of the gullet"),
        speedAgainstGroup: column("ratio", "band speed / the one that suits the work"),
        feed: column("feed", "as it runs, mean over the way down", 3),
        bandSpeedToSet: column("bandSpeed", "by the verdict", 3),
        feedToSet: column("feed", "by the verdict, mean over the way down", 3),
        minutesSaved: column("minutes", "of a cut, by the verdict; below 0 where it takes longer"),
        expectedLow: column("areaRate", "at this pitch on this saw"),
        expectedHigh: column("areaRate", "at this pitch on this saw"),
        causes: column("text", "of the symptom, likeliest first, each with its check"),
        cautions: column("text", "reminders; the machine's manual comes first"),
      },
    },
    run: cutCheck,
  }),
  entry({
    name: "CONTACT",
    subject: "Cutting",
    help: "What the band meets on its way down: depth, engaged width, longest single contact, as rows to chart.",
    examples: ['SAW.CONTACT("tube 6x0.5 in", 6)', 'SAW.CONTACT("W12x50", 8)'],
    source: "geometry of the outline in the vice",
    asks: ["engaged width along the cut", "chart the cut", "where is the cut widest"],
    params: {
      section: oneSection(),
      steps: orElse(
        one(
          number("count", { least: 2, most: 1000, whole: true }),
          "number of equal steps down the work, 2 to 1000; default 40",
        ),
        40,
      ),
    },
    takes: { units: true },
    result: {
      form: "table",
      columns: {
        depth: column("size", "below the top of the work"),
        width: column("size", "total contact"),
        longest: column("size", "longest single contact; bars that touch are one"),
      },
    },
    run: contactRows,
  }),
];
