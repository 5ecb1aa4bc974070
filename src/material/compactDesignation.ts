const gradeWord = /(?<=[\s,/-])(?:GRADE|CLASS|TYPE|GR)\.?(?=[\s.-]*\d|[\s.-]+\S|[A-Z]$)/g;
const ascii = /^[\x20-\x7e]*$/;
const simple = /^[A-Z0-9]*$/;
const numeric = /^[\d.]+$/;

/**
 * A designation in the form in which it is compared: compatibility forms folded, capitals, decimal comma as a point, the
 * words grade, class and type inside it left out, then spaces, hyphens, slashes, brackets and dots left out, except a
 * point between two digits (5.2100 must not become 52100) and a break between two numbers (17-4 must not become 174). A
 * number with # behind it is a Chinese steel: 45# becomes GB45.
 * @param text designation as typed [text]
 * @returns the compact form [text]; empty where nothing is left
 * @source common practice, no source
 */
export function compactDesignation(text: string): string {
  const upper = text.toUpperCase();
  if (simple.test(upper)) return upper;
  const isAscii = ascii.test(upper);
  let folded = isAscii ? upper : text.normalize("NFKC").toUpperCase();
  // The index is built from the table at load, where each pattern that is not needed counts.
  if (folded.includes(",")) folded = folded.replace(/(\d),(?=\d)/g, "$1.");
  if (folded.includes("GR") || folded.includes("CLASS") || folded.includes("TYPE"))
    folded = folded.replace(gradeWord, " ");
  if (folded.includes("#")) folded = folded.replace(/(?<![\d.])(\d+) ?#/g, " GB$1 ");
  if (folded.includes(".")) folded = folded.replace(/\.(?!\d)|(?<!\d)\./g, " ");
  const breaks = isAscii ? /[^A-Z0-9.]+/g : /[^\p{L}\p{N}.]+/gu;
  const joined = folded.replace(breaks, "");
  return numeric.test(joined) ? folded.replace(breaks, " ").trim().split(" ").join("-") : joined;
}
