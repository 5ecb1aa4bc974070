// A build step for the words of order lines: src/data/lineWords.ts has a row for each word, with language, meaning and mark, to be read by
// people. The build groups them by language and meaning and leaves out the mark. src/data/unpackWords.ts gives the rows back.

/** A word after the one above: how many letters are the same (a capital, A for none), then the rest. */
const frontCode = (words) => {
  let above = "";
  return words
    .map((word) => {
      let same = 0;
      while (same < 25 && same < word.length && word[same] === above[same]) same += 1;
      above = word;
      return String.fromCharCode(65 + same) + word.slice(same);
    })
    .join("");
};

/** Rows "language,word,meaning,mark" as lines: the meanings, then for each language its words of each meaning. */
const packWords = (rows) => {
  const cells = rows
    .trim()
    .split("\n")
    .map((row) => row.split(","));
  const meanings = [...new Set(cells.map(([, , meaning]) => meaning))].sort();
  const languages = [...new Set(cells.map(([language]) => language))];
  const ofLanguage = (language) =>
    meanings.map((meaning) => {
      const words = cells.filter((row) => row[0] === language && row[2] === meaning).map(([, word]) => word);
      const plain = words.sort();
      const coded = frontCode(plain);
      return coded;
    });
  return [meanings.join("|"), ...languages.map((language) => [language, ...ofLanguage(language)].join("|"))].join("\n");
};

/** The loader: the rows in place. */
module.exports = function pack(source) {
  return `import { unpackWords } from "./unpackWords";\n${source.replace(/rows: `([^`]*)`/, (_, rows) => `rows: unpackWords(${JSON.stringify(packWords(rows))})`)}`;
};
module.exports.packWords = packWords;
