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
function notesOf(all: readonly Bare[]): readonly string[] {
  const notes = all.map(() => "");
  let cheapest: number | undefined;
  // From the largest order down: the cheapest of all larger ones is known at each; equal orders cost the same.
  for (const i of all.map((_, at) => at).sort((a, b) => all[b]!.quantity - all[a]!.quantity)) {
    const [own, least] = [all[i]!.priceLine, cheapest === undefined ? Infinity : all[cheapest]!.priceLine];
    if (least < own) notes[i] = `${String(all[cheapest!]!.quantity)} pieces cost less in all: less of the bar is lost`;
    if (own < least || (own === least && i < cheapest!)) cheapest = i;
  }
  return notes;
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
  const notes = notesOf(rows);
  return rows.map((row, i) => ({ ...row, note: notes[i]! }));
}
