import ts from "typescript-eslint";

const host = ["Office", "Excel", "OfficeExtension", "CustomFunctions", "OfficeRuntime"];
const outside = [
  "window",
  "document",
  "globalThis",
  "self",
  "fetch",
  "process",
  "console",
  "setTimeout",
  "setInterval",
  "Intl",
  "performance",
];
const noDefault = { selector: "ExportDefaultDeclaration", message: "named exports only" };
const coreSyntax = [
  noDefault,
  {
    selector: "ThrowStatement > NewExpression[callee.name!='InputError']",
    message: "the core throws only InputError",
  },
  { selector: "ImportExpression", message: "no dynamic import in the core" },
  { selector: "VariableDeclaration[declare=true]", message: "no ambient globals in the core" },
  { selector: "Program > VariableDeclaration[kind!='const']", message: "no module-level state in the core" },
  {
    selector: "Program > ExportNamedDeclaration > VariableDeclaration[kind!='const']",
    message: "no module-level state in the core",
  },
];
const product = ["src/**/*.ts", "functions/**/*.ts", "taskpane/**/*.ts"];
const textOnly = { message: "textContent only" };

/** A number that means something in the trade stands in src/data with its mark: 0, 1, 2 and powers of ten alone need none. */
const bareNumber = {
  selector:
    "Literal[raw=/^(?!(?:0|1|2|10*|1_000(?:_000)*|10_000|100_000|0\\.0*1|1e-?\\d+)$)[\\d.]/]:not(MemberExpression[computed=true] *):not(CallExpression[callee.property.name=/^to(Precision|Fixed)$/] > Literal)",
  message: "a bare number: put it into src/data with its unit, its mark and its basis",
};

/** One rule each; test/house/nets.test.ts plants a violation of every one. */
export default [
  { ignores: ["node_modules/", "dist/", "build/", "coverage/", ".cache/"] },
  ...ts.configs.strictTypeChecked.map((c) => ({ ...c, files: product })),
  ...ts.configs.recommended.map((c) => ({ ...c, files: ["test/**/*.ts", "*.ts", "**/*.mjs", "*.js"] })),
  { files: ["**/*.ts"], languageOptions: { parser: ts.parser } },
  {
    files: product,
    languageOptions: {
      parserOptions: {
        project: ["src", "functions", "functions/workbook", "taskpane", "taskpane/tryit", "config"].map(
          (folder) => `${folder}/tsconfig.json`,
        ),
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      "no-restricted-syntax": ["error", noDefault],
      "no-eval": "error",
      "max-lines": ["error", { max: 250, skipBlankLines: true, skipComments: true }],
      "max-lines-per-function": ["error", { max: 40, skipBlankLines: true, skipComments: true }],
      complexity: ["error", 12],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true }],
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-unnecessary-condition": "off",
    },
  },
  {
    files: ["src/**/*.ts"],
    rules: {
      "no-restricted-imports": [
        "error",
        { patterns: [{ regex: "^(?!\\.{1,2}/)|/(functions|taskpane|test)/", message: "src imports src only" }] },
      ],
      "no-restricted-globals": ["error", ...host, ...outside, "Date"],
      "no-restricted-properties": [
        "error",
        { object: "Math", property: "random", message: "the core has no randomness" },
      ],
      "no-restricted-syntax": ["error", ...coreSyntax],
      "max-lines": ["error", { max: 200, skipBlankLines: true, skipComments: true }],
    },
  },
  {
    files: ["cost", "cutting", "item", "plan", "records", "shop", "time", "yield"].map((room) => `src/${room}/**/*.ts`),
    rules: { "no-restricted-syntax": ["error", ...coreSyntax, bareNumber] },
  },
  { files: ["src/data/**/*.ts"], rules: { "max-lines": "off" } },
  {
    // The grid's own types name enums and classes where it takes plain numbers and subclasses.
    files: ["functions/hosts/grid.ts", "functions/workbook/*.ts", "taskpane/tryit/*.ts"],
    rules: {
      "@typescript-eslint/no-unsafe-enum-assignment": "off",
      "@typescript-eslint/no-unsafe-class-instance-assignment": "off",
    },
  },
  {
    files: ["functions/**/*.ts"],
    ignores: ["functions/hosts/excel.ts"],
    rules: { "no-restricted-globals": ["error", ...host, "document", "window", "Date"] },
  },
  {
    files: ["taskpane/**/*.ts"],
    ignores: ["taskpane/sheet/office*.ts"],
    rules: { "no-restricted-globals": ["error", ...host] },
  },
  {
    files: ["taskpane/**/*.ts"],
    rules: {
      "no-restricted-properties": [
        "error",
        { property: "innerHTML", ...textOnly },
        { property: "outerHTML", ...textOnly },
        { property: "insertAdjacentHTML", ...textOnly },
        { object: "document", property: "write", ...textOnly },
      ],
    },
  },
];
