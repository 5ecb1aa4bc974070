import type { Constant } from "../../src/data/constant";
import { costConstants } from "../../src/data/costConstants";
import { cuttingConstants } from "../../src/data/cuttingConstants";
import { itemConstants } from "../../src/data/itemConstants";
import { planConstants } from "../../src/data/planConstants";
import { recordsConstants } from "../../src/data/recordsConstants";
import { shopConstants } from "../../src/data/shopConstants";
import { symptomConstants } from "../../src/data/symptomConstants";
import { timeConstants } from "../../src/data/timeConstants";
import { yieldConstants } from "../../src/data/yieldConstants";

/** The constants of src/data, table by table, as docs/sources.md prints them. */
export const constantTables: readonly {
  readonly title: string;
  readonly constants: Readonly<Record<string, Constant>>;
}[] = [
  { title: "the cutting model", constants: cuttingConstants },
  { title: "causes of trouble", constants: symptomConstants },
  { title: "saw and shop", constants: shopConstants },
  { title: "blade economics", constants: costConstants },
  { title: "the shop's own records", constants: recordsConstants },
  { title: "order lines", constants: itemConstants },
  { title: "the wait for a saw", constants: timeConstants },
  { title: "bars and pieces", constants: yieldConstants },
  { title: "how far the plans are searched", constants: planConstants },
];
