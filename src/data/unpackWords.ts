/** The words of one language and meaning: a capital says how many letters of the word above begin the next. */
function unpackGroup(packed: string): readonly string[] {
  let above = "";
  return (packed.match(/[A-Z][^A-Z]*/g) ?? []).map(
    (part) => (above = above.slice(0, part.charCodeAt(0) - 65) + part.slice(1)),
  );
}

/** The rows of src/data/lineWords.ts that the build has packed (config/packWords.cjs): language, word, meaning. */
export function unpackWords(packed: string): string {
  const [meanings = "", ...languages] = packed.split("\n");
  const names = meanings.split("|");
  const rows = languages.flatMap((line) => {
    const [language = "", ...groups] = line.split("|");
    return groups.flatMap((group, i) => unpackGroup(group).map((word) => `${language},${word},${names[i]!}`));
  });
  return `\n${rows.join("\n")}\n`;
}
