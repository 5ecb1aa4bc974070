import { InputError } from "../errors";
import type { Shape } from "./shape";
import { sectionStack } from "./sectionStack";
import type { Contact, Stack } from "./slab";
import { slabContact } from "./slabContact";

export interface ContactRow {
  readonly depth: number;
  readonly width: number;
  readonly longest: number;
}

/**
 * Engaged width at equally spaced depths from top to bottom. Where the width jumps, the larger side counts.
 * @param profile of the stack [-]
 * @param steps number of equal steps, 1 to 1000 [-]; gives steps + 1 rows
 * @returns rows of depth, total contact and longest single contact [mm]
 * @throws InputError "invalid": steps not a whole number from 1 to 1000
 * @source geometry
 */
export function contactRows({
  section,
  steps,
}: {
  readonly section: Shape;
  readonly steps: number;
}): readonly ContactRow[] {
  if (!Number.isInteger(steps) || steps < 1 || steps > 1000) {
    throw new InputError("invalid", "steps", "{steps} is not a whole number from 1 to 1000", { steps: String(steps) });
  }
  const stack = sectionStack(section.profile().section);
  return Array.from({ length: steps + 1 }, (_, i) => {
    const depth = (stack.height * i) / steps;
    const sides = contactsAt(stack, depth);
    const greatest = (of: (side: Contact) => number): number => wholeZero(Math.max(...sides.map(of)));
    return { depth, width: greatest(({ contact }) => contact), longest: greatest(({ longest }) => longest) };
  });
}

/** Where an arc begins, the computer's rounding leaves a width of millionths of a nanometre. */
const wholeZero = (width: number): number => (width < 1e-9 ? 0 : width);

function contactsAt({ layers, height, spread }: Stack, depth: number): readonly Contact[] {
  const least = 1e-9 * height;
  let above = 0;
  const contacts: Contact[] = [];
  for (const { times, period, mirrored, slabs } of layers) {
    const whole = Math.max(0, Math.min(times - 1, Math.floor((depth - above) / period)));
    const inside = depth - above - whole * period;
    const y = mirrored && whole % 2 === 1 ? period - inside : inside;
    // Where plain repetitions meet, the end of the one above counts too.
    const depths = !mirrored && whole > 0 && inside <= least ? [y, period] : [y];
    for (const at of depths) {
      const touched = slabs.filter(({ top, bottom }) => at >= top - least && at <= bottom + least);
      contacts.push(...touched.map((slab) => slabContact(slab, Math.min(Math.max(at, slab.top), slab.bottom), spread)));
    }
    above += times * period;
  }
  return contacts;
}
