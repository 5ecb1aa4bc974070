// A build step for the script that Excel loads: words that only the docs, the help page and the pane show (help, examples,
// questions, sources of the entries; help of arguments and of shop labels; unit, mark and basis of a constant) are left out of it.
// The pane's own script keeps them.
const ts = require("typescript");

/** What stands in place of each property of an entry. */
const ofEntry = { asks: "[]", examples: '[""]', source: '""', help: '""' };
const argumentMakers = new Set(["each", "one", "list", "listWithHoles", "listByRow"]);

const nameOf = (node) =>
  node.name && (ts.isIdentifier(node.name) || ts.isStringLiteral(node.name)) ? node.name.text : "";
const propertiesOf = (node) => (node !== undefined && ts.isObjectLiteralExpression(node) ? node.properties : []);

/** Where words stand that are not shipped, and what stands there instead. */
const cuts = (call) => {
  const [first, second, , fourth, fifth] = call.arguments;
  const called = ts.isIdentifier(call.expression) ? call.expression.text : "";
  if (argumentMakers.has(called) && second !== undefined) return [[second, '""']];
  if (called === "constant") return call.arguments.slice(1).map((node) => [node, '""']);
  if (called === "row") return [fourth, fifth].filter((node) => node !== undefined).map((node) => [node, '""']);
  if (called !== "entry") return [];
  const properties = propertiesOf(first);
  const result = properties.find((p) => nameOf(p) === "result");
  return [...properties, ...propertiesOf(result?.initializer).filter((p) => nameOf(p) === "help")]
    .filter((p) => nameOf(p) in ofEntry)
    .map((p) => [p.initializer, ofEntry[nameOf(p)]]);
};

/** The loader: the same file with those words gone. */
module.exports = function dropDocs(source) {
  const file = ts.createSourceFile("x.ts", source, ts.ScriptTarget.ES2020, true);
  const found = [];
  const visit = (node) => {
    if (ts.isCallExpression(node)) found.push(...cuts(node));
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found
    .sort(([a], [b]) => b.getStart() - a.getStart())
    .reduce((text, [node, instead]) => text.slice(0, node.getStart()) + instead + text.slice(node.end), source);
};
