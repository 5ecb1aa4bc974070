import type { BladeClass } from "../blade/bladeClass";
import { InputError, orRefusal } from "../errors";
import type { Material } from "../material/material";
import { refusalText, type Text } from "../phrase";
import type { Shape } from "../section/shape";
import type { Shop } from "../shop/shop";
import { jobWay, type JobWay, type MixWork } from "./jobWay";
import { mixTable, type BookRow, type MixRow } from "./mixTable";
import { weighMix } from "./weighMix";

type Rows<T> = readonly (T | InputError | undefined)[];

/** An order book, column by column; shops are the saws of its rows. */
export interface OrderBook {
  readonly section: Rows<Shape>;
  readonly material: Rows<Material>;
  readonly quantities: Rows<number>;
  readonly length: Rows<number> | undefined;
  readonly sawHourValue: number;
  readonly shops: readonly (Shop | InputError)[];
}

/** What a class takes, or why it cannot make the job; what the shop block itself lacks refuses the whole table. */
function tryWay(work: MixWork, blade: BladeClass): JobWay | InputError {
  const way = orRefusal(() => jobWay(work, blade));
  if (way instanceof InputError && way.parameter === "settings") throw way;
  return way;
}

const given = (way: JobWay | InputError): JobWay | undefined => (way instanceof InputError ? undefined : way);

function madeRow(row: number, work: MixWork): BookRow {
  const [biMetal, carbide] = [tryWay(work, "bi-metal"), tryWay(work, "carbide")];
  const isNeither = biMetal instanceof InputError && carbide instanceof InputError;
  const refusal = biMetal instanceof InputError ? biMetal : carbide instanceof InputError ? carbide : undefined;
  const head = isNeither ? "left out:" : biMetal instanceof InputError ? "no bi-metal:" : "no carbide:";
  return {
    row,
    size: work.section.text,
    material: work.material.name,
    job: { biMetal: given(biMetal), carbide: given(carbide) },
    why: refusal === undefined ? "" : [head, refusalText(refusal)],
  };
}

function readRow(book: OrderBook, i: number): BookRow {
  const cells = {
    section: book.section[i],
    material: book.material[i],
    quantities: book.quantities[i],
    saw: book.shops[i],
  };
  const length = book.length?.[i];
  const { section, material } = cells;
  const left = (why: Text): BookRow => ({
    row: i + 1,
    size: section === undefined || section instanceof InputError ? `row ${i + 1}` : section.text,
    material: material === undefined || material instanceof InputError ? "" : material.name,
    job: { biMetal: undefined, carbide: undefined },
    why: ["left out:", why],
  });
  for (const [name, cell] of Object.entries({ ...cells, length })) {
    if (cell instanceof InputError) return left(refusalText(cell));
    if (cell === undefined && name in cells) return left(`no ${name}`);
  }
  return madeRow(i + 1, {
    section: section as Shape,
    material: material as Material,
    quantity: cells.quantities as number,
    length: length as number | undefined,
    shop: cells.saw as Shop,
  });
}

/**
 * The order book of a month with bi-metal and with carbide, job by job and as a whole, at one worth of a saw hour. Rows that
 * cannot be read, or that neither class can make, are named and left out.
 * @param book columns of equal length; quantities of pieces, length [mm], sawHourValue [money/h]; shops
 * @returns rows of the jobs and of the whole: area [mm²], minutes [min], hoursFreed [h], blades and cuts [-], costs [money], what, material, cheaper and note [text]
 * @throws InputError "invalid": the shop block lacks a price or a life, or a Stock length where a length is given
 * @source see jobWay, weighMix
 */
export function jobMix(book: OrderBook): readonly MixRow[] {
  const rows = book.section.flatMap((section, i) =>
    section === undefined && book.material[i] === undefined && book.quantities[i] === undefined
      ? []
      : [readRow(book, i)],
  );
  const weighed = weighMix(
    rows.map(({ job }) => job),
    book.sawHourValue,
  );
  return mixTable(rows, weighed);
}
