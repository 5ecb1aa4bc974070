/** Who may import whom. One rule each; test/house/nets.test.ts plants a violation of every one. Type imports count. */
module.exports = {
  forbidden: [
    { name: "src-is-pure", severity: "error", from: { path: "^src/" }, to: { pathNot: "^src/" } },
    { name: "functions-see-src-and-functions", severity: "error", from: { path: "^functions/" }, to: { path: "^(taskpane|test|config)/" } },
    { name: "functions-packages", comment: "zod/mini reads the shop block; grid.ts is the grid's own face; book reads and writes workbooks; generate runs under Node", severity: "error", from: { path: "^functions/", pathNot: "^functions/((grid|generate)\\.ts$|book/)" }, to: { dependencyTypes: ["npm", "npm-dev", "core"], pathNot: "^node_modules/(zod/|@types/custom-functions-runtime)" } },
    { name: "book-is-not-the-add-in", comment: "what Excel loads never holds the engine", severity: "error", from: { path: "^(functions|taskpane)/", pathNot: "^(functions/book|taskpane/tryit)/" }, to: { path: "^functions/book/", pathNot: "^functions/book/cellAddress\\.ts$" } },
    { name: "pane-sees-core-catalogue-bind", severity: "error", from: { path: "^taskpane/", pathNot: "^taskpane/tryit/" }, to: { path: "^functions/(host|grid|main|generate)\\.ts$|^taskpane/tryit/|^test/" } },
    { name: "tryit-not-host-or-test", severity: "error", from: { path: "^taskpane/tryit/" }, to: { path: "^functions/(host|main|generate)\\.ts$|^test/" } },
    { name: "pane-packages", severity: "error", from: { path: "^taskpane/", pathNot: "^taskpane/tryit/" }, to: { dependencyTypes: ["npm", "npm-dev", "core"], pathNot: "^node_modules/@microsoft/office-js" } },
    { name: "host-only-in-main", severity: "error", from: { pathNot: "^functions/main\\.ts$|^test/" }, to: { path: "^functions/host\\.ts$" } },
    { name: "nothing-imports-test", severity: "error", from: { pathNot: "^test/" }, to: { path: "^test/" } },
    { name: "nothing-imports-tryit", severity: "error", from: { pathNot: "^(taskpane/tryit|test)/" }, to: { path: "^taskpane/tryit/" } },
    { name: "no-circular", severity: "error", from: {}, to: { circular: true } },
    { name: "not-to-unresolvable", severity: "error", from: {}, to: { couldNotResolve: true } },
  ],
  required: [],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "require", "node", "default", "types"], mainFields: ["module", "main", "types"], extensions: [".ts", ".js", ".mjs", ".d.ts", ".d.mts", ".css"] },
    exclude: { path: "^(build|dist)/" },
  },
};
