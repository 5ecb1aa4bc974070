/**
 * Who may import whom: each room names the rooms it sees, and no arrow runs back up. test/house/nets.test.ts plants a
 * violation of every rule. Type imports count.
 */
const core = "errors|quantities|phrase|steps|once";

/** Rooms of src: every one sees itself, src/data and the few words of the whole core. */
const srcRooms = {
  data: [],
  material: [],
  size: [],
  blade: [],
  section: ["size"],
  shop: ["blade", "material"],
  cutting: ["section", "shop", "blade", "material"],
  item: ["section", "size", "material"],
  time: ["section", "shop", "statistics"],
  yield: [],
  plan: ["shop", "statistics"],
  cost: ["cutting", "section", "shop", "blade", "material", "item", "time", "yield"],
  statistics: [],
  records: ["cutting", "section", "shop", "blade", "material", "cost", "statistics"],
  about: [],
};

/** Rooms of functions: kinds <- shop <- bind <- catalogue <- hosts, reference, workbook; formula sees nothing. */
const functionRooms = {
  formula: [],
  kinds: [],
  shop: ["kinds"],
  bind: ["shop", "kinds", "formula"],
  catalogue: ["bind", "shop", "kinds"],
  hosts: ["catalogue", "bind", "kinds"],
  reference: ["catalogue", "bind", "shop", "kinds", "formula"],
  workbook: ["catalogue", "hosts", "bind", "kinds", "formula"],
};

/** Rooms of the pane. */
const paneRooms = { sheet: [], controls: ["sheet"], views: ["controls", "sheet"] };

const room = (folder, rooms, always) =>
  Object.entries(rooms).map(([name, sees]) => ({
    name: `${folder}-${name}`,
    severity: "error",
    from: { path: `^${folder}/${name}/` },
    to: { path: `^${folder}/`, pathNot: [`^${folder}/(${[name, ...sees].join("|")})/`, ...always] },
  }));

const packages = ["npm", "npm-dev", "core"];

module.exports = {
  forbidden: [
    { name: "src-is-pure", severity: "error", from: { path: "^src/" }, to: { pathNot: "^src/" } },
    ...room("src", srcRooms, [`^src/(data/|(${core})\\.ts$)`]),
    {
      name: "functions-see-src-and-functions",
      severity: "error",
      from: { path: "^functions/" },
      to: { path: "^(taskpane|test|config)/" },
    },
    ...room("functions", functionRooms, []),
    {
      name: "functions-packages",
      comment:
        "zod/mini reads what comes from outside; hosts/grid is the grid's own face; workbook reads and writes files; generate runs under Node",
      severity: "error",
      from: { path: "^functions/", pathNot: "^functions/(hosts/grid\\.ts$|reference/generate\\.ts$|workbook/)" },
      to: { dependencyTypes: packages, pathNot: "^node_modules/(zod/|@types/custom-functions-runtime)" },
    },
    {
      name: "workbook-is-not-the-add-in",
      comment: "what Excel loads never holds the engine",
      severity: "error",
      from: { path: "^(functions|taskpane)/", pathNot: "^(functions/workbook|taskpane/tryit)/" },
      to: { path: "^functions/workbook/" },
    },
    {
      name: "pane-sees-core-catalogue-bind",
      severity: "error",
      from: { path: "^taskpane/", pathNot: "^taskpane/tryit/" },
      to: { path: "^functions/(hosts/|main\\.ts$|reference/generate\\.ts$)|^taskpane/tryit/|^test/" },
    },
    ...room("taskpane", paneRooms, []),
    {
      name: "tryit-not-host-or-test",
      severity: "error",
      from: { path: "^taskpane/tryit/" },
      to: { path: "^functions/(hosts/excel|main|reference/generate)\\.ts$|^test/" },
    },
    {
      name: "pane-packages",
      severity: "error",
      from: { path: "^taskpane/", pathNot: "^taskpane/tryit/" },
      to: { dependencyTypes: packages, pathNot: "^node_modules/@microsoft/office-js" },
    },
    {
      name: "host-only-in-main",
      severity: "error",
      from: { pathNot: "^functions/main\\.ts$|^test/" },
      to: { path: "^functions/hosts/excel\\.ts$" },
    },
    { name: "nothing-imports-test", severity: "error", from: { pathNot: "^test/" }, to: { path: "^test/" } },
    {
      name: "nothing-imports-tryit",
      severity: "error",
      from: { pathNot: "^(taskpane/tryit|test)/" },
      to: { path: "^taskpane/tryit/" },
    },
    { name: "no-circular", severity: "error", from: {}, to: { circular: true } },
    { name: "not-to-unresolvable", severity: "error", from: {}, to: { couldNotResolve: true } },
  ],
  required: [],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    tsConfig: { fileName: "tsconfig.base.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
      mainFields: ["module", "main", "types"],
      extensions: [".ts", ".js", ".mjs", ".d.ts", ".d.mts", ".css"],
    },
    exclude: { path: "^(build|dist|\\.cache)/" },
  },
};
