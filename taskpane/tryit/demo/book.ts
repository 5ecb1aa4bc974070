import { estimate } from "./estimate";
import { process } from "./process";
import { purchase } from "./purchase";
import type { DemoSheet } from "./sheet";
import { shop } from "./shop";

/** The demo: one sheet per role, and the shop block that two of them read. */
export const demoBook: readonly DemoSheet[] = [estimate, purchase, process, shop];
