import type { Fact, InputError } from "./errors";

/** A text with measured facts in it, `{name}` for the fact of that name: functions/sentence.ts prints it in the caller's units. */
export interface Phrase {
  readonly template: string;
  readonly facts: Readonly<Record<string, Fact>>;
}

/** What a text result may be: plain, with facts, or several of them in a row. */
export type Text = string | Phrase | readonly Text[];

/** The sentence of a refusal as a text, where it is a part of another one. */
export const refusalText = ({ problem, facts, parameter }: InputError): Phrase => ({
  template: problem,
  facts: { ...facts, parameter },
});
