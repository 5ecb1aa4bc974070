/**
 * The known word closest to one that is not known: at most one letter changed, added or left out per three letters.
 * @param word not known [text]
 * @param known words to choose from; those under three letters are never proposed [text]
 * @returns the nearest, or undefined [text]
 * @source definition (edit distance)
 */
export function nearestWord(word: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.floor(word.length / 3) + 1;
  for (const candidate of known) {
    if (candidate.length < 3 || Math.abs(candidate.length - word.length) >= least) continue;
    const edits = distance(word, candidate);
    if (edits < least) [best, least] = [candidate, edits];
  }
  return best;
}

function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(next[j - 1]! + 1, row[j]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    row = next;
  }
  return row[b.length]!;
}
