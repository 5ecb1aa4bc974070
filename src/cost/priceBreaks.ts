import type { Text } from "../phrase";
import type { QuoteInput } from "./chooseLine";
import { quote } from "./quote";

interface PriceBreaksInput extends Omit<QuoteInput, "quantity"> {
  readonly quantities: readonly number[];
}

interface PriceBreak {
  readonly quantity: number;
  readonly priceEach: number;
  readonly priceLine: number;
  readonly minutes: number;
  readonly bars: number;
  readonly note: Text;
}

type Bare = Omit<PriceBreak, "note">;

/** A larger order may cost less in all: it leaves a remnant that is shorter, or long enough to go back to stock. */
function noteOf({ quantity, priceLine }: Bare, all: readonly Bare[]): string {
  const cheaper = all
    .filter((other) => other.quantity > quantity && other.priceLine < priceLine)
    .sort((a, b) => a.priceLine - b.priceLine)[0];
  return cheaper === undefined ? "" : `${String(cheaper.quantity)} pieces cost less in all: less of the bar is lost`;
}

/**
 * Prices of one item by quantity, each as QUOTE gives it.
 * @param input item, blade class or "cheapest", quantities of pieces, material, length [mm], shop
 * @returns rows in the order given: quantity, bars [-], prices [money], minutes [min], note [text]
 * @throws InputError as quote
 * @source see quoteLine
 */
export function priceBreaks({ quantities, ...item }: PriceBreaksInput): readonly PriceBreak[] {
  const rows = quantities.map((quantity): Bare => {
    const { priceEach, priceLine, minutes, bars } = quote({ ...item, quantity });
    return { quantity, priceEach, priceLine, minutes, bars };
  });
  return rows.map((row) => ({ ...row, note: noteOf(row, rows) }));
}
