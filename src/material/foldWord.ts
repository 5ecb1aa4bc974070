const letters: ReadonlyMap<string, string> = new Map([
  ["ß", "ss"],
  ["ı", "i"],
  ["ø", "o"],
  ["ł", "l"],
  ["đ", "d"],
  ["æ", "a"],
  ["œ", "o"],
]);

/**
 * A word as the table of words has it: small letters without accents; Turkish İ and ı are i.
 * @param word as typed [text]
 * @returns folded word [text]
 * @source definition (Unicode canonical decomposition)
 */
export function foldWord(word: string): string {
  return word
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .normalize("NFC")
    .replace(/[ßıøłđæœ]/g, (letter) => letters.get(letter)!);
}
