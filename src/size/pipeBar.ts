import { pipeSchedules } from "../data/pipeSchedules";
import { InputError } from "../errors";
import type { Bar } from "./bar";
import type { Token } from "./sizeTokens";

/**
 * A steel pipe from its nominal size and schedule.
 * @param numbers the nominal size alone [-]
 * @param schedule as in pipeSchedules.ts; 5S to 80S up to NPS 12 are those of 5, 10, STD and XS [text]
 * @param metric the size is a DN [-]
 * @returns the bar [-]
 * @throws InputError "invalid": no schedule, more than one number; "none": not a standard size or schedule
 * @source ASME B36.10M; the S schedules of ASME B36.19M from memory
 */
export function pipeBar(numbers: readonly Token[], schedule: string | undefined, metric: boolean): Bar {
  const nominal = nominalSize(numbers);
  const size = nominal.text.replace(" ", "-");
  if (schedule === undefined) throw new InputError("invalid", "section", noSchedule, { size });
  const key = metric ? `|${nominal.value},` : `\n${nominal.value}|`;
  const at = nominal.unit === "mm" || nominal.unit === "cm" ? -1 : pipeSchedules.indexOf(key);
  if (at < 0)
    throw new InputError(
      "none",
      "section",
      `${metric ? "DN" : "NPS"} {size} is not a standard pipe size (${metric ? "6 to 1200" : "1/8 to 48"})`,
      { size },
    );
  const line = pipeSchedules.slice(pipeSchedules.lastIndexOf("\n", at) + 1, pipeSchedules.indexOf("\n", at + 1));
  const [names, diameter, list] = line.split(",") as [string, string, string];
  const walls = new Map(list.split(" ").map((pair) => pair.split(":") as [string, string]));
  const nps = Number(names.split("|")[0]);
  const wall = walls.get(plainSchedule(schedule, nps));
  if (wall === undefined) {
    const listed = [...walls.keys()].map((name) => name.toUpperCase()).join(", ");
    throw new InputError("none", "section", "NPS {size} has no schedule {schedule}; listed: {listed}", {
      size: fraction(nps),
      schedule: schedule.toUpperCase(),
      listed,
    });
  }
  const text = `NPS ${fraction(nps)} Sch ${schedule.toUpperCase()}`;
  const [outside, thickness] = [Number(diameter), Number(wall)];
  return {
    text,
    notes: [`${outside} in outside, ${thickness} in wall`],
    shape: { kind: "tube", diameter: outside * 25.4, wall: thickness * 25.4 },
  };
}

const noSchedule = 'pipe {size} needs a schedule or a wall, for example "NPS 4 Sch 40" or "pipe 4.5x0.237"';

function nominalSize(numbers: readonly Token[]): Token {
  const [nominal] = numbers;
  if (nominal === undefined)
    throw new InputError(
      "invalid",
      "section",
      '"pipe" has no size; write for example "NPS 4 Sch 40" or "pipe 4.5x0.237"',
    );
  if (numbers.length === 1) return nominal;
  const found = String(numbers.length);
  throw new InputError(
    "invalid",
    "section",
    "a pipe takes its nominal size and a schedule, or outside diameter x wall; found {found} numbers. The cut length does not belong in the size",
    { found },
  );
}

const stainless: ReadonlyMap<string, string> = new Map([
  ["5s", "5"],
  ["10s", "10"],
  ["40s", "std"],
  ["80s", "xs"],
]);

function plainSchedule(schedule: string, nps: number): string {
  return nps <= 12 ? (stainless.get(schedule) ?? schedule) : schedule;
}

function fraction(nps: number): string {
  const [whole, eighths] = [Math.floor(nps), (nps % 1) * 8];
  const part = new Map([
    [1, "1/8"],
    [2, "1/4"],
    [3, "3/8"],
    [4, "1/2"],
    [6, "3/4"],
  ]).get(eighths);
  return part === undefined ? String(nps) : whole === 0 ? part : `${whole}-${part}`;
}
