// A build step for the words of order lines: src/data/lineWords.ts has a row for each word, with language, meaning and mark, to be read by
// people. The build groups them by language and meaning and leaves out the mark. src/data/unpackWords.ts gives the rows back.

/** Rows "language,word,meaning,mark" as lines: the meanings, then for each language its words of each meaning. */
const packWords = (rows) => {
  const cells = rows
    .trim()
    .split("\n")
    .map((row) => row.split(","));
  const meanings = [...new Set(cells.map(([, , meaning]) => meaning))].sort();
  const languages = [...new Set(cells.map(([language]) => language))];
  const wordsOf = (language, meaning) =>
    cells
      .filter((row) => row[0] === language && row[2] === meaning)
      .map(([, word]) => word.replaceAll(" ", "_"))
      .sort()
      .join(" ");
  const lines = languages.map((language) =>
    [language, ...meanings.map((meaning) => wordsOf(language, meaning))].join("|"),
  );
  return [meanings.join("|"), ...lines].join("\n");
};

/** The loader: the rows in place. */
module.exports = function pack(source) {
  return `import { unpackWords } from "./unpackWords";\n${source.replace(/rows: `([^`]*)`/, (_, rows) => `get rows() { return unpackWords(${JSON.stringify(packWords(rows))}); }`)}`;
};
module.exports.packWords = packWords;
