import type { Entry } from "../bind/entry";
import { blades } from "./blades";
import { cutting } from "./cutting";
import { money } from "./money";
import { plans } from "./plans";
import { records } from "./records";
import { section } from "./section";
import { time } from "./time";
import { about } from "./about";
import { workingOfAll } from "./working";
import { yields } from "./yield";

/** Every worksheet function, in the order of the docs. Names and the order of arguments are a file format. */
const answers: readonly Entry[] = [
  ...cutting,
  ...time,
  ...money,
  ...blades,
  ...section,
  ...yields,
  ...plans,
  ...records,
];

export const catalogue: readonly Entry[] = [...answers, workingOfAll(answers), ...about];
