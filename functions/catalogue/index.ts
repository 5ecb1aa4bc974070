import type { Entry } from "../bind/entry";
import { cutting } from "./cutting";
import { money } from "./money";
import { section } from "./section";
import { time } from "./time";
import { about } from "./about";
import { yields } from "./yield";

/** Every worksheet function, in the order of the docs. Names and the order of arguments are a file format. */
export const catalogue: readonly Entry[] = [...cutting, ...time, ...money, ...section, ...yields, ...about];
