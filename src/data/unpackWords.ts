/** The rows of src/data/lineWords.ts that the build has packed (config/packWords.cjs): language, word, meaning. */
export function unpackWords(packed: string): string {
  const [meanings = "", ...languages] = packed.split("\n");
  const names = meanings.split("|");
  const rows = languages.flatMap((line) => {
    const [language = "", ...groups] = line.split("|");
    return groups.flatMap((group, i) =>
      group === "" ? [] : group.split(" ").map((word) => `${language},${word.replace(/_/g, " ")},${names[i]!}`),
    );
  });
  return `\n${rows.join("\n")}\n`;
}
